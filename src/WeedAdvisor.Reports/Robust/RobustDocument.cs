using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.Robust;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Robust;

/// <summary>
/// Whether the plan of a year stands when its figures move: what to do with that first, then in how many draws it stays
/// the cheapest, what turns it, and which figures move most what it saves.
/// </summary>
public static class RobustDocument
{
    private const int MostBars = 12,
        MostTurns = 6,
        CountColumns = 11;

    private const decimal Thousand = 1000;

    /// <summary>The document.</summary>
    public static Document Of(RobustReport report) =>
        new(
            $"Does the plan stand? {report.Visit.Nursery ?? "A nursery without a name"}",
            [
                new Paragraph(
                    $"Visit {report.Visit.Id}, {Figures.Day(report.Visit.Date)}; knowledge "
                        + $"{report.Knowledge.Stamp.Brief}"
                ),
                .. LiftedBars.Of(report.Knowledge.Stamp),
                .. report.Areas.SelectMany(OfArea),
            ]
        );

    /// <summary>What is said of one plan, without a heading over it.</summary>
    public static IEnumerable<Block> Of(PlanRobustness robust) =>
        [.. Answer(robust), .. Held(robust), .. Turning(robust), .. Swings(robust), .. Moved(robust)];

    private static IEnumerable<Block> OfArea(AreaRobust area) =>
        [
            new Heading(HeadingLevel.Area, new Named(area.Area.Name)),
            .. area.Refusals.Select(why => new Paragraph(Line.FromString(why)).At(2)),
            .. area.Robustness is { } robust ? Of(robust) : [],
        ];

    private static IEnumerable<Block> Answer(PlanRobustness robust)
    {
        yield return new Paragraph(
            Line.Of(
                $"The plan: weeded {robust.Plan.Best!.Way.Plan.Rounds.InWords}. All money for all "
                    + $"{new Amount(robust.Plan.Case.Year.Pots, "pots", "#,0")}."
            )
        );
        yield return Heading.Section("What to make of it");
        yield return new Paragraph(RobustWords.Verdict(robust) with { Tone = Tone.Strong }).At(2);
        yield return new Paragraph(
            Line.Of(
                $"In {Amounts.Whole(robust.Stays)} of {Amounts.Whole(robust.Draws)} draws the plan stays the cheapest."
                    + $"{Loses(robust)}"
            )
        ).At(2);
        if (robust.StaysShare < 1 && RobustWords.ToFindOut(robust) is { Count: > 0 } figures)
            yield return ItemList
                .Dashes(
                    figures
                        .GroupBy(figure => figure.Kind)
                        .Select(alike =>
                            Line.FromString(
                                $"{Figures.Sentence(string.Join("; ", alike.Select(figure => figure.Name)))}: "
                                    + $"{RobustWords.HowToFindOut(alike.Key)}."
                            )
                        )
                )
                .At(2);
    }

    private static Line Loses(PlanRobustness robust) =>
        robust.Loses is { } loses
            ? Line.Of(
                $" Where it does not, it costs {All(robust, loses.Middle)} more than the cheapest in the middle, and "
                    + $"more than {All(robust, loses.High)} in one of ten."
            )
            : Line.Empty;

    private static IEnumerable<Block> Held(PlanRobustness robust)
    {
        yield return Heading.Section("Held against");
        yield return new Table(
            [
                new Column("cost", CountColumns) { Brief = ["cost"] },
                new Column("cheapest in draws", CountColumns)
                {
                    Brief = ["cheapest", "in draws"],
                    Before = "cheapest in ",
                },
                new Column("in one draw of ten dearer than the cheapest by", CountColumns)
                {
                    Brief = ["loses in", "1 of 10"],
                    Before = "in one draw of ten dearer than the cheapest by ",
                },
            ],
            [
                .. robust.Ways.Select(way => new Row(
                    Line.FromString(RobustWords.Named(way)),
                    [All(robust, (double)way.Way.Usd), Amounts.Whole(way.Cheapest), All(robust, (double)way.BadLossUsd)]
                )),
            ]
        )
        {
            Indent = 2,
        };
        if (robust.Safest.Kind != robust.Ways[0].Kind)
            yield return new Paragraph(
                $"Where nothing can be found out, the safer way is the one that loses least in bad draws: "
                    + $"{robust.Safest.Kind}."
            ).At(2);
        if (!robust.NotOpen.IsEmpty)
            yield return new Paragraph(
                $"Not held against it, though cheaper from the start, because the rules or your wishes do not leave it "
                    + $"open: {Listing.And(robust.NotOpen)}."
            ).At(2);
        yield return new Paragraph(
            Line.Of(
                $"Against today's way the plan saves {All(robust, (double)robust.SavesUsd)} at the usual figures, "
                    + $"{All(robust, robust.Saves.Middle)} in the middle of all draws, and in {Share(robust)} of ten "
                    + $"between {All(robust, Math.Min(robust.Saves.Low, (double)robust.SavesUsd))} and "
                    + $"{All(robust, Math.Max(robust.Saves.High, (double)robust.SavesUsd))}."
            )
        ).At(2);
    }

    // What is said at the usual figures is never left out of the range beside it.
    private static string Share(PlanRobustness robust) =>
        (double)robust.SavesUsd >= robust.Saves.Low && (double)robust.SavesUsd <= robust.Saves.High
            ? "eight draws"
            : "eight draws or more";

    private static IEnumerable<Block> Turning(PlanRobustness robust)
    {
        yield return Heading.Section("What turns it");
        yield return ItemList
            .Dashes([
                .. robust
                    .Turns.Take(MostTurns)
                    .Select(turn =>
                        Line.Of(
                            $"{Figures.Sentence(turn.Figure.Name)}: {(turn.IsAbove ? "above" : "below")} "
                                + $"{RobustWords.Value(turn.Figure, turn.Past)} (reckoned with "
                                + $"{RobustWords.Value(turn.Figure, turn.Figure.Usual)}) the cheapest is {turn.Kind}, "
                                + $"by up to {All(robust, (double)turn.LosesUsd)}."
                        )
                    ),
                .. robust.Turns.IsEmpty
                    ? [Line.FromString("No figure alone, anywhere in its range, makes another of these ways cheaper.")]
                    : (Line[])[],
                .. robust
                    .Leans.Where(lean => robust.Turns.All(turn => turn.Figure.Id != lean.Figure.Id))
                    .Select(lean =>
                        Line.FromString(
                            $"{Figures.Sentence(lean.Figure.Name)}: mostly {(lean.Errors > 0 ? "higher" : "lower")} in "
                                + $"the draws in which the plan loses ({RobustWords.Value(lean.Figure, lean.MeanLost)} "
                                + $"in the mean, else {RobustWords.Value(lean.Figure, lean.MeanKept)})."
                        )
                    ),
            ])
            .At(2);
    }

    private static IEnumerable<Block> Swings(PlanRobustness robust)
    {
        if (robust.Swings.IsEmpty)
            yield break;
        decimal scale = robust.Plan.Case.Year.Pots / Thousand;
        yield return Heading.Section("What moves most what the plan saves");
        yield return new Paragraph(
            "One figure at a time from the low to the high end of its range: what the plan saves against today's way. "
                + "| is what it saves at the usual figures."
        ).At(2);
        yield return new SwingDrawing(
            "What the plan saves against today's way with one figure at either end of its range, longest first",
            new Sensitivity(robust.SavesUsd * scale, [.. robust.Swings.Take(MostBars).Select(swing => swing.As(scale))])
        )
        {
            Result = "saves",
        };
        if (robust.Swings.Length > MostBars)
            yield return new Paragraph(
                Line.Of(
                    $"{Amounts.Count(robust.Swings.Length - MostBars, "figure", "figures")} more move it by "
                        + $"{All(robust, (double)robust.Swings[MostBars].Size)} at most."
                )
            ).At(2);
    }

    private static IEnumerable<Block> Moved(PlanRobustness robust)
    {
        int assumed = robust.Assumed;
        yield return Heading.Section("What was moved");
        yield return new Paragraph(
            Line.Of(
                $"{Amounts.Count(robust.Figures.Length, "figure", "figures")} that these ways hang on, each by itself "
                    + $"within its range, as often below its usual value as above and nearest it most often: the "
                    + $"ranges of {Amounts.Whole(robust.Figures.Length - assumed)} are published, those of "
                    + $"{Amounts.Whole(assumed)} are assumed. Seed {RobustWords.Seed(robust.Seed)}, "
                    + $"{Amounts.Count(robust.Draws, "draw", "draws")}: the same seed gives the same figures again."
            )
        ).At(2);
        yield return new Paragraph(
            "The ways keep their rounds and weeks; planned anew at other figures each could be a little cheaper. Hours "
                + "and budget are not looked at again. A price or number of your own does not move unless you gave it "
                + "a range; nor does a dose or a depth, which is chosen and not found out."
        ).At(2);
    }

    private static Amount All(PlanRobustness robust, double usd) =>
        Amounts.Dollars(usd * robust.Plan.Case.Year.Pots / (double)Thousand);
}

using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Season;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Plan;

/// <summary>
/// The plan of a year: what to do this week and this month, the rounds, what goes on and what is laid, the months with
/// their hours, what it costs and saves, and what is left out and why.
/// </summary>
public static class PlanDocument
{
    private const int DaysOfWeek = 7,
        DaysOfMonth = 28,
        MostAtPotting = 4,
        Below = 4;

    /// <summary>The document.</summary>
    public static Document Of(PlanReport report) =>
        new(
            $"Plan of the year for {report.Visit.Nursery ?? "a nursery without a name"}",
            [
                new Paragraph(
                    $"Visit {report.Visit.Id}, {Figures.Day(report.Visit.Date)}; knowledge "
                        + $"{report.Knowledge.Stamp.Brief}"
                ),
                .. LiftedBars.Of(report.Knowledge.Stamp),
                .. report.Areas.SelectMany(area => OfArea(area, new Names(report.Knowledge))),
                .. report.Areas.Any(area => area.Plan?.Best is { Uses.IsEmpty: false }) ? SafetyBlocks.Standing() : [],
            ]
        );

    private static IEnumerable<Block> OfArea(AreaPlanned area, Names names)
    {
        yield return new Heading(HeadingLevel.Area, new Named(area.Area.Name));
        foreach (string refusal in area.Refusals)
            yield return Said(refusal);
        if (area.Plan is not { } plan)
            yield break;
        yield return new Paragraph(Basis(plan));
        if (plan.Best is not { } best)
        {
            yield return Heading.Section("No plan");
            yield return Said(NoPlan(plan));
            yield break;
        }

        foreach (
            Block block in (IEnumerable<Block>)
                [
                    .. Soon(plan, best),
                    .. AllYear(plan, best, names),
                    .. Potting(plan, names),
                    .. Beside(plan, area.Questions, names),
                    .. PlanMonths.Of(plan, best, names),
                    .. PlanCosts.Of(plan, best),
                    .. NotTaken(plan),
                    .. PlanAsked.Of(plan, area.Questions, names),
                    .. Rests(plan),
                ]
        )
            yield return block;
    }

    private static Line Basis(AreaPlan plan)
    {
        YearCase year = plan.Case.Year;
        string assumed = year.Block.Pots.From == Origin.Assumed ? " (assumed: give --pots)" : "";
        return Line.Of(
            $"{Figures.Day(year.Day)} to {Figures.Day(year.Day.AddDays((DaysOfWeek * year.Weeks) - 1))}; all money for "
                + $"all {new Amount(year.Pots, "pots", "#,0")}{assumed}; an hour costs "
                + $"{Amounts.Dollars(year.WageUsd)}."
        );
    }

    private static Line NoPlan(AreaPlan plan)
    {
        PlanRequest asked = plan.Case.Request;
        string?[] wishes =
        [
            asked.HoursPerWeek is { } hours ? FormattableString.Invariant($"{hours:0.##} hours a week") : null,
            asked.BudgetUsd is { } budget ? FormattableString.Invariant($"a budget of ${budget:0.##}") : null,
            .. asked.With.Select(id => $"'{id}' in the plan"),
        ];
        string[] told = [.. wishes.OfType<string>()];
        string no = plan.IsCutShort ? "No year was found that keeps" : "No year keeps";
        Line[] would = [.. plan.WouldDo.DistinctBy(way => way.Plan).Select(way => WouldDo(plan.Case.Year, way))];
        return would.Length > 0
            ? Line.Of($"{no} {Listing.And(told)}. What would do: {Line.Join("; or ", would)}.")
            : $"{no} {Listing.And(told)}. {(told.Length == 1 ? "Loosen it." : "Loosen one of them.")}";
    }

    // Rounded up, so that whoever asks for it gets a plan.
    private static Line WouldDo(YearCase year, Way way)
    {
        decimal hours = Math.Ceiling(PlanLimits.BusiestWeekHours(year, way) * 10) / 10,
            usd = Math.Ceiling(PlanLimits.SpentUsd(year, way));
        return Line.Of(
            $"{FormattableString.Invariant($"{hours:0.#} hours in the busiest week and ${usd:0} to spend")}, weeded "
                + $"{RoundsWords.Of(year, way)}"
        );
    }

    private static IEnumerable<Block> Soon(AreaPlan plan, PlannedWay best)
    {
        DateOnly day = plan.Case.Year.Day;
        PlannedWork[] week = [.. best.Work.Where(work => work.Day < day.AddDays(DaysOfWeek))];
        PlannedWork[] month =
        [
            .. best.Work.Where(work => work.Day >= day.AddDays(DaysOfWeek) && work.Day < day.AddDays(DaysOfMonth)),
        ];
        foreach ((string heading, PlannedWork[] works) in new[] { ("This week", week), ("This month", month) })
        {
            if (works.Length == 0)
                continue;
            yield return Heading.Section(heading);
            yield return ItemList
                .Dashes(
                    works.Select(work =>
                        Line.FromString(
                            $"{SeasonWords.Days(work.Day, work.LastDay)}: {SeasonWords.Work(work, ". ")}"
                        ) with
                        {
                            Action = work.Action,
                        }
                    )
                )
                .At(2);
        }
    }

    private static IEnumerable<Block> AllYear(AreaPlan plan, PlannedWay best, Names names)
    {
        yield return Heading.Section("Through the year");
        yield return new StripDrawing($"{plan.Case.Year.Area.Name}: weeks across, weeds down", Strip.Of(plan, best));
        yield return new Blank();
        yield return new ItemList([
            new Item(Item.Dash, Line.Of($"Weed {RoundsWords.Of(plan.Case.Year, best.Way)}."))
            {
                Below = [new Paragraph(PlanMonths.Rounds(plan, best)).At(Below)],
            },
            .. best.Choice.Measures.Select(measure => new Item(
                Item.Dash,
                Line.Of(
                    $"{new Named(measure.Name)}: {PlanCosts.All(plan, best.Way.UsdOf(measure.Id))}"
                        + $"{CoverWords.Fetched(plan.Case.Year, measure)}"
                ) with
                {
                    Action = measure.Id,
                }
            )),
            .. PlanUses.Of(plan, best, names),
            .. best.Uses.IsEmpty ? [new Item(Item.Dash, Line.FromString(NothingGoesOn(plan)))] : (Item[])[],
        ]).At(2);
        if (PlanSpending.Missing(plan.Case.Year, best) is { } missing)
            yield return Said(missing);
    }

    // What waits for the next potting is no part of this year's sums, but is bought and settled before it.
    private static IEnumerable<Block> Potting(AreaPlan plan, Names names)
    {
        ClearAction[] then =
        [
            .. plan
                .Case.Money.Advice.Clear.Where(clear => clear.Horizon is Horizon.AtPotting or Horizon.NextBatch)
                .Take(MostAtPotting),
        ];
        if (then.Length == 0)
            yield break;
        yield return Heading.Section("At the next potting");
        yield return ItemList
            .Dashes(
                then.Select(clear =>
                    Line.Of($"{new Named(names.Action(clear.Action))}.") with
                    {
                        Action = clear.Action,
                    }
                )
            )
            .At(2);
    }

    private static IEnumerable<Block> Beside(AreaPlan plan, PlanQuestions questions, Names names)
    {
        if (questions.Source is not { } source)
            yield break;
        yield return Heading.Section("What seeds round about");
        yield return Said(PlanSource.Of(plan.Case.Year, source, names));
    }

    private static string NothingGoesOn(AreaPlan plan) =>
        plan.Case.Season is null ? "No preventive is planned: see below."
        : plan.Case.Season.Treatments.IsEmpty
            ? "Nothing goes on: no preventive that helps against these weeds is clear here in any week."
        : "Nothing goes on: at these rounds no preventive saves what it costs.";

    private static IEnumerable<Block> NotTaken(AreaPlan plan)
    {
        Line[] left =
        [
            .. plan.LeftOut.Select(one =>
                Line.Of(
                    $"{new Named(one.Name)}: would cost {PlanCosts.All(plan, one.CostsUsd)} to save "
                        + $"{PlanCosts.All(plan, Math.Max(0, one.SavesUsd))}."
                ) with
                {
                    Action = one.Action,
                }
            ),
            .. plan.RunnersUp.Select(one =>
                Line.Of(
                    $"The best with {one.Kind} (weeded {one.Way.Plan.Rounds.InWords}) costs "
                        + $"{PlanCosts.All(plan, one.DearerUsd)} more."
                )
            ),
        ];
        if (left.Length == 0)
            yield break;
        yield return Heading.Section("What is left out, and why");
        yield return ItemList.Dashes(left).At(2);
    }

    private static IEnumerable<Block> Rests(AreaPlan plan)
    {
        YearCase year = plan.Case.Year;
        yield return Heading.Section("What this rests on");
        yield return ItemList
            .Dashes([
                $"Weeds counted: {Listing.And([.. year.Weeds.Counted.Select(weed => weed.Weed.Name)])}.",
                Line.Of(
                    $"Pots of {new Amount(year.Block.WidthCm.Value, "cm", "0.#")}, "
                        + $"{new Amount(year.Block.ApartCm.Value, "cm", "0.#")} from centre to centre."
                ),
                "Weeds that come up, seconds to pull them and plants lost to them are working values; prices are "
                    + "invented until you put in your own. The order of plans is surer than the dollars.",
                "Every use was put to the rules as the area will then stand; the plan is no permission: run the advice "
                    + "again on the day, and read the label.",
                .. year.Weeds.LeftOut.Select(why => Line.FromString($"Not counted: {why}")),
            ])
            .At(2);
    }

    private static Block Said(Line line) => new Paragraph(line).At(2);
}

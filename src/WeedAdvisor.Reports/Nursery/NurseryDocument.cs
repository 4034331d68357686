using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Nursery;

/// <summary>
/// The plan of a nursery: where the first hour goes, what each area gets and gives up, what more hours and clean
/// surroundings are worth, then each area in a few lines.
/// </summary>
public static class NurseryDocument
{
    /// <summary>The document.</summary>
    public static Document Of(NurseryReport report)
    {
        NurseryPlan plan = report.Plan;
        return new Document(
            $"Plan of the year for all of {plan.Visit.Nursery ?? "a nursery without a name"}",
            [
                new Paragraph(
                    $"Visit {plan.Visit.Id}, {Figures.Day(plan.Visit.Date)}; knowledge {plan.Knowledge.Stamp.Brief}"
                ),
                .. LiftedBars.Of(plan.Knowledge.Stamp),
                .. FirstHourBlocks.Of(plan),
                .. ShareBlocks.Of(plan),
                .. HoursBlocks.Of(plan),
                .. SourceBlocks.Of(plan),
                .. UnplannedBlocks.Of(report),
                .. AreaBlocks.Of(report),
                .. Rests(plan),
                .. plan.Areas.Any(area => !area.Plan.Uses.IsEmpty) ? SafetyBlocks.Standing() : [],
            ]
        );
    }

    private static IEnumerable<Block> Rests(NurseryPlan plan)
    {
        yield return Heading.Section("How sure this is");
        yield return ItemList
            .Dashes([
                Proof(plan),
                .. plan.IsCutShort && !plan.IsCoarse ? [Line.FromString("The search was stopped early.")] : (Line[])[],
                .. plan.IsCoarse
                    ?
                    [
                        Line.FromString(
                            "With so many areas only rounds every 1, 2, 4 and 8 weeks, or none, were looked at, and "
                                + "fewer preventives. The plan of one area (--area) looks at all."
                        ),
                    ]
                    : (Line[])[],
                "Hours are set aside area by area for the busiest week of each; where those weeks are not the same, "
                    + "fewer are needed together.",
                "How many weeds come up, seconds to pull them and plants lost to them are working values; prices are "
                    + "invented until you put in your own. The order of the areas is surer than the dollars.",
                "The plan is no permission: run the advice again on the day, and read the label.",
            ])
            .At(2);
    }

    private static Line Proof(NurseryPlan plan)
    {
        bool isProven = plan.GapPercent <= YearPlan.ProvenPercent && !plan.IsCoarse;
        SharedArea open = plan.Areas.MaxBy(area => area.Share.Usd - area.LeastUsd)!;
        return Line.Of(
            $"Of all ways found for the areas these shares cost least, exactly. No other ways could make it cheaper "
                + $"than {Amounts.Dollars(plan.LeastUsd)}, which is {new Amount(plan.GapPercent, "%", "0")} less"
                + $"{(isProven ? ": proven." : $"; most of that is in {open.Area.Name}.")}"
        );
    }
}

using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Season;
using static WeedAdvisor.Interview.Pages.PageLines;

namespace WeedAdvisor.Interview.Desks.Season;

/// <summary>
/// What a planned year is in full: all work by day, all that gets through, when nothing may go on, what was assumed.
/// </summary>
internal static class YearPage
{
    /// <summary>The page.</summary>
    public static IEnumerable<Block> Of(YearPlan plan, KnowledgeBase knowledge) =>
        [
            Title("All work, by day"),
            .. plan.Work.Select(work =>
                Marked(
                    $"{SeasonWords.Days(work.Day, work.LastDay)}  ",
                    SeasonWords.Work(work, ": "),
                    action: work.Action
                )
            ),
            Title("What gets through"),
            .. plan
                .Escapes.OrderByDescending(span => span.Usd)
                .Select(span => new Hanging(
                    Line.Of(
                        $"{new Named(knowledge.Weeds[span.Weed].Name)}, "
                            + $"{SeasonWords.Weeks(plan.Case.Year, span.FromWeek, span.ToWeek)}: "
                            + $"about {new Amount((decimal)span.Seedlings, "seedlings", "0")}, "
                            + $"{Amounts.Dollars(span.Usd)}"
                    )
                )),
            .. plan.Closed.IsEmpty ? [] : (Block[])[Title("When nothing may go on")],
            .. plan.Closed.Select(span => new Hanging(
                $"{SeasonWords.Weeks(plan.Case.Year, span.FromWeek, span.ToWeek)}: {span.Because}"
            )),
            Title("Assumed"),
            .. plan.Assumed.Select(assumed => new Hanging(Line.FromString(assumed) with { Tone = Tone.Muted })),
        ];

    private static Block Title(string text) => In(0, text, Tone.Strong);
}

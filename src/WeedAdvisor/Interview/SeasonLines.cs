using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Reports.Season;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Interview;

/// <summary>A season plan in lines for the screen.</summary>
internal static class SeasonLines
{
    /// <summary>Wishes, what goes on, what it costs and how that compares with the first plan.</summary>
    public static IEnumerable<AdviceLine> Of(YearPlan plan, YearPlan first, KnowledgeBase knowledge)
    {
        yield return new AdviceLine(Wishes(plan), LineTone.Quiet);
        if (plan.Plan is not { } best)
        {
            yield return new AdviceLine($"These wishes cannot all be met: {string.Join("; ", plan.Clash)}. Drop or loosen one.", LineTone.Warning);
            yield break;
        }

        yield return new AdviceLine(
            $"{Figures.Dollars(best.Total)} for 1000 pots: preventives {Figures.Dollars(best.ApplicationCost)}, hands {Figures.Dollars(best.EscapeCost)}; hands alone {Figures.Dollars(plan.HandsOnlyUsd)}{Against(best, first)}",
            LineTone.Heading);
        if (best.Applications.IsEmpty)
            yield return new AdviceLine(SeasonWords.Nothing(plan), LineTone.Plain);
        Strip strip = Strip.Of(plan);
        for (int i = 0; i < best.Applications.Length; i++)
        {
            SeasonApplication one = best.Applications[i];
            Treatment treatment = knowledge.Treatments[one.Name];
            string groups = string.Join("+", treatment.Actives.Select(active => active.Group ?? "none").Distinct());
            yield return new AdviceLine(
                $"{strip.Letters[i]}  {Figures.Day(plan.Case.Year.DayOf(one.Week))}  {treatment.Name} (group {groups}), {Figures.Dollars(one.Cost)}",
                LineTone.Plain);
        }

        yield return new AdviceLine(
            best.Proven ? "Proven: nothing under these rules and wishes costs less." : "Stopped early: not proven.", LineTone.Quiet);
        yield return new AdviceLine("The label is the law. Run the advice again on the day. Prices are invented until you give yours.", LineTone.Quiet);
    }

    /// <summary>All work by day, all that gets through, what was assumed.</summary>
    public static IEnumerable<AdviceLine> Details(YearPlan plan, KnowledgeBase knowledge)
    {
        yield return new AdviceLine("All work, by day", LineTone.Heading);
        foreach (PlannedWork work in plan.Work)
            yield return new AdviceLine($"{Figures.Day(work.Day)}  {SeasonWords.Kind(work.Kind)}: {work.Text}", LineTone.Plain);
        yield return new AdviceLine("What gets through", LineTone.Heading);
        foreach (EscapeSpan span in plan.Escapes.OrderByDescending(span => span.Usd))
        {
            yield return new AdviceLine(FormattableString.Invariant(
                $"{knowledge.Weeds[span.Weed].Name}, {Figures.Day(plan.Case.Year.DayOf(span.FromWeek))} to {Figures.Day(plan.Case.Year.DayOf(span.ToWeek + 1).AddDays(-1))}: about {span.Seedlings:0} seedlings, {Figures.Dollars(span.Usd)}"), LineTone.Plain);
        }

        yield return new AdviceLine("Assumed", LineTone.Heading);
        foreach (string assumed in plan.Assumed)
            yield return new AdviceLine(assumed, LineTone.Quiet);
    }

    private static string Wishes(YearPlan plan)
    {
        SeasonRequest request = plan.Case.Request;
        string rotation = request.RunOfSite switch
        {
            1 => "no site of action twice running",
            { } run => $"no site of action more than {run} times running",
            null => "no rotation",
        };
        string closed = request.Closed.IsEmpty ? "" : $"; {Figures.Count(request.Closed.Count, "week", "weeks")} closed";
        string dropped = request.Dropped.IsEmpty ? "" : $"; without {string.Join(", ", request.Dropped)}";
        return $"At most {plan.Case.Problem.Wishes.AtMost} applications; {rotation}{closed}{dropped}.";
    }

    private static string Against(SeasonPlan best, YearPlan first) => first.Plan is not { } before || before.Total == best.Total
        ? ""
        : best.Total > before.Total
            ? $"; {Figures.Dollars(best.Total - before.Total)} dearer than at first"
            : $"; {Figures.Dollars(before.Total - best.Total)} cheaper than at first";
}

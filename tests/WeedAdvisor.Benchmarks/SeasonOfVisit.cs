using System.Diagnostics;
using System.Globalization;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.World;

namespace WeedAdvisor.Benchmarks;

/// <summary>The season plan of the demo yard under the shipped knowledge, warm: what a screen waits for.</summary>
internal static class SeasonOfVisit
{
    private const int Times = 15;

    public static void Write(TextWriter to)
    {
        KnowledgeBase knowledge = ShippedRules.Knowledge;
        Advisor advisor = Advisor.Of(knowledge);
        Visit visit = ShippedRules.Demo;
        VisitArea area = visit.Areas.Single(one => one.Id == "container-yard");
        SeasonCase season = SeasonCase.Of(advisor, AreaCase.Alone(visit.Date, area), new SeasonRequest()).Value!;
        SeasonSearch search = SeasonSearch.Prepare(season.Problem);
        YearPlan plan = SeasonPlanner.Quick(season, knowledge, search);
        SeasonCase dropped = season.With(new SeasonRequest { Dropped = [plan.Plan!.Applications[0].Name] }, knowledge);
        SeasonCase closed = season.With(new SeasonRequest { Closed = [8, 9, 10, 11] }, knowledge);
        to.WriteLine($"The demo yard: {season.Treatments.Length} treatments, {season.Weeds.Length} weeds");
        to.WriteLine();
        to.WriteLine("| | median | worst |");
        to.WriteLine("| --- | --- | --- |");
        Row(to, "the rules asked for 52 weeks", () =>
            SeasonCase.Of(advisor, AreaCase.Alone(visit.Date, area), new SeasonRequest())
        );
        Row(to, "proven plan, from nothing", () =>
            SeasonPlanner.Quick(season, knowledge, SeasonSearch.Prepare(season.Problem))
        );
        Row(to, "after a product is dropped", () =>
            SeasonPlanner.Quick(dropped, knowledge, SeasonSearch.Prepare(dropped.Problem, search))
        );
        Row(to, "after a month is closed", () =>
            SeasonPlanner.Quick(closed, knowledge, SeasonSearch.Prepare(closed.Problem, search))
        );
        Row(to, "everything: next best, price of each rule and month", () => SeasonPlanner.Full(season, knowledge));
    }

    private static void Row(TextWriter to, string what, Action act)
    {
        act();
        double[] times = new double[Times];
        for (int i = 0; i < Times; i++)
        {
            long start = Stopwatch.GetTimestamp();
            act();
            times[i] = Stopwatch.GetElapsedTime(start).TotalMilliseconds;
        }

        Array.Sort(times);
        to.WriteLine(
            string.Create(CultureInfo.InvariantCulture, $"| {what} | {times[Times / 2]:0} ms | {times[^1]:0} ms |")
        );
    }
}

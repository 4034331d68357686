using System.Diagnostics;
using System.Globalization;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Tests.Season.Support;

namespace WeedAdvisor.Benchmarks;

/// <summary>
/// The season search beside CP-SAT, on invented years. Each in one thread; processor time, because other work on the
/// machine must not count.
/// </summary>
internal static class SeasonTable
{
    private static readonly (int Candidates, int Weeds, int OpenPercent, int Years, double Seconds)[] s_sizes =
    [
        (5, 4, 92, 10, 60),
        (10, 6, 92, 5, 120),
        (30, 12, 5, 10, 120),
        (30, 12, 92, 2, 300),
    ];

    /// <summary>Measures and writes the tables.</summary>
    public static void Write(TextWriter to)
    {
        Solve(RandomSeasons.Year(1));
        WriteFull(to, years: 60);
        to.WriteLine();
        to.WriteLine(
            "| treatments x weeds, weeks open | years | this search, median | CP-SAT, median | proven by both | same "
                + "cost |"
        );
        to.WriteLine("| --- | --- | --- | --- | --- | --- |");
        foreach ((int candidates, int weeds, int open, int years, double seconds) in s_sizes)
        {
            double[] mine = new double[years],
                other = new double[years];
            int proven = 0,
                same = 0;
            for (int year = 0; year < years; year++)
            {
                SeasonProblem problem = RandomSeasons.Year((ulong)year, candidates, weeds, open);
                SeasonPlan plan = Timed(() => Solve(problem), out mine[year]);
                decimal? cost = Timed(() => new CpSatSeason(problem).Solve(seconds), out other[year]);
                proven += cost is null ? 0 : 1;
                same += cost == plan.Total ? 1 : 0;
            }
            to.WriteLine(
                Text($"| {candidates} x {weeds}, {open} % | {years} | {Median(mine):0} ms | {Median(other):0} ms ")
                    + $"| {proven} | {same} |"
            );
        }
    }

    /// <summary>Measures this search alone, without the comparison that takes minutes.</summary>
    public static void WriteAlone(TextWriter to)
    {
        Solve(RandomSeasons.Year(1));
        WriteFull(to, years: 60);
        to.WriteLine();
        SeasonOfVisit.Write(to);
    }

    private static void WriteFull(TextWriter to, int years)
    {
        double[] fresh = new double[years],
            again = new double[years],
            rules = new double[years],
            next = new double[years];
        for (int year = 0; year < years; year++)
        {
            SeasonProblem problem = RandomSeasons.Year((ulong)year);
            SeasonSearch? search = null;
            SeasonPlan plan = Timed(() => (search = SeasonSearch.Prepare(problem)).Solve().Plan!, out fresh[year]);
            string dropped = plan.Applications.IsEmpty ? problem.Candidates[0].Name : plan.Applications[0].Name;
            SeasonProblem changed = problem with { Wishes = problem.Wishes with { Dropped = [dropped] } };
            Timed(() => SeasonSearch.Prepare(changed, search).Solve(plan), out again[year]);
            Timed(() => Alternatives.Of(search!, plan), out next[year]);
            Timed(() => RulePrices.Of(search!, plan), out rules[year]);
        }
        to.WriteLine(Text($"{years} years of 52 weeks x 30 treatments x 12 weeds:"));
        to.WriteLine();
        to.WriteLine("| | median | nine in ten | worst |");
        to.WriteLine("| --- | --- | --- | --- |");
        foreach (
            (string what, double[] times) in ((string, double[])[])
                [
                    ("proven plan, from nothing", fresh),
                    ("after one treatment is dropped", again),
                    ("three runners-up, proven", next),
                    ("price of every rule", rules),
                ]
        )
        {
            Array.Sort(times);
            to.WriteLine(Text($"| {what} | {Median(times):0} ms | {times[years * 9 / 10]:0} ms | {times[^1]:0} ms |"));
        }
    }

    private static SeasonPlan Solve(SeasonProblem problem) => SeasonSearch.Prepare(problem).Solve().Plan!;

    private static T Timed<T>(Func<T> act, out double milliseconds)
    {
        using Process self = Process.GetCurrentProcess();
        self.Refresh();
        TimeSpan before = self.TotalProcessorTime;
        T result = act();
        self.Refresh();
        milliseconds = (self.TotalProcessorTime - before).TotalMilliseconds;
        return result;
    }

    private static double Median(double[] times) => times.Order().ElementAt(times.Length / 2);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

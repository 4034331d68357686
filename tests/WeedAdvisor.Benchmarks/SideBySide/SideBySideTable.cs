using System.Diagnostics;
using System.Globalization;

namespace WeedAdvisor.Benchmarks.SideBySide;

/// <summary>
/// Four ways to find what 300 rules conclude from a case of 30 facts. Every way must give the same conclusions on every
/// case before anything is measured; then one warm session of each takes case after case.
/// </summary>
internal static class SideBySideTable
{
    private const int Rounds = 9;

    // Long enough that the runtime has compiled what is hot for the second time.
    private static readonly TimeSpan s_warm = TimeSpan.FromSeconds(3);

    // The package takes seconds for a case; more would measure nothing else.
    private const int SlowCases = 3;

    /// <summary>Writes both tables; false when a demand is not met.</summary>
    public static bool Write(TextWriter to)
    {
        bool first = Write(to, "300 rules on the case alone", DrawnRules.OnTheCase(), 1);
        return Write(to, "300 rules, 200 of them joined with 150 records", DrawnRules.OnTheCatalogue(), 10) && first;
    }

    private static bool Write(TextWriter to, string title, DrawnRules rules, double atLeast)
    {
        IWay[] ways = [new OurWay(rules), new PlainNRulesWay(rules), new LoopWay(rules), new PackageWay(rules)];
        int conclusions = Check(ways, rules);
        to.WriteLine(Invariant($"{title}; {rules.All.Count} cases of 30 facts, {conclusions} conclusions, all equal"));
        Measured[] measured = Measure(ways, rules.All.Count);
        foreach (Measured one in measured)
        {
            string time = Invariant($"{one.Median.TotalMilliseconds:0.000}").PadLeft(10);
            string size = Invariant($"{one.Bytes / 1024.0:0}").PadLeft(12);
            to.WriteLine($"  {one.Name.PadRight(14)} {time} ms a case {size} KB");
        }

        double ahead = measured[1].Median / measured[0].Median;
        bool isMet = ahead >= atLeast;
        to.WriteLine(
            Invariant(
                $"  this engine is {ahead:0.0} times as fast as plain NRules; asked for {atLeast:0}: {Word(isMet)}"
            )
        );
        return isMet;
    }

    private static int Check(IWay[] ways, DrawnRules rules)
    {
        int all = 0;
        for (int place = 0; place < rules.All.Count; place++)
        {
            string[]? first = null;
            // Of the slow way some cases are compared, of the others each.
            foreach (IWay way in ways.Where(way => way is not PackageWay || place < SlowCases))
            {
                int count = way.Conclude(place);
                string[] keys = [.. way.Keys().Order(StringComparer.Ordinal)];
                first ??= keys;
                if (count != keys.Length || !first.SequenceEqual(keys))
                    throw new InvalidOperationException($"case {place}: {way.Name} concludes something else");
            }

            all += first!.Length;
        }

        return all;
    }

    // The ways take turns, so that whatever else the machine does falls on all of them.
    private static Measured[] Measure(IWay[] ways, int cases)
    {
        foreach (IWay way in ways)
        {
            long begun = Stopwatch.GetTimestamp();
            while (Stopwatch.GetElapsedTime(begun) < s_warm)
                Measure(way, cases, []);
        }

        List<(TimeSpan Time, long Bytes)>[] all = [.. ways.Select(_ => new List<(TimeSpan Time, long Bytes)>())];
        for (int round = 0; round < Rounds; round++)
        {
            for (int way = 0; way < ways.Length; way++)
                Measure(ways[way], cases, all[way]);
        }

        return
        [
            .. ways.Zip(all, (way, of) =>
                new Measured(
                    way.Name,
                    of.Select(one => one.Time).Order().ElementAt(of.Count / 2),
                    of.Average(one => one.Bytes)
                )
            ),
        ];
    }

    private static void Measure(IWay way, int cases, List<(TimeSpan Time, long Bytes)> into)
    {
        for (int place = 0; place < (way is PackageWay ? SlowCases : cases); place++)
        {
            long before = GC.GetAllocatedBytesForCurrentThread();
            long begun = Stopwatch.GetTimestamp();
            way.Conclude(place);
            into.Add((Stopwatch.GetElapsedTime(begun), GC.GetAllocatedBytesForCurrentThread() - before));
        }
    }

    private static string Word(bool isMet) => isMet ? "met" : "missed";

    private static string Invariant(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);

    private sealed record Measured(string Name, TimeSpan Median, double Bytes);
}

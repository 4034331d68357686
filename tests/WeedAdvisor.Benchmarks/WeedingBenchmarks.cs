using BenchmarkDotNet.Attributes;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Benchmarks;

/// <summary>
/// Hand weeding of 1000 pots over 52 weeks with 12 weeds (budget 20 ms), and the six usual intervals compared.
/// </summary>
[MemoryDiagnoser]
public class WeedingBenchmarks
{
    private WeedingPlan _plan = null!;

    [GlobalSetup]
    public void Set()
    {
        KnowledgeBase knowledge = ShippedRules.Knowledge;
        WeedingNumbers numbers = WeedingNumbers.Of(knowledge).Value!;
        var site = new WeedSite("us-southeast", Hemisphere.North, "moist", "mown");
        _plan = new WeedingPlan
        {
            Weeds =
            [
                .. knowledge
                    .Weeds.Values.Select(weed => WeedTraits.Of(weed, site, numbers))
                    .Where(traits => traits.IsGood)
                    .Take(12)
                    .Select(traits => PlannedWeed.Free(traits.Value!)),
            ],
            FirstWeek = 0,
            Weeks = 52,
            IntervalWeeks = 2,
            Missed = numbers.Missed,
            SmallestPulledCm = numbers.SmallestPulledCm,
            Numbers = numbers,
        };
    }

    [Benchmark]
    public object OneSeason() => WeedingRun.Of(_plan);

    [Benchmark]
    public object SixIntervals() => IntervalComparison.Of(_plan, IntervalComparison.UsualIntervals, 18);
}

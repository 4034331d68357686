using BenchmarkDotNet.Attributes;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
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
        var setup = new WeedingSetup
        {
            Weeds =
            [
                .. knowledge
                    .Weeds.Values.Where(weed => weed.Kind != "alga")
                    .Take(12)
                    .Select(weed => new SetupWeed(weed, null, null, [])),
            ],
            Site = new WeedSite("us-southeast", Hemisphere.North, "moist", "mown"),
            Start = new DateOnly(2026, 1, 1),
            Weeks = 52,
        };
        _plan = setup.Plan(WeedingNumbers.Of(knowledge).Value!, 2).Value!;
    }

    [Benchmark]
    public object OneSeason() => WeedingRun.Of(_plan);

    [Benchmark]
    public object SixIntervals() => IntervalComparison.Of(_plan, IntervalComparison.UsualIntervals, 18);
}

using BenchmarkDotNet.Attributes;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Tests.Season.Support;

namespace WeedAdvisor.Benchmarks;

/// <summary>
/// The season search on one invented year of 52 weeks x 30 treatments x 12 weeds. Budget: 1 s, after one change 150 ms.
/// </summary>
[MemoryDiagnoser]
public class SeasonBenchmarks
{
    private readonly SeasonProblem _year = RandomSeasons.Year(0);
    private readonly SeasonSearch _search;
    private readonly SeasonPlan _plan;
    private readonly SeasonProblem _changed;

    public SeasonBenchmarks()
    {
        _search = SeasonSearch.Prepare(_year);
        _plan = _search.Solve().Plan!;
        _changed = _year with { Wishes = _year.Wishes with { Dropped = [_plan.Applications[0].Name] } };
    }

    [Benchmark]
    public object FromNothing() => SeasonSearch.Prepare(_year).Solve();

    [Benchmark]
    public object AfterOneChange() => SeasonSearch.Prepare(_changed, _search).Solve(_plan);
}

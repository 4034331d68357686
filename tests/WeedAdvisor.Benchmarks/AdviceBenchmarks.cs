using System.Collections.Immutable;
using BenchmarkDotNet.Attributes;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Benchmarks;

/// <summary>
/// Advice on the demo visit, one answer changed live (budget 16 ms), a thousand areas (budget 2 s, linear).
/// </summary>
[MemoryDiagnoser]
public class AdviceBenchmarks
{
    private Advisor _advisor = null!;
    private Visit _demo = null!;
    private LiveAdvice _live = null!;
    private VisitArea[] _answers = null!;
    private int _next;
    private DateOnly _day;

    [Params(1, 10, 100, 1000)]
    public int Areas { get; set; }

    [GlobalSetup]
    public void Set()
    {
        KnowledgeBase knowledge = ShippedRules.Knowledge;
        _advisor = Advisor.Of(knowledge);
        Visit demo = ShippedRules.Demo;
        ImmutableArray<VisitArea> areas =
        [
            .. Enumerable.Range(0, Areas).Select(i => demo.Areas[i % demo.Areas.Length] with { Id = $"area-{i}" }),
        ];
        _demo = demo with { Areas = areas };
        VisitArea area = demo.Areas[0];
        _answers = [area.With("surface-moisture", "wet"), area.With("surface-moisture", "dry-between")];
        _day = demo.Date;
        _live = _advisor.Open(AreaCase.Alone(_day, area));
    }

    [Benchmark]
    public object Advise() => _advisor.Advise(_demo);

    [Benchmark]
    public object ChangeOneAnswer() => _live.Change(AreaCase.Alone(_day, _answers[_next++ % 2]));
}

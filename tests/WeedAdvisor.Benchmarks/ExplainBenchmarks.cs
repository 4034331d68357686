using BenchmarkDotNet.Attributes;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Unlock;
using WeedAdvisor.Reports.Why;
using WeedAdvisor.World;

namespace WeedAdvisor.Benchmarks;

/// <summary>Why, why not (budget 100 ms) and what would have to change (budget 1 s), on the full knowledge.</summary>
[MemoryDiagnoser]
public class ExplainBenchmarks
{
    private Advisor _advisor = null!;
    private VisitAdvice _advice = null!;
    private CatalogueAction _action = null!;

    [Params("rice-hull-mulch", "oxadiazon-granule", "glufosinate-directed")]
    public string Action { get; set; } = "";

    [GlobalSetup]
    public void Set()
    {
        Visit visit = ShippedRules.Visit("container-yard-with-spurge");
        _advisor = ShippedRules.Advisor;
        _advice = _advisor.Advise(visit);
        _action = ShippedRules.Knowledge.ActionOf(Action)!;
    }

    [Benchmark]
    public object Why() => WhyDocument.Of(_advice, _action, _advisor.Knowledge, full: true);

    [Benchmark]
    public object Unlock() => UnlockDocument.Of(_advisor, _advice, _action);
}

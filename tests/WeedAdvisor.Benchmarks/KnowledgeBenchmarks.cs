using BenchmarkDotNet.Attributes;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.World;

namespace WeedAdvisor.Benchmarks;

/// <summary>Reading and compiling the shipped rules, warm. Budget: 150 ms together.</summary>
[MemoryDiagnoser]
public class KnowledgeBenchmarks
{
    private readonly string _folder = Repository.Rules;
    private readonly KnowledgeBase _knowledge = ShippedRules.Knowledge;

    [Benchmark]
    public object Load() => KnowledgeFolder.Load(_folder);

    [Benchmark]
    public object Compile() => Advisor.Of(_knowledge);
}

using BenchmarkDotNet.Attributes;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;

namespace WeedAdvisor.Benchmarks;

/// <summary>Reading and compiling the shipped rules, warm. Budget: 150 ms together.</summary>
[MemoryDiagnoser]
public class KnowledgeBenchmarks
{
    private readonly string _folder = ShippedRules.Folder;
    private readonly KnowledgeBase _knowledge = ShippedRules.Load();

    [Benchmark]
    public object Load() => KnowledgeFolder.Load(_folder);

    [Benchmark]
    public object Compile() => Advisor.Of(_knowledge);
}

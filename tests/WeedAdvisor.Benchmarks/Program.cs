using BenchmarkDotNet.Running;
using WeedAdvisor.Benchmarks;
using WeedAdvisor.Benchmarks.SideBySide;

#pragma warning disable RS0030 // The entry is the one place that talks to the console; all else gets a writer.
if (args is ["season"])
{
    SeasonTable.Write(Console.Out);
}
else if (args is ["season", "alone"])
{
    SeasonTable.WriteAlone(Console.Out);
}
else if (args is ["explain"])
{
    ExplainTable.Write(Console.Out);
}
else if (args is ["rules"])
{
    return SideBySideTable.Write(Console.Out) ? 0 : 1;
}
else
{
    BenchmarkSwitcher
        .FromTypes([
            typeof(KnowledgeBenchmarks),
            typeof(AdviceBenchmarks),
            typeof(WeedingBenchmarks),
            typeof(SeasonBenchmarks),
        ])
        .Run(args);
}

return 0;

using BenchmarkDotNet.Running;
using WeedAdvisor.Benchmarks;

BenchmarkSwitcher.FromTypes([typeof(KnowledgeBenchmarks), typeof(AdviceBenchmarks), typeof(WeedingBenchmarks)]).Run(args);

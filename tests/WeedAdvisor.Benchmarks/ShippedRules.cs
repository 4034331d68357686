using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Benchmarks;

/// <summary>The rules that ship and the demo visit, found from wherever the benchmark runs.</summary>
internal static class ShippedRules
{
    public static string Folder
    {
        get
        {
            DirectoryInfo? folder = new(AppContext.BaseDirectory);
            while (folder is not null && !File.Exists(Path.Combine(folder.FullName, "WeedAdvisor.sln")))
                folder = folder.Parent;
            return Path.Combine(folder?.FullName ?? ".", "rules");
        }
    }

    public static KnowledgeBase Load() =>
        KnowledgeFolder.Load(Folder).Value ?? throw new InvalidOperationException("the shipped rules do not load");

    public static Visit Demo(KnowledgeBase knowledge) =>
        VisitFile.Read(Path.Combine(Folder, "visits", "demo-spring.yaml"), knowledge).Value
        ?? throw new InvalidOperationException("the demo visit does not load");
}

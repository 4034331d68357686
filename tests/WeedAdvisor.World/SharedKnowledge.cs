using System.Collections.Concurrent;
using System.Runtime.CompilerServices;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.World;

/// <summary>
/// The knowledge folders of the repository, which no test changes: each is read and compiled once a process, however
/// many commands ask for it.
/// </summary>
public static class SharedKnowledge
{
    private static readonly ConcurrentDictionary<
        (string Folder, KnowledgeScope Scope),
        Lazy<Outcome<KnowledgeBase, Problem>>
    > s_read = new();

    private static readonly ConditionalWeakTable<KnowledgeBase, Advisor> s_compiled = [];

    /// <summary>Reads a folder; one that stands elsewhere, or has another laid over it, is read anew.</summary>
    public static Outcome<KnowledgeBase, Problem> Read(string folder, KnowledgeScope scope, string? local) =>
        local is null && Path.GetFullPath(folder).StartsWith(Repository.Folder, StringComparison.Ordinal)
            ? s_read
                .GetOrAdd((Path.GetFullPath(folder), scope), static key => new Lazy<Outcome<KnowledgeBase, Problem>>(
                    () =>
                        KnowledgeFolder.Load(key.Folder, key.Scope)
                ))
                .Value
            : KnowledgeFolder.Load(folder, scope, local);

    /// <summary>The advisor of a knowledge base.</summary>
    public static Advisor Compile(KnowledgeBase knowledge) => s_compiled.GetValue(knowledge, Advisor.Of);
}

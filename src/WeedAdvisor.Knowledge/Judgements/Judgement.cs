using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>
/// A rule of the trade: conditions, one consequence, the reason in plain words. This tree is the one source from which
/// the engine's rule, the explanations and the documentation come.
/// </summary>
/// <param name="Id">The rule's id: a kebab-case sentence that states it.</param>
/// <param name="Topic">The topic file it stands in, such as <c>under-cover</c>.</param>
/// <param name="When">The conditions, all of which must hold, in the order written; never empty.</param>
/// <param name="Then">The one consequence.</param>
/// <param name="Because">The reason, in words for the grower; may hold slots such as <c>{treatment}</c> and
/// <c>{$cover}</c>.</param>
/// <param name="Sources">Keys of the sources; never empty.</param>
/// <param name="Memory">Names of fields whose value is from memory.</param>
/// <param name="Where">Where the rule stands.</param>
public sealed record Judgement(
    string Id,
    string Topic,
    ImmutableArray<Pattern> When,
    Consequence Then,
    string Because,
    ImmutableArray<string> Sources,
    ImmutableArray<string> Memory,
    Place Where
);

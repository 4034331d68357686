using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;

namespace WeedAdvisor.Reports.Rates;

/// <summary>A rate sum that was done, with all that a report of it needs.</summary>
/// <param name="Form">The form.</param>
/// <param name="Entries">What was entered.</param>
/// <param name="Answer">The answer.</param>
/// <param name="Knowledge">The knowledge, for its sources; null when it was not read.</param>
public sealed record RateReport(
    RateForm Form, ImmutableArray<RateEntry> Entries, RateAnswer Answer, KnowledgeBase? Knowledge)
{
    /// <summary>What was assumed: the usual values taken for what was not entered, then what the form says.</summary>
    public IEnumerable<string> Assumed => Entries
        .Where(entry => entry.IsUsual)
        .Select(entry => $"{entry.Field.Label}: {entry.Typed}, the usual value; nothing was entered.")
        .Concat(Answer.Assumed);

    /// <summary>A source in full; null when it is not in the list.</summary>
    public string? CitationOf(string key) =>
        RateCitations.Find(key)?.Citation
        ?? (Knowledge is { } knowledge && knowledge.Sources.TryGetValue(key, out var source) ? source.Citation : null);
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;

namespace WeedAdvisor.Reports.Rates;

/// <summary>A rate sum that was done, with all that a report of it needs.</summary>
/// <param name="Form">The form.</param>
/// <param name="Entries">What was entered.</param>
/// <param name="Answer">The answer.</param>
/// <param name="Sources">The sources by key; empty when they could not be read, so that a sum is told without.</param>
public sealed record RateReport(
    RateForm Form,
    ImmutableArray<RateEntry> Entries,
    RateAnswer Answer,
    ImmutableSortedDictionary<string, Source> Sources
)
{
    /// <summary>What was assumed: the usual values taken for what was not entered, then what the form says.</summary>
    public IEnumerable<string> Assumed =>
        Entries
            .Where(entry => entry.IsUsual)
            .Select(entry => $"{entry.Field.Label}: {entry.Typed}, the usual value; nothing was entered.")
            .Concat(Answer.Assumed);

    /// <summary>A source in full; null when it is not in the list.</summary>
    public string? CitationOf(string key) => Sources.GetValueOrDefault(key)?.Citation;
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>The word lists without which records can't be checked.</summary>
internal static class RequiredLists
{
    private static readonly ImmutableArray<string> s_ids =
    [
        "acts-on",
        "application",
        "country",
        "crop-trait",
        "emergence-zone",
        "enclosed-use",
        "favour",
        "formulation",
        "law-topic",
        "life-cycle",
        "one-of",
        "possible",
        "practice-kind",
        "practice-tag",
        "question-group",
        "rating-scale",
        "role",
        "signal-word",
        "site-of-action",
        "spread",
        "stage",
        "status",
        "volatility",
        "weed-feature",
        "weed-kind",
        "when",
        "works-on",
    ];

    /// <summary>One problem for each list that no vocabulary file declares.</summary>
    public static IEnumerable<Problem> MissingFrom(IReadOnlyCollection<WordList> lists) =>
        s_ids
            .Except(lists.Select(list => list.Id), StringComparer.Ordinal)
            .Select(id => new Problem(
                Place.Whole("vocabulary"),
                $"no list '{id}'",
                $"a list '{id}' in one of the files of vocabulary/"
            ));
}

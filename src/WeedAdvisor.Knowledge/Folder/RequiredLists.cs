using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

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
        s_ids.Except(lists.Select(list => list.Id), StringComparer.Ordinal).Select(Missing);

    /// <summary>
    /// One problem for each list, and each question with answers, that records name words of though nothing declares
    /// it; required lists are told already.
    /// </summary>
    public static IEnumerable<Problem> Undeclared(IEnumerable<string> notations) =>
        notations
            .Where(notation => !s_ids.Any(id => notation == LexiconBuilder.Lists + id))
            .Select(notation =>
                notation.StartsWith(LexiconBuilder.Lists, StringComparison.Ordinal)
                    ? Missing(notation[LexiconBuilder.Lists.Length..])
                    : MissingQuestion(notation[LexiconBuilder.AnswersTo.Length..])
            );

    private static Problem Missing(string id) =>
        new(Place.Whole("vocabulary"), $"no list '{id}'", $"a list '{id}' in one of the files of vocabulary/");

    private static Problem MissingQuestion(string id) =>
        new(Place.Whole("questions.yaml"), $"no question '{id}'", $"a question '{id}', whose answers records name");
}

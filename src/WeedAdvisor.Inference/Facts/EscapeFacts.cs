using System.Collections.Immutable;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>The facts of what came through an earlier application without an explanation.</summary>
internal static class EscapeFacts
{
    private static readonly Need s_past = Need.Question(QuestionIds.Past);

    /// <summary>
    /// One fact for each weed and site of action, and one for each site that may have let some weed through.
    /// </summary>
    public static IEnumerable<EscapeFact> Of(ImmutableArray<PastApplication>? past, KnowledgeBase knowledge) =>
        EscapesOfArea.Of(past, knowledge).Select(escape => Of(escape, knowledge));

    private static EscapeFact Of(Escape escape, KnowledgeBase knowledge) =>
        new(
            $"{escape.Weed ?? "?"}-{escape.Site ?? "?"}",
            NameOf(escape, knowledge),
            new Dictionary<string, Reading>
            {
                ["weed"] = escape.Weed is { } weed ? Reading.Of(weed) : Reading.NotKnown(s_past),
                ["site"] = escape.Site is { } site ? Reading.Of(site) : Reading.NotKnown(s_past),
                ["times"] =
                    escape.Times >= Escape.TimesToLapse || !escape.MayBeMore
                        ? Reading.Of(escape.Times)
                        : Reading.NotKnown(s_past),
                ["failed-sites"] = escape.Weed is null ? Reading.NotKnown(s_past) : Reading.Of(escape.FailedSites),
                ["on-record"] = escape.Weed is null ? Reading.NotKnown(s_past) : Reading.Of(escape.IsOnRecord),
            }
        );

    private static string NameOf(Escape escape, KnowledgeBase knowledge) =>
        escape.Weed is { } weed
            ? $"{knowledge.Weeds[weed].Name} came through {escape.Product.ToLowerInvariant()}"
            : $"a weed may have come through {escape.Product.ToLowerInvariant()}";
}

using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>Which practice lays which answer of <c>mulch</c>.</summary>
internal static class Mulches
{
    private const string Other = "other";

    private static readonly (string Answer, string Practice)[] s_laid =
    [
        ("rice-hulls", "rice-hull-mulch"),
        ("bark", "bark-mulch"),
        ("wood-chips", "wood-chip-mulch"),
        ("discs", "weed-discs"),
    ];

    /// <summary>The answer that a covering practice leads to; null when the action covers nothing.</summary>
    public static string? KindOf(CatalogueAction action) =>
        action is not Practice { Kind: "covering" }
            ? null
            : s_laid.FirstOrDefault(laid => laid.Practice == action.Id).Answer ?? Other;

    /// <summary>The practice that lays an answer; null when none is known to.</summary>
    public static Practice? PracticeOf(string answer, KnowledgeBase knowledge) =>
        s_laid.FirstOrDefault(laid => laid.Answer == answer).Practice is { } id
            ? knowledge.Practices.GetValueOrDefault(id)
            : null;
}

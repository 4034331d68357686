using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Areas;

/// <summary>The kinds of place that hold pots: the list <c>holds-pots</c> of the vocabulary.</summary>
internal static class PotPlaces
{
    private const string List = "holds-pots";

    /// <summary>Whether a kind of place holds pots. Where the knowledge has no such list, any may.</summary>
    public static bool Contain(string place, KnowledgeBase knowledge) =>
        !knowledge.Vocabulary.TryGetValue(List, out WordList? list) || list.Contains(place);
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Areas;

/// <summary>The questions on which every other stands: what the place, its roof, its stock and its weeds are.</summary>
internal static class Footing
{
    private static readonly ImmutableHashSet<string> s_ground =
    [
        QuestionIds.Place,
        QuestionIds.Cover,
        QuestionIds.Stock,
    ];

    /// <summary>Whether a question asks what kind of place it is, which decides what else is asked.</summary>
    public static bool IsFirst(string question) => question == QuestionIds.Place;

    /// <summary>Whether a question asks for the place, its roof or its stock.</summary>
    public static bool IsGround(string question) => s_ground.Contains(question);

    /// <summary>Whether every other question stands on it.</summary>
    public static bool Holds(string question) => IsGround(question) || question == QuestionIds.Weeds;
}

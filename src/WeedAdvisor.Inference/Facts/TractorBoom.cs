using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Facts;

/// <summary>
/// A sprayer on a tractor is a boom sprayer where a tractor drives: along strips, fence lines and roads, and over beds
/// and pads on which nothing stands, under the open sky. Between pots and in a house it is none.
/// </summary>
internal static class TractorBoom
{
    private const string Tractor = "tractor-sprayer",
        Boom = "boom-sprayer";

    private static readonly WordSet s_driven = WordSet.Of(["noncrop-strip", "walkway"]);
    private static readonly WordSet s_drivenWhenEmpty = WordSet.Of(["container-yard", "liner-bed"]);
    private static readonly WordSet s_none = WordSet.Of(["none-present"]);
    private static readonly WordSet s_open = WordSet.Of(["open-sky"]);

    /// <summary>Adds the boom to the tools that were told, where the tractor carries it to.</summary>
    public static void AddTo(Dictionary<string, Reading> readings)
    {
        if (
            readings.GetValueOrDefault(QuestionIds.Equipment) is Reading.Words { Value: var tools }
            && tools.Contains(Tractor)
            && IsDriven(readings)
        )
        {
            readings[QuestionIds.Equipment] = Reading.Of(WordSet.Of([.. tools, Boom]));
        }
    }

    private static bool IsDriven(Dictionary<string, Reading> readings)
    {
        return Is(QuestionIds.Place, s_driven)
            || (
                Is(QuestionIds.Place, s_drivenWhenEmpty)
                && Is(QuestionIds.Stock, s_none)
                && Is(QuestionIds.Cover, s_open)
            );

        bool Is(string question, WordSet words) =>
            readings.GetValueOrDefault(question, Reading.Absent).IsAnyOf(words) == Truth.Yes;
    }
}

using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>
/// Two answers that may contradict each other: what stock stands here, and which crops. Where they do, one of them is
/// wrong, nobody knows which, and neither may clear anything: both count as not known and are asked again.
/// </summary>
public static class StockAndCrops
{
    private const string NonePresent = "none-present";

    /// <summary>Whether the answer to this question cannot be taken as it stands.</summary>
    public static bool Contradicts(string question, VisitArea area) =>
        question switch
        {
            QuestionIds.Stock => IsEmptyWithCrops(area),
            QuestionIds.Crops => IsStockWithoutCrops(area),
            _ => false,
        };

    /// <summary>Whether crops are named although no stock is said to stand here.</summary>
    public static bool IsEmptyWithCrops(VisitArea area) =>
        WordsOf(area, QuestionIds.Stock) is { } stock
        && stock.Contains(NonePresent)
        && WordsOf(area, QuestionIds.Crops) is { Count: > 0 };

    /// <summary>Whether the list of crops is empty although it is not said that no stock stands here.</summary>
    public static bool IsStockWithoutCrops(VisitArea area) =>
        WordsOf(area, QuestionIds.Crops) is { Count: 0 }
        && WordsOf(area, QuestionIds.Stock)?.Contains(NonePresent) != true;

    private static WordSet? WordsOf(VisitArea area, string question) =>
        area.Answers.GetValueOrDefault(question) is Answer.Words words ? words.Value : null;
}

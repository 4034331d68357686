using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Worked;

/// <summary>Where an action stands in an area, in one line.</summary>
public static class Standing
{
    /// <summary>Where the action stands, starting with "it".</summary>
    public static string Of(AreaAdvice area, string action)
    {
        if (area.Clear.FirstOrDefault(clear => clear.Action == action) is { } clear)
            return $"it is {StatusWords.Of(clear, need => need.Id)} with rank {clear.Rank}";
        if (area.Barred.FirstOrDefault(barred => barred.Action == action) is { } barred)
            return $"it is {StatusWords.Of(barred)}, {StatusWords.Of(barred.Severity)}, by {Judgements(barred)}";
        if (area.Waiting.FirstOrDefault(waiting => waiting.Action == action) is { } waiting)
            return $"it waits for {string.Join(", ", waiting.Needs.Select(need => need.Id))}";
        return area.AllConclusions().Any(reason => reason.Action == action)
            ? "it is not advised: too little speaks for it"
            : "it is not advised: no rule speaks of it";
    }

    private static string Judgements(BarredAction barred) =>
        string.Join(", ", barred.Because.Select(reason => reason.Judgement).Distinct(StringComparer.Ordinal));
}

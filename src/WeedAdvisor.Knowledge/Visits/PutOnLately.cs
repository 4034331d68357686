namespace WeedAdvisor.Knowledge.Visits;

/// <summary>
/// The question whether anything was put on lately, and the earlier uses that answer it. Who says that nothing was, and
/// tells of a use of this week, contradicts himself: then the use counts.
/// </summary>
public static class PutOnLately
{
    /// <summary>The question.</summary>
    public const string Question = Records.QuestionIds.PutOnLately;

    /// <summary>How many days back it asks.</summary>
    public const int Days = 7;

    /// <summary>The answer that something was.</summary>
    public const string Yes = "yes";

    private const string No = "no";

    /// <summary>
    /// The latest use that is told of the days the question asks for; null when none is, or its day is not known.
    /// </summary>
    public static PastApplication? LastTold(VisitArea area, DateOnly visit) =>
        ToldOf(area, visit).MaxBy(use => use.Date);

    /// <summary>The uses that are told of the days the question asks for.</summary>
    public static IEnumerable<PastApplication> ToldOf(VisitArea area, DateOnly visit) =>
        (area.Past ?? []).Where(use => use.Date >= visit.AddDays(-Days) && use.Date <= visit);

    /// <summary>Whether the area says that nothing was put on.</summary>
    public static bool SaysNo(VisitArea area) => Says(area, No);

    /// <summary>Whether it is known of the area what it had: by an answer, or because a use is told.</summary>
    public static bool IsSettled(VisitArea area, DateOnly visit) =>
        area.Answers.GetValueOrDefault(Question) is Answer.Words || LastTold(area, visit) is not null;

    /// <summary>
    /// Whether the area has nothing to tell those that share its house: no use is told, and it is answered that none
    /// of these days is missing.
    /// </summary>
    public static bool IsSilent(VisitArea area, DateOnly visit) =>
        area.Past is null or [] && IsSettled(area, visit) && !SaysYes(area, visit);

    /// <summary>Whether the area says that nothing was put on, and tells of a use all the same.</summary>
    public static bool IsContradicted(VisitArea area, DateOnly visit) =>
        Says(area, No) && LastTold(area, visit) is not null;

    /// <summary>Whether the area says that something was put on, in so many words or by telling of the use.</summary>
    public static bool SaysYes(VisitArea area, DateOnly visit) => Says(area, Yes) || LastTold(area, visit) is not null;

    private static bool Says(VisitArea area, string word) =>
        area.Answers.GetValueOrDefault(Question) is Answer.Words words && words.Value.Contains(word);
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <summary>Changes to an area: each gives a new area and leaves the old one as it was.</summary>
public static class AreaEdits
{
    /// <summary>The area with an answer to a question that takes words, a number or a date.</summary>
    public static VisitArea WithAnswer(this VisitArea area, string question, Answer answer) =>
        area with
        {
            Answers = area.Answers.SetItem(question, answer),
        };

    /// <summary>The area with an answer to such a question, or with none.</summary>
    public static VisitArea WithAnswerOrNone(this VisitArea area, string question, Answer? answer) =>
        answer is null ? area with { Answers = area.Answers.Remove(question) } : area.WithAnswer(question, answer);

    /// <summary>The area without any answer to a question.</summary>
    public static VisitArea WithoutAnswer(this VisitArea area, Question question) =>
        question.Kind switch
        {
            QuestionKind.Weeds => area with { Weeds = null },
            QuestionKind.Past => area with { Past = null },
            _ => area with { Answers = area.Answers.Remove(question.Id) },
        };

    /// <summary>The area with a weed seen; what was said of that weed before is replaced.</summary>
    public static VisitArea WithWeed(this VisitArea area, WeedSeen seen)
    {
        ImmutableArray<WeedSeen> weeds = area.Weeds ?? [];
        int at = IndexOf(weeds, seen.Weed);
        return area with { Weeds = at < 0 ? weeds.Add(seen) : weeds.SetItem(at, seen) };
    }

    /// <summary>
    /// The area without a weed. After the last one, whether there are weeds is not known: it is for the grower to say
    /// that there are none.
    /// </summary>
    public static VisitArea WithoutWeed(this VisitArea area, string weed)
    {
        ImmutableArray<WeedSeen> weeds = area.Weeds ?? [];
        int at = IndexOf(weeds, weed);
        if (at < 0)
            return area;
        weeds = weeds.RemoveAt(at);
        return area with { Weeds = weeds.IsEmpty ? null : weeds };
    }

    /// <summary>The area with one more earlier application.</summary>
    public static VisitArea WithPast(this VisitArea area, PastApplication past) =>
        area with
        {
            Past = (area.Past ?? []).Add(past),
        };

    /// <summary>The area with an earlier application, counted from 0, replaced.</summary>
    public static VisitArea WithPastAt(this VisitArea area, int index, PastApplication past) =>
        area with
        {
            Past = (area.Past ?? []).SetItem(index, past),
        };

    /// <summary>
    /// The area without an earlier application, counted from 0. After the last one, whether there were any is not
    /// known.
    /// </summary>
    public static VisitArea WithoutPastAt(this VisitArea area, int index)
    {
        ImmutableArray<PastApplication> past = (area.Past ?? []).RemoveAt(index);
        return area with { Past = past.IsEmpty ? null : past };
    }

    /// <summary>The one word said to a question; null when none or several were.</summary>
    public static string? WordOf(this VisitArea area, string question) =>
        area.Answers.GetValueOrDefault(question) is Answer.Words { Value: { Count: 1 } words } ? words.First() : null;

    private static int IndexOf(ImmutableArray<WeedSeen> weeds, string weed)
    {
        for (int i = 0; i < weeds.Length; i++)
        {
            if (weeds[i].Weed == weed)
                return i;
        }

        return -1;
    }
}

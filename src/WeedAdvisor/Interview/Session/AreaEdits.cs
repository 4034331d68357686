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

    /// <summary>
    /// The area with a weed seen. It takes the place of what was said of that weed in this stage, or without one; where
    /// it was said of another stage only, it stands in both.
    /// </summary>
    public static VisitArea WithWeed(this VisitArea area, WeedSeen seen)
    {
        ImmutableArray<WeedSeen> weeds = area.Weeds ?? [];
        int same = IndexOf(weeds, one => one.Weed == seen.Weed && one.Stage == seen.Stage);
        int at =
            same >= 0
                ? same
                : IndexOf(weeds, one => one.Weed == seen.Weed && (one.Stage is null || seen.Stage is null));
        return area with { Weeds = at < 0 ? weeds.Add(seen) : weeds.SetItem(at, seen) };
    }

    /// <summary>The area with one entry of its weeds replaced; an entry of the same weed and stage makes way for
    /// it.</summary>
    public static VisitArea WithWeedInPlaceOf(this VisitArea area, WeedSeen before, WeedSeen seen)
    {
        ImmutableArray<WeedSeen> weeds = area.Weeds ?? [];
        int at = weeds.IndexOf(before);
        if (at < 0)
            return area.WithWeed(seen);
        return area with
        {
            Weeds =
            [
                .. weeds
                    .Select((one, i) => i == at ? seen : one)
                    .Where((one, i) => i == at || one.Weed != seen.Weed || one.Stage != seen.Stage),
            ],
        };
    }

    /// <summary>The area without one entry of its weeds; after the last one, whether there are any is not
    /// known.</summary>
    public static VisitArea WithoutSeen(this VisitArea area, WeedSeen seen)
    {
        ImmutableArray<WeedSeen> weeds = (area.Weeds ?? []).Remove(seen);
        return area with { Weeds = weeds.IsEmpty ? null : weeds };
    }

    /// <summary>
    /// The area without a weed in any stage. After the last one, whether there are weeds is not known: it is for the
    /// grower to say that there are none.
    /// </summary>
    public static VisitArea WithoutWeed(this VisitArea area, string weed)
    {
        ImmutableArray<WeedSeen> weeds = area.Weeds ?? [];
        if (weeds.All(seen => seen.Weed != weed))
            return area;
        weeds = weeds.RemoveAll(seen => seen.Weed == weed);
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

    private static int IndexOf(ImmutableArray<WeedSeen> weeds, Func<WeedSeen, bool> isMeant)
    {
        for (int i = 0; i < weeds.Length; i++)
        {
            if (isMeant(weeds[i]))
                return i;
        }

        return -1;
    }
}

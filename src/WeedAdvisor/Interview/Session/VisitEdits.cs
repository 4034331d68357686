using System.Globalization;
using System.Text;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <summary>Changes to the areas of a visit: each gives a new visit and leaves the old one as it was.</summary>
public static class VisitEdits
{
    /// <summary>A visit with one area of which nothing is known.</summary>
    public static Visit Begin(DateOnly date) =>
        new("visit-" + CalendarDay.Text(date), null, date, null, [VisitArea.Blank("area-1", "Area 1")]);

    /// <summary>
    /// The visit with one more area at its end, of which nothing is known but what the head of the visit says.
    /// </summary>
    public static Visit WithNewArea(this Visit visit, string? name)
    {
        string title = string.IsNullOrWhiteSpace(name) ? FreeName(visit) : name.Trim();
        VisitArea area = VisitArea.Blank(FreeId(visit, IdOf(title)), title) with { Answers = visit.Head };
        return visit with { Areas = visit.Areas.Add(area) };
    }

    /// <summary>The visit with an area renamed; its id stays.</summary>
    public static Visit WithAreaNamed(this Visit visit, int index, string name) =>
        visit.WithArea(index, visit.Areas[index] with { Name = name.Trim() });

    /// <summary>The visit without an area.</summary>
    public static Visit WithoutArea(this Visit visit, int index) => visit with { Areas = visit.Areas.RemoveAt(index) };

    /// <summary>The visit with an area replaced.</summary>
    public static Visit WithArea(this Visit visit, int index, VisitArea area) =>
        visit with
        {
            Areas = visit.Areas.SetItem(index, area),
        };

    /// <summary>
    /// The visit with an answer to a question that is asked once for the whole nursery. It goes to the head of the
    /// visit and to every area that has said the same as this one so far; an area with an answer of its own keeps it,
    /// and when this one has, only it changes.
    /// </summary>
    /// <param name="visit">The visit.</param>
    /// <param name="index">The area in which it is said, counted from 0.</param>
    /// <param name="question">Id of the question.</param>
    /// <param name="answer">The answer; null takes it back.</param>
    public static Visit WithNurseryAnswer(this Visit visit, int index, string question, Answer? answer)
    {
        Answer? head = visit.Head.GetValueOrDefault(question);
        Answer? here = visit.Areas[index].Answers.GetValueOrDefault(question);
        if (!Equals(head, here))
            return visit.WithArea(index, visit.Areas[index].WithAnswerOrNone(question, answer));
        return visit with
        {
            Head = answer is null ? visit.Head.Remove(question) : visit.Head.SetItem(question, answer),
            Areas =
            [
                .. visit.Areas.Select(area =>
                    Equals(area.Answers.GetValueOrDefault(question), head)
                        ? area.WithAnswerOrNone(question, answer)
                        : area
                ),
            ],
        };
    }

    /// <summary>
    /// A kebab-case id made from a name; <c>area</c> when the name has no letter or digit of plain ASCII.
    /// </summary>
    public static string IdOf(string name)
    {
        var id = new StringBuilder();
        foreach (char c in name.ToLowerInvariant())
        {
            if (char.IsAsciiLetterOrDigit(c))
                id.Append(c);
            else if (id.Length > 0 && id[^1] != '-')
                id.Append('-');
        }

        string kebab = id.ToString().Trim('-');
        return kebab.Length == 0 ? "area"
            : char.IsAsciiDigit(kebab[0]) ? "area-" + kebab
            : kebab;
    }

    private static string FreeName(Visit visit)
    {
        int number = visit.Areas.Length + 1;
        while (visit.Areas.Any(area => area.Name == Numbered("Area ", number)))
            number++;
        return Numbered("Area ", number);
    }

    private static string FreeId(Visit visit, string wanted)
    {
        string id = wanted;
        for (int number = 2; visit.Areas.Any(area => area.Id == id); number++)
            id = Numbered(wanted + "-", number);
        return id;
    }

    private static string Numbered(string text, int number) => text + number.ToString(CultureInfo.InvariantCulture);
}

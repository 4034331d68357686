using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads lessons, and holds them against the worked visits they are taken from.</summary>
internal static class LessonReader
{
    /// <summary>A lesson.</summary>
    public static Lesson Read(MappingReader map)
    {
        var lesson = new Lesson(
            map.Id(),
            map.Text("title"),
            map.Id("visit"),
            map.Id("area"),
            map.Text("about"),
            map.Texts("points"),
            map.Each("steps", "a step", Step),
            map.Where
        );
        if (lesson.Points.IsEmpty)
            map.Context.Report(map.Node, "a lesson from which nothing is learnt", "'points', one or several");
        if (lesson.Steps.IsEmpty)
            map.Context.Report(map.Node, "a lesson without steps", "'steps', each with a 'rule' and an 'ask'");
        map.Finish();
        return lesson;
    }

    /// <summary>
    /// A problem for each lesson whose visit or area is not there. Only where worked visits were read.
    /// </summary>
    public static IEnumerable<Problem> WithoutVisit(IEnumerable<Lesson> lessons, ImmutableArray<WorkedVisit> visits)
    {
        string[] ids = [.. visits.Select(worked => worked.Visit.Id)];
        foreach (Lesson lesson in lessons)
        {
            if (visits.FirstOrDefault(worked => worked.Visit.Id == lesson.Visit) is not { } worked)
                yield return Missing(lesson, $"the visit '{lesson.Visit}'", "a worked visit", lesson.Visit, ids);
            else if (worked.Visit.Areas.All(area => area.Id != lesson.Area))
                yield return Missing(
                    lesson,
                    $"the area '{lesson.Area}'",
                    $"an area of '{lesson.Visit}'",
                    lesson.Area,
                    [.. worked.Visit.Areas.Select(area => area.Id)]
                );
        }
    }

    private static Problem Missing(Lesson lesson, string found, string expected, string word, string[] words) =>
        new(lesson.Where, found, expected, NearestWord.Of(word, words));

    private static LessonStep Step(MappingReader map)
    {
        var step = new LessonStep(map.Word("rule", "judgements"), map.Text("ask"), map.OptionalText("say"));
        map.Finish();
        return step;
    }
}

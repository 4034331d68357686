using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Lessons;

/// <summary>Lessons: their list, one of them in full, a trainee's order held against the advice.</summary>
public static class LessonDocument
{
    /// <summary>The lessons there are.</summary>
    public static Document List(KnowledgeBase knowledge) =>
        new(
            "Lessons",
            [
                new Paragraph("A worked visit taken rule by rule, for a class: 'weedadvisor lesson NAME'."),
                new Blank(),
                new FieldList(
                    [
                        .. knowledge.Lessons.Select(lesson => new FieldEntry(
                            lesson.Id,
                            [$"{lesson.Title} ({Figures.Count(lesson.Steps.Length, "step", "steps")})"]
                        )),
                    ],
                    16
                ),
            ]
        );

    /// <summary>A lesson in full.</summary>
    public static Document Of(Lesson lesson, AreaAdvice area, KnowledgeBase knowledge) =>
        new(TitleOf(lesson), [.. new LessonPages(knowledge).Of(lesson, area).SelectMany(page => page)]);

    /// <summary>A trainee's order held against the advice.</summary>
    public static Document Scored(Lesson lesson, AreaAdvice area, ImmutableArray<string> named, KnowledgeBase knowledge)
    {
        var score = TraineeScore.Of(area, named);
        var names = new Names(knowledge);
        return new Document(
            TitleOf(lesson),
            [
                new Paragraph(
                    score.TauB is { } tau
                        ? $"Agreement with the advice: {tau.ToString("0.00", CultureInfo.InvariantCulture)} "
                            + "(Kendall's tau-b, 1945: 1 the same order, 0 no more than chance, -1 the reverse). "
                            + Kindly(tau)
                    : named.Length < 2 ? "Too few to hold two orders against each other: name two actions or more."
                    : "No two of these stand in an order here, so there is nothing to agree on."
                ),
                .. score.First.IsEmpty
                    ? [new Paragraph("The advice has no work here for now: nothing is clear.")]
                    : First(score, names),
                .. Missed(score, area, names),
                .. NotClear(score, area, names),
                .. score.First.Concat(named).Any(names.IsTreatment) ? SafetyBlocks.Standing([]) : [],
            ]
        );
    }

    private static Block[] First(TraineeScore score, Names names) =>
        [
            Heading.Section("The advice has first"),
            new ItemList([
                .. score.First.Select(
                    (action, at) =>
                        new Item(
                            $" {(at + 1).ToString(CultureInfo.InvariantCulture)}. ",
                            Line.Of($"{new Named(names.Action(action))} ({action})")
                        )
                ),
            ]).At(2),
        ];

    private static Line TitleOf(Lesson lesson) => $"Lesson: {lesson.Title}";

    private static string Kindly(double tau) =>
        tau switch
        {
            >= 0.8 => "You and the advice see the same work in the same order.",
            >= 0.4 => "Most of it agrees; look at the places where it does not.",
            >= 0 => "A part of it agrees. What follows says where to look again.",
            _ => "You would begin at the other end: go through the steps once more, it is worth it.",
        };

    private static Block[] Missed(TraineeScore score, AreaAdvice area, Names names) =>
        score.Missed.IsEmpty
            ? []
            :
            [
                Heading.Section("Easily overlooked, and worth naming"),
                ItemList
                    .Dashes(
                        score.Missed.Select(action => Line.FromString($"{names.Action(action)}: {WhyOf(area, action)}"))
                    )
                    .At(2),
            ];

    private static string WhyOf(AreaAdvice area, string action) =>
        area.Clear.First(one => one.Action == action).Because is [var reason, ..]
            ? Names.UnderItsName(reason.Said)
            : "it stands among the first here.";

    private static Block[] NotClear(TraineeScore score, AreaAdvice area, Names names) =>
        score.NotClear.IsEmpty
            ? []
            :
            [
                Heading.Section("Named, but not clear here"),
                ItemList
                    .Dashes(
                        score.NotClear.Select(action =>
                            Line.FromString(
                                $"{names.Action(action)}: {StatusWords.Of(area, action, names.NeedInShort)}. "
                                    + $"'weedadvisor why' says more."
                            )
                        )
                    )
                    .At(2),
            ];
}

using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;
using WeedAdvisor.Reports.Why;
using Then = WeedAdvisor.Knowledge.Judgements.Consequence;

namespace WeedAdvisor.Reports.Lessons;

/// <summary>
/// A lesson page by page: what is there, then for each step the question to the class and, on the next page, the rule
/// with what it rests on here; last the advice and what is learnt.
/// </summary>
/// <param name="knowledge">The knowledge.</param>
public sealed class LessonPages(KnowledgeBase knowledge)
{
    private const int MostSpokenFor = 3,
        MostFirst = 6;

    private readonly Names _names = new(knowledge);
    private readonly ConditionSentences _sentences = new(knowledge);

    /// <summary>The pages, each to be shown when the class has answered the one before.</summary>
    /// <param name="lesson">The lesson.</param>
    /// <param name="area">The advice for its area.</param>
    public ImmutableArray<ImmutableArray<Block>> Of(Lesson lesson, AreaAdvice area)
    {
        ILookup<string, Reason> certain = area.AllConclusions()
            .Where(reason => reason.IsCertain)
            .ToLookup(reason => reason.Judgement, StringComparer.Ordinal);
        return
        [
            [.. Before(lesson, area), .. Asked(lesson, 0)],
            .. lesson.Steps.Select(
                (step, at) =>
                    (ImmutableArray<Block>)
                        [
                            .. Revealed(step, [.. certain[step.Rule]]),
                            .. at + 1 < lesson.Steps.Length ? Asked(lesson, at + 1) : After(lesson, area),
                        ]
            ),
        ];
    }

    private IEnumerable<Block> Before(Lesson lesson, AreaAdvice area)
    {
        yield return new Paragraph(lesson.About);
        foreach (Block lifted in LiftedBars.Of(knowledge.Stamp))
            yield return lifted;
        yield return new Blank();
        string weeds = area.Area.Weeds is { IsEmpty: false } seen
            ? string.Join(", ", seen.Select(weed => _names.Weed(weed.Weed)).Distinct(StringComparer.Ordinal))
            : "none up";
        yield return new Keyed("the place: ", area.Area.Name);
        yield return new Keyed("the weeds: ", $"{weeds}.");
        yield return new Keyed("what is told: ", Figures.Sentence(string.Join("; ", Told(area.Area))) + ".");
    }

    private IEnumerable<string> Told(VisitArea area) =>
        knowledge
            .Questions.Where(question => question.Choices.Length > 0)
            .Where(question => area.Told(question.Id) is Answer.Words { Value.Count: > 0 })
            .Select(question => _sentences.Answered(question, area.Told(question.Id)));

    private static IEnumerable<Block> Asked(Lesson lesson, int at) =>
        [
            Heading.Section(string.Create(CultureInfo.InvariantCulture, $"Step {at + 1} of {lesson.Steps.Length}")),
            new Paragraph(Line.FromString(lesson.Steps[at].Ask) with { Tone = Tone.Strong }).At(2),
        ];

    private IEnumerable<Block> Revealed(LessonStep step, ImmutableArray<Reason> reasons)
    {
        if (reasons.IsEmpty)
        {
            yield return new Paragraph($"The rule {step.Rule} does not hold here any more.").At(2);
            yield break;
        }

        Reason best = reasons[0];
        var lines = new ReasonLines(_names, _sentences);
        yield return new Blank();
        yield return new Hanging(Figures.Sentence(best.Text)).At(2);
        if (lines.Facts(best) is { IsEmpty: false } facts)
            yield return new Keyed("here: ", Figures.Sentence(string.Join("; ", facts)) + ".").At(2);
        string so = SoOf(reasons);
        if (so != best.Text)
            yield return new Keyed("so: ", so).At(2);
        if (step.Say is { } say)
            yield return new Keyed("note: ", say).At(2);
        yield return new Keyed("rule: ", $"{step.Rule}; source: {string.Join(", ", best.Sources)}").At(2);
    }

    private string SoOf(ImmutableArray<Reason> reasons)
    {
        string[] actions =
        [
            .. reasons
                .Select(reason => reason.Action)
                .OfType<string>()
                .Distinct(StringComparer.Ordinal)
                .Select(_names.Action),
        ];
        string spoken = Listing.Some(actions, MostSpokenFor);
        return reasons[0].Then switch
        {
            Then.MakesFinding finding => knowledge.Findings[finding.Id].Text,
            Then.Bar { Severity: Severity.Prohibited } => $"prohibited here: {spoken}.",
            Then.Bar => $"unsuitable here: {spoken}.",
            Then.Argument { IsDoubt: true } => $"a {Figures.CaseWord(reasons[0].Certainty)} reason against {spoken}.",
            Then.Argument => $"a {Figures.CaseWord(reasons[0].Certainty)} reason for {spoken}.",
            _ => Figures.Sentence(reasons[0].CautionText ?? ""),
        };
    }

    // Whoever names a chemical says what comes before it.
    private IEnumerable<Block> Chemicals(AreaAdvice area) =>
        area
            .Clear.Where(one => one.Horizon != Horizon.Habit)
            .DistinctBy(one => one.Rank)
            .Take(MostFirst)
            .Any(one => _names.IsTreatment(one.Action))
            ? SafetyBlocks.Standing([])
            : [];

    private IEnumerable<Block> After(Lesson lesson, AreaAdvice area) =>
        [
            Heading.Section("What the advice comes to"),
            new ItemList([
                .. area
                    .Clear.Where(one => one.Horizon != Horizon.Habit)
                    .DistinctBy(one => one.Rank)
                    .Take(MostFirst)
                    .Select(
                        (one, at) =>
                            new Item(
                                $" {(at + 1).ToString(CultureInfo.InvariantCulture)}. ",
                                Line.Of($"{new Named(_names.Action(one.Action))} ({one.Action})") with
                                {
                                    Action = one.Action,
                                }
                            )
                    ),
            ]).At(2),
            .. Chemicals(area),
            Heading.Section("What is learnt"),
            ItemList.Dashes(lesson.Points.Select(Line.FromString)).At(2),
            new Blank(),
            new Paragraph(
                $"Your own order against it: 'weedadvisor lesson {lesson.Id} --score \"ACTION, ACTION, ...\"'."
            ),
        ];
}

using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <summary>Which questions to put to the grower in an area, in the order of asking.</summary>
public static class QuestionList
{
    /// <summary>Ids of the questions that every area is asked: without them no advice has a footing.</summary>
    public static ImmutableArray<string> Always { get; } =
    [
        QuestionIds.PutOnLately,
        QuestionIds.Place,
        QuestionIds.Cover,
        QuestionIds.Stock,
        QuestionIds.Weeds,
        QuestionIds.Region,
    ];

    /// <summary>
    /// The questions that apply or may apply. One whose condition waits for a question not asked yet stays out until
    /// that one has been put.
    /// </summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="area">The area.</param>
    /// <param name="advice">The advice as it stands: it names the answers that something waits for.</param>
    /// <param name="notes">What was said about questions without leaving an answer in the area.</param>
    public static ImmutableArray<QuestionEntry> Of(
        KnowledgeBase knowledge,
        VisitArea area,
        AreaAdvice advice,
        QuestionNotes notes
    )
    {
        var answers = new QuestionsThatApply(knowledge, area);
        HashSet<string> wanted = Wanted(knowledge, advice, answers);
        return
        [
            .. knowledge
                .Questions.Where(question => answers.Applies(question) != Truth.No)
                .Select(question => new QuestionEntry(
                    question,
                    StateOf(question, area, notes),
                    wanted.Contains(question.Id)
                ))
                .Where(entry => entry.IsSettled || answers.WaitsFor(entry.Question).IsEmpty),
        ];
    }

    /// <summary>
    /// The question to put before another can be put; the other one itself when nothing stands in its way.
    /// </summary>
    public static string PutFirst(KnowledgeBase knowledge, VisitArea area, string question)
    {
        var answers = new QuestionsThatApply(knowledge, area);
        string id = question;
        for (int steps = 0; steps < knowledge.Questions.Length; steps++)
        {
            if (knowledge.QuestionOf(id) is not { } found || answers.WaitsFor(found) is not [var before, ..])
                break;
            id = before;
        }

        return id;
    }

    /// <summary>How far a question has got in an area.</summary>
    public static QuestionState StateOf(Question question, VisitArea area, QuestionNotes notes)
    {
        bool answered = question.Kind switch
        {
            QuestionKind.Weeds => area.Weeds is not null,
            QuestionKind.Past => area.Past is not null,
            _ => area.Answers.GetValueOrDefault(question.Id) is not (null or Answer.NotKnown),
        };
        if (answered)
            return QuestionState.Answered;
        if (notes.NotKnown.Contains(question.Id) || area.Answers.ContainsKey(question.Id))
            return QuestionState.NotKnown;
        return notes.Skipped.Contains(question.Id) ? QuestionState.Skipped : QuestionState.Open;
    }

    private static HashSet<string> Wanted(KnowledgeBase knowledge, AreaAdvice advice, QuestionsThatApply answers)
    {
        var wanted = new HashSet<string>(Always, StringComparer.Ordinal);
        foreach (Reason reason in advice.AllConclusions())
            AddQuestions(wanted, reason.Needs);
        foreach (WaitingAction waiting in advice.Waiting)
            AddQuestions(wanted, waiting.Needs);
        if (advice.NextQuestion is { } next)
            wanted.Add(next.Id);
        // No rule asks for the weather, but it says which of the sprays that are clear go on today.
        if (advice.Clear.Any(action => !action.Conditions.IsEmpty))
            wanted.Add(QuestionIds.Weather);
        // No rule asks for what lies in the store, but wherever chemicals are spoken of each of them is answered.
        if (NamesChemical(knowledge, advice))
            wanted.Add(QuestionIds.InHand);

        // A question that waits for another makes that one matter too; questions.yaml puts the other one first.
        foreach (Question question in knowledge.Questions.Reverse().Where(q => wanted.Contains(q.Id)))
            wanted.UnionWith(answers.WaitsFor(question));
        return wanted;
    }

    private static bool NamesChemical(KnowledgeBase knowledge, AreaAdvice advice) =>
        advice.Waiting.Any(one => knowledge.Treatments.ContainsKey(one.Action))
        || advice.Barred.Any(one => knowledge.Treatments.ContainsKey(one.Action))
        || advice.Clear.Any(one => knowledge.Treatments.ContainsKey(one.Action));

    private static void AddQuestions(HashSet<string> wanted, ImmutableArray<Need> needs)
    {
        foreach (Need need in needs)
        {
            if (need.Kind == NeedKind.Question)
                wanted.Add(need.Id);
        }
    }
}

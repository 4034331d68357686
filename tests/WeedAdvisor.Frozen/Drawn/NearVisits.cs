using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Frozen.Drawn;

/// <summary>Draws visits that are a worked visit but for a few answers.</summary>
/// <param name="knowledge">The words.</param>
/// <param name="worked">The worked visits.</param>
internal sealed class NearVisits(KnowledgeBase knowledge, Visit[] worked)
{
    private const int MostChanges = 5;
    private const string Lately = "put-on-lately";

    // What other worked areas answer, by place and question: what is left open is filled in with what goes together.
    private readonly ILookup<(string Place, string Question), string> _answers = worked
        .SelectMany(visit =>
            Sketch(visit)
                .Areas.SelectMany(area =>
                    area.Answers.Select(answer =>
                        (Key: (area.Answers.GetValueOrDefault("place", ""), answer.Key), answer.Value)
                    )
                )
        )
        .ToLookup(answer => answer.Key, answer => answer.Value);

    /// <summary>A visit near a worked one: one to five answers, weeds or uses of it are changed.</summary>
    public VisitSketch Visit(Tape tape, UsesDrawn uses)
    {
        VisitSketch visit = Sketch(tape.Of(worked));
        if (!tape.OnceIn(3))
            FillIn(visit, tape);
        for (int changes = 1 + tape.Below(MostChanges); changes > 0; changes--)
        {
            AreaSketch area = tape.Of(visit.Areas);
            if (tape.OnceIn(6))
                area.Tell(uses.Use(visit.Date, tape));
            else if (tape.OnceIn(6) && area.Weeds is [_, ..])
                area.Weeds.RemoveAt(tape.Below(area.Weeds.Count));
            else
                Change(visit, area, tape);
        }

        return visit;
    }

    private static VisitSketch Sketch(Visit visit) => VisitSketch.Of(visit.Date, VisitText.Of(visit));

    private void FillIn(VisitSketch visit, Tape tape)
    {
        foreach (AreaSketch area in visit.Areas)
        {
            area.Weeds ??= [];
            area.Past ??= [];
            string place = area.Answers.GetValueOrDefault("place", "");
            foreach (Question question in knowledge.Questions)
            {
                if (visit.Head.ContainsKey(question.Id) || area.Answers.ContainsKey(question.Id))
                    continue;
                string[] others = [.. _answers[(place, question.Id)]];
                string? answer =
                    others.Length == 0 || (question.Id == Lately && area.Past.Count > 0) ? null
                    : question.Kind == QuestionKind.Date ? AnswersDrawn.Answer(knowledge, question, visit.Date, tape)
                    : tape.Of(others);
                if (answer is not null)
                    area.Answers[question.Id] = answer;
            }
        }
    }

    // A use of this week is no longer denied, nor an answer that a use gave taken away.
    private void Change(VisitSketch visit, AreaSketch area, Tape tape)
    {
        string[] said = [.. area.Answers.Keys.Where(id => id != Lately)];
        if (said.Length == 0)
            return;
        Question question = knowledge.QuestionOf(tape.Of(said))!;
        if (AnswersDrawn.Answer(knowledge, question, visit.Date, tape) is { } answer)
            area.Answers[question.Id] = answer;
    }
}

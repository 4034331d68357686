using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Plan;

/// <summary>
/// What is open: products that wait for an answer and what they could save at most, and which answers would change the
/// plan most.
/// </summary>
internal static class PlanAsked
{
    private const int MostAnswers = 5,
        MostQuestions = 4;

    public static IEnumerable<Block> Of(AreaPlan plan, PlanQuestions questions, Names names) =>
        [.. Blocked(plan, questions, names), .. Answers(plan, questions, names)];

    private static IEnumerable<Block> Blocked(AreaPlan plan, PlanQuestions questions, Names names)
    {
        bool isPlanned = plan.Case.NoSeason.IsEmpty;
        if (isPlanned && questions.Blocked.IsEmpty)
            yield break;
        yield return Heading.Section(isPlanned ? "What waits for an answer" : "Preventives are not in the plan");
        yield return new ItemList([
            .. plan.Case.NoSeason.Select(why => new Item(Item.Dash, Line.FromString(why))),
            .. questions.Blocked.IsEmpty ? [] : new[] { new Item(Item.Dash, Waiting(plan, questions)) },
            .. questions
                .BlockedBy.Take(MostQuestions)
                .Select(id => new Item(Item.Open, Line.FromString(Ask(id, names)))),
        ]).At(2);
    }

    private static Line Waiting(AreaPlan plan, PlanQuestions questions)
    {
        string label =
            questions.BlockedByLabel > 0 ? $"; {questions.BlockedByLabel} of them for what only a label tells" : "";
        Amount count = Amounts.Count(questions.Blocked.Length, "preventive waits", "preventives wait");
        return questions.MostSavedUsd > 0
            ? Line.Of(
                $"{count} for an answer{label}. Whatever the answers are, all together could save "
                    + $"{PlanCosts.All(plan, questions.MostSavedUsd)} at most."
            )
            : Line.Of($"{count} for an answer{label}. Whatever the answers are, they would save nothing here.");
    }

    private static IEnumerable<Block> Answers(AreaPlan plan, PlanQuestions questions, Names names)
    {
        if (questions.Tried.IsEmpty)
            yield break;
        yield return Heading.Section("Which answers would change it most");
        AnswerTried[] telling =
        [
            .. questions.Tried.Where(one => one.HasOtherWork || Usd(plan, one) != 0).Take(MostAnswers),
        ];
        yield return ItemList.Dashes(telling.Select(one => LineOf(plan, one, names))).At(2);
        int asked = questions.Tried.Select(one => one.Question).Distinct().Count();
        yield return new Paragraph(
            Line.Of(
                $"{Amounts.Count(questions.Tried.Length, "answer", "answers")} to "
                    + $"{Amounts.Count(asked, "question", "questions")} tried, at the rounds of the plan and of its "
                    + $"rivals{NotTried(questions)}.{(telling.Length == 0 ? " None would change it." : "")}"
            )
        ).At(2);
    }

    private static string Ask(string question, Names names) => names.Need(Need.Question(question));

    private static string NotTried(PlanQuestions questions) =>
        questions.NotTried.Length switch
        {
            0 => "",
            1 => "; one open question was not tried (--answers)",
            var more => $"; {more} open questions were not tried (--answers)",
        };

    private static decimal Usd(AreaPlan plan, AnswerTried one) =>
        Math.Round(one.ChangeUsd * plan.Case.Year.Pots / 1000, 2);

    private static Line LineOf(AreaPlan plan, AnswerTried one, Names names)
    {
        string work = one.HasOtherWork ? "another plan, " : "the same plan, ";
        Amount usd = PlanCosts.All(plan, Math.Abs(one.ChangeUsd));
        return Line.Of(
            $"{Ask(one.Question, names)} \"{one.Answer}\": {work}{usd} {(one.ChangeUsd < 0 ? "less" : "more")}."
        );
    }
}

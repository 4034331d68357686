using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// Chooses the question whose answers would change most of what is to be done first. A question that guards people,
/// food, water or the crop comes early wherever a chemical waits for it; what is seldom to the point here comes last.
/// </summary>
internal sealed class QuestionChoice(KnowledgeBase knowledge)
{
    // How many lines of work an answer is tried on, and how many questions are tried.
    private const int LinesTried = 6;
    private const int QuestionsTried = 12;

    // An answer that changes the first things weighs 1 and a little more for each of them; so much counts that the
    // likely chemical waits for it, that a chemical waits for what guards somebody, and that it is not known what the
    // place, its roof, its stock and its weeds are; what merely waits decides between equals.
    private const double WeightOfChange = 1;
    private const double WeightOfMoved = 0.25;
    private const double WeightOfLikely = 0.5;
    private const double WeightOfGuard = 0.55;
    private const double WeightOfFooting = 1;
    private const double WeightOfWaiting = 0.05;
    private const double WeightOfCaution = 0.2;

    private readonly ImmutableDictionary<string, Question> _questions = knowledge.Questions.ToImmutableDictionary(
        question => question.Id,
        StringComparer.Ordinal
    );

    /// <summary>
    /// The next question, and the next that is not of the whole nursery; null when no answer could change the advice.
    /// </summary>
    /// <param name="looked">The area.</param>
    /// <param name="cases">Every action of which anything was concluded.</param>
    /// <param name="sketches">Those that are clear or wait, as if they were clear.</param>
    /// <param name="conclusions">Everything that was concluded.</param>
    /// <param name="answered">A question that is answered as far as the grower can; null for none.</param>
    public (NextQuestion? Next, NextQuestion? OfArea) Next(
        AreaCase looked,
        IReadOnlyCollection<ActionCase> cases,
        IReadOnlyDictionary<string, ClearAction> sketches,
        IEnumerable<Conclusion> conclusions,
        string? answered
    )
    {
        Dictionary<string, double> waited = Waits(cases, conclusions);
        if (answered is not null)
            waited.Remove(answered);
        if (waited.Count == 0)
            return (null, null);
        Dictionary<string, ActionCase> tried = Tried(cases, sketches);
        Dictionary<string, double> pressing = Pressing(tried.Values);
        HashSet<string> guards = Guards(cases);
        HashSet<string> likely = NeedsOfLikely(cases, sketches);
        string? toldByUse = ToldByUse.Of(looked.Area, knowledge);
        double most = waited.Values.Max();
        Dictionary<string, Reading> site = SiteReadings.Of(knowledge, looked);
        ImmutableArray<ClearAction> now = Ranking.Of(tried.Values.Where(IsClear).Select(one => sketches[one.Action]));
        Scored[] best =
        [
            .. waited
                .Keys.Select(id => _questions.GetValueOrDefault(id))
                .OfType<Question>()
                .OrderByDescending(question => Math.Round(pressing.GetValueOrDefault(question.Id), 9))
                .ThenByDescending(question => Math.Round(waited[question.Id], 9))
                .ThenBy(question => question.Order)
                .Select((question, place) => Score(question, place))
                .OrderBy(scored => ComesLast(scored.Question, site) || scored.Question.Id == toldByUse)
                // What kind of place it is decides which of the others are put at all.
                .ThenByDescending(scored => Footing.IsFirst(scored.Question.Id))
                .ThenByDescending(scored => Math.Round(scored.Score, 9))
                .ThenBy(scored => scored.Question.Order),
        ];
        return (Asked(best.FirstOrDefault()), Asked(best.FirstOrDefault(scored => !scored.Question.IsOfNursery)));

        NextQuestion? Asked(Scored? scored) =>
            scored is null
                ? null
                : new NextQuestion(scored.Question.Id, scored.Question.Ask, scored.Question.Why)
                {
                    IsOfNursery = scored.Question.IsOfNursery,
                    MayBring = scored.MayBring,
                };

        Scored Score(Question question, int place)
        {
            double score = WeightOfWaiting * waited[question.Id] / most;
            if (likely.Contains(question.Id))
                score += WeightOfLikely / likely.Count;
            if (Footing.Holds(question.Id))
                score += WeightOfFooting;
            if (question.Guards && guards.Contains(question.Id))
                score += WeightOfGuard;
            if (place >= QuestionsTried || !pressing.ContainsKey(question.Id))
                return new Scored(question, score, []);
            (double changed, ImmutableArray<string> brings) = Changed(question, looked, tried, sketches, now);
            return new Scored(question, score + changed, brings);
        }
    }

    // By how many of the first things an answer changes the list, over all answers; and what may come up.
    private (double Changed, ImmutableArray<string> Brings) Changed(
        Question question,
        AreaCase looked,
        Dictionary<string, ActionCase> tried,
        IReadOnlyDictionary<string, ClearAction> sketches,
        ImmutableArray<ClearAction> now
    )
    {
        ImmutableArray<string> first = FirstThings.Of(now);
        var need = Need.Question(question.Id);
        ActionCase[] waiting = [.. tried.Values.Where(one => one.All.Any(open => Waits(open, need)))];
        SortedSet<string> brings = new(StringComparer.Ordinal);
        double changed = 0;
        int answers = 0;
        foreach (WhatIf answer in WhatIf.AnswersTo(question, looked, knowledge))
        {
            answers++;
            var then = new Dictionary<string, ActionCase>(tried, StringComparer.Ordinal);
            foreach (ActionCase one in waiting)
            {
                then[one.Action] = new ActionCase(
                    one.Action,
                    one.All.Select(open => Waits(open, need) ? answer.Of(open) : open).OfType<Conclusion>()
                );
            }

            if (waiting.All(one => StandsTheSame(one, then[one.Action])))
                continue;
            ImmutableArray<string> firstThen = FirstThings.Of(
                Ranking.Of(
                    then.Values.Where(IsClear)
                        .Select(one =>
                            sketches[one.Action] with
                            {
                                Status = one.Status,
                                Certainty = one.Certainty,
                                ComesAfterCleaning = one.ComesAfterCleaning,
                            }
                        )
                )
            );
            string[] fresh = [.. firstThen.Except(first, StringComparer.Ordinal)];
            brings.UnionWith(fresh);
            if (firstThen.SequenceEqual(first))
                continue;
            int moved = Math.Max(fresh.Length, first.Except(firstThen, StringComparer.Ordinal).Count());
            changed += WeightOfChange + WeightOfMoved * moved;
        }

        return (answers == 0 ? 0 : changed / answers, [.. brings]);
    }

    // What could stand among the first if everything that waits came clear.
    private static Dictionary<string, ActionCase> Tried(
        IReadOnlyCollection<ActionCase> cases,
        IReadOnlyDictionary<string, ClearAction> sketches
    )
    {
        ActionCase[] possible = [.. cases.Where(one => sketches.ContainsKey(one.Action))];
        HashSet<string> tried =
        [
            .. FirstThings.In(
                Ranking.Of(
                    possible.Select(one =>
                        IsClear(one)
                            ? sketches[one.Action]
                            : sketches[one.Action] with
                            {
                                Status = ActionStatus.Clear,
                                Certainty = one.MostCertainty,
                            }
                    )
                ),
                LinesTried
            ),
            .. FirstThings.In(Ranking.Of(possible.Where(IsClear).Select(one => sketches[one.Action])), LinesTried),
        ];
        return possible
            .Where(one => tried.Contains(one.Action))
            .ToDictionary(one => one.Action, StringComparer.Ordinal);
    }

    // How much of what could stand among the first waits for each question.
    private static Dictionary<string, double> Pressing(IEnumerable<ActionCase> tried)
    {
        var pressing = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (Conclusion open in tried.SelectMany(one => one.All))
        {
            foreach (Need need in open.Needs.Where(need => need.Kind == NeedKind.Question))
                pressing[need.Id] = pressing.GetValueOrDefault(need.Id) + 1.0 / open.Needs.Length;
        }

        return pressing;
    }

    // The questions that a chemical which is clear or waits hangs on.
    private HashSet<string> Guards(IEnumerable<ActionCase> cases) =>
        [
            .. cases
                .Where(one =>
                    (IsClear(one) || one.Status == ActionStatus.Waits) && knowledge.Treatments.ContainsKey(one.Action)
                )
                .SelectMany(one => one.All.Concat(one.Cautions))
                .SelectMany(open => open.Needs)
                .Select(need => need.Id),
        ];

    // What must be answered before the chemical that promises most here may go on.
    private HashSet<string> NeedsOfLikely(
        IEnumerable<ActionCase> cases,
        IReadOnlyDictionary<string, ClearAction> sketches
    ) =>
        [
            .. WaitingOrder
                .Of(cases, sketches)
                .Where(one => knowledge.Treatments.ContainsKey(one.Action))
                .Take(1)
                .SelectMany(one => one.Needs)
                .Where(need => need.Kind == NeedKind.Question)
                .Select(need => need.Id),
        ];

    private static Dictionary<string, double> Waits(IEnumerable<ActionCase> cases, IEnumerable<Conclusion> conclusions)
    {
        HashSet<string> barred = [.. cases.Where(one => one.IsBarred).Select(one => one.Action)];
        var waits = new Dictionary<string, double>(StringComparer.Ordinal);
        // A rule that says one caution with many actions counts once: else the caution of all chemicals would outweigh
        // what clears them.
        var cautions = new Dictionary<Said, double>();
        foreach (Conclusion conclusion in conclusions)
        {
            if (conclusion.IsCertain || (conclusion.Action is { } action && barred.Contains(action.Id)))
                continue;
            foreach (Need need in conclusion.Needs.Where(need => need.Kind == NeedKind.Question))
            {
                double share = WeightOf(conclusion) / conclusion.Needs.Length;
                var said = new Said(conclusion.Judgement.Id, need.Id);
                if (conclusion.Judgement.Then is Consequence.Caution)
                    cautions[said] = Math.Max(share, cautions.GetValueOrDefault(said));
                else
                    waits[need.Id] = waits.GetValueOrDefault(need.Id) + share;
            }
        }

        // In one order, since sums of fractions depend on it.
        Said[] inOrder =
        [
            .. cautions
                .Keys.OrderBy(said => said.Rule, StringComparer.Ordinal)
                .ThenBy(said => said.Need, StringComparer.Ordinal),
        ];
        foreach (Said said in inOrder)
            waits[said.Need] = waits.GetValueOrDefault(said.Need) + cautions[said];
        return waits;
    }

    private sealed record Said(string Rule, string Need);

    private static bool ComesLast(Question question, Dictionary<string, Reading> site) =>
        !question.LastWhen.IsEmpty
        && question.LastWhen.All(condition =>
            TestTruth.Of(condition.Test, site.GetValueOrDefault(condition.Attribute, Reading.Absent), Bindings.None)
            == Truth.Yes
        );

    private static bool IsClear(ActionCase one) => one.Status is ActionStatus.Clear or ActionStatus.ClearUnless;

    private static bool Waits(Conclusion open, Need need) => !open.IsCertain && open.Needs.Contains(need);

    private static bool StandsTheSame(ActionCase one, ActionCase then) =>
        IsClear(one) == IsClear(then)
        && (!IsClear(one) || (one.Status == then.Status && one.Certainty == then.Certainty));

    private static double WeightOf(Conclusion conclusion) =>
        conclusion.Judgement.Then switch
        {
            Consequence.Bar => 1,
            Consequence.Caution => WeightOfCaution,
            _ => conclusion.Certainty,
        };

    private sealed record Scored(Question Question, double Score, ImmutableArray<string> MayBring);
}

using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Unlock;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Lines;

/// <summary>What would have to change: the smallest sets of answers, held against trying every set.</summary>
public sealed class UnlockTests
{
    private static readonly Gen<(ImmutableArray<Judgement> Rules, VisitArea Area)> s_cases = Gen.Select(
        RandomCases.Rules,
        RandomCases.Area
    );

    [Fact]
    public void The_sets_are_those_that_trying_every_set_of_answers_finds() =>
        s_cases.Sample(
            one =>
            {
                KnowledgeBase knowledge = SmallKnowledge.Of(one.Rules);
                var advisor = Advisor.Of(knowledge);
                AreaCase looked = AreaCase.Alone(RandomCases.Day, one.Area);
                var tried = Tried.Of(advisor, looked, ["cover", "stock", "heated"]);
                foreach (string action in knowledge.Practices.Keys.Concat(knowledge.Treatments.Keys))
                {
                    UnlockSearch search = UnlockSearch.For(advisor, looked, action)!;
                    foreach (UnlockGoal goal in Enum.GetValues<UnlockGoal>())
                    {
                        Unlocked found = search.Of(goal, UnlockReach.All, Tried.Questions);
                        Assert.False(found.IsCutShort && found.Sets.IsEmpty);
                        if (!found.IsCutShort)
                            Assert.Equal(tried.Smallest(action, goal), found.Sets.Select(Key).Order());
                    }
                }
            },
            iter: Sizes.Of(25, 500)
        );

    [Fact]
    public void On_the_shipped_rules_too_and_each_set_does_what_it_says_when_it_is_run()
    {
        string[] questions = ["stock", "surface-moisture", "mulch", "drainage"];
        AreaCase mist = AreaCase.Of(ShippedRules.Visit("mist-house-with-liverwort"), 0);
        var tried = Tried.Of(ShippedRules.Advisor, mist, questions);
        int sets = 0;
        string[] actions = Sizes.IsLong
            ? [.. ShippedRules.Knowledge.Practices.Keys, .. ShippedRules.Knowledge.Treatments.Keys]
            : ["rice-hull-mulch", "scrape-off-liverwort", "water-by-need", "shorten-mist", "oxadiazon-granule"];
        foreach (string action in actions)
        {
            UnlockSearch search = UnlockSearch.For(ShippedRules.Advisor, mist, action)!;
            foreach (UnlockGoal goal in (UnlockGoal[])[UnlockGoal.Clear, UnlockGoal.Bar])
            {
                Unlocked found = search.Of(goal, UnlockReach.All, questions.ToHashSet());
                Assert.False(found.IsCutShort);
                Assert.Equal(tried.Smallest(action, goal), found.Sets.Select(Key).Order());
                foreach (AnswerSet set in found.Sets)
                {
                    sets++;
                    AreaAdvice run = ShippedRules.Advisor.Open(set.On(mist)).Advice;
                    Assert.Equal(set.Status, run.StatusOf(action));
                    Assert.InRange(set.Changes.Length, 0, UnlockSearch.MostChanges);
                }
            }
        }

        Assert.InRange(sets, 5, int.MaxValue);
    }

    [Fact]
    public void Every_set_over_all_questions_does_what_it_says_and_changes_neither_weeds_nor_past()
    {
        RandomVisits visits = new(ShippedRules.Knowledge);
        string[] actions = [.. ShippedRules.Knowledge.Practices.Keys, .. ShippedRules.Knowledge.Treatments.Keys];
        Gen.Select(visits.Case, Gen.Int[0, actions.Length - 1], Gen.Enum<UnlockReach>())
            .Sample(
                (looked, which, reach) =>
                {
                    UnlockSearch search = UnlockSearch.For(ShippedRules.Advisor, looked, actions[which])!;
                    foreach (UnlockGoal goal in (UnlockGoal[])[UnlockGoal.Clear, UnlockGoal.Bar])
                    {
                        foreach (AnswerSet set in search.Of(goal, reach).Sets.Take(3))
                        {
                            AreaCase then = set.On(looked);
                            AreaAdvice run = ShippedRules.Advisor.Open(then).Advice;
                            Assert.Equal(set.Status, run.StatusOf(actions[which]));
                            Assert.Equal(goal == UnlockGoal.Clear, IsClear(set.Status));
                            Assert.Equal(looked.Area.Weeds, then.Area.Weeds);
                            Assert.Equal(looked.Area.Past, then.Area.Past);
                            if (reach == UnlockReach.Grower)
                                Assert.DoesNotContain(set.Changes, change =>
                                    change.By is ChangedBy.Time or ChangedBy.Nobody
                                );
                        }
                    }
                },
                iter: Sizes.Of(6, 150)
            );
    }

    private static bool IsClear(ActionStatus status) => status is ActionStatus.Clear or ActionStatus.ClearUnless;

    private static string Key(AnswerSet set) =>
        string.Join(';', set.Changes.Select(change => $"{change.Question.Id}={change.Then}").Order());

    // Every set of up to three answers of some questions, with the advice under it.
    private sealed record Tried(ImmutableArray<(string Key, int Size, AreaAdvice Advice)> All)
    {
        public static IReadOnlySet<string> Questions { get; } = (HashSet<string>)["cover", "stock", "heated"];

        public static Tried Of(Advisor advisor, AreaCase looked, string[] questions)
        {
            Dictionary<string, string[]> answers = questions.ToDictionary(
                id => id,
                id => advisor.Knowledge.QuestionOf(id)!.Choices.Select(choice => choice.Id).ToArray()
            );
            LiveAdvice live = advisor.Open(looked);
            return new Tried([
                .. Sets(looked, answers, questions)
                    .Where(set => set.Count <= UnlockSearch.MostChanges)
                    .Select(set =>
                    {
                        VisitArea area = looked.Area;
                        foreach ((string question, string answer) in set)
                            area = area.With(question, AreaAnswers.Word(answer));
                        return (
                            string.Join(
                                ';',
                                set.Select(one => $"{one.Question}={AreaAnswers.Word(one.Answer)}").Order()
                            ),
                            set.Count,
                            live.Change(looked with { Area = area })
                        );
                    }),
            ]);
        }

        public IEnumerable<string> Smallest(string action, UnlockGoal goal)
        {
            var fit = All.Where(one => Fits(one.Advice, action, goal)).ToArray();
            return fit.Length == 0
                ? []
                : fit.Where(one => one.Size == fit.Min(other => other.Size)).Select(one => one.Key).Order();
        }

        private static bool Fits(AreaAdvice advice, string action, UnlockGoal goal) =>
            goal switch
            {
                UnlockGoal.Clear => IsClear(advice.StatusOf(action)),
                UnlockGoal.Bar => advice.Barred.Any(one => one.Action == action),
                _ => advice.Clear.FirstOrDefault(one => one.Action == action) is { } it
                    && advice.Clear.Where(one => one.Horizon == it.Horizon).Min(one => one.Rank) == it.Rank,
            };

        private static IEnumerable<List<(string Question, string Answer)>> Sets(
            AreaCase looked,
            Dictionary<string, string[]> answers,
            string[] questions
        ) =>
            questions.Aggregate(
                (IEnumerable<List<(string, string)>>)
                    [
                        [],
                    ],
                (sets, question) =>
                    sets.SelectMany(set =>
                        answers[question]
                            .Where(answer =>
                                !(
                                    looked.Area.Answers.GetValueOrDefault(question) is Answer.Words told
                                    && told.Value.Equals(WordSet.Of(answer))
                                )
                            )
                            .Select(answer => (List<(string, string)>)[.. set, (question, answer)])
                            .Prepend(set)
                    )
            );
    }
}

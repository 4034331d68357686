using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Assembly;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>A question is put where its answer would change what is done first.</summary>
public sealed class NextQuestionTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly ThreadLocal<LiveAdvice> s_live = new(() =>
        ShippedRules.Advisor.Open(AreaCase.Alone(RandomVisits.Day, Yard))
    );

    /// <summary>
    /// Held against the plainer choice, the question for which most conclusions wait: over the worked visits with some
    /// answers taken away, and over areas drawn at random, the share of answers that change the first things to do.
    /// </summary>
    [Fact]
    public void Its_answer_changes_what_is_done_first_more_often_than_that_of_what_most_waits_for()
    {
        int many = Sizes.Of(90, 600);
        (double worked, double workedPlain) = Shares(WorkedWithLess(many));
        (double drawn, double drawnPlain) = Shares(Drawn(many));

        string shares =
            $"worked visits with less: {worked:0.000}, plainer choice {workedPlain:0.000}; "
            + $"drawn areas: {drawn:0.000}, plainer choice {drawnPlain:0.000}";
        TestContext.Current.TestOutputHelper?.WriteLine(shares);
        Assert.True(worked > workedPlain && drawn > drawnPlain, shares);
    }

    [Fact]
    public void Who_guards_people_food_water_and_crop_is_asked_among_the_first()
    {
        LiveAdvice live = ShippedRules.Advisor.Open(AreaCase.Alone(RandomVisits.Day, Yard));
        List<string> asked = [];
        VisitArea area = Yard;
        for (int i = 0; i < 8 && live.Advice.NextQuestion is { } next; i++)
        {
            asked.Add(next.Id);
            area = Harmless(area, s_knowledge.QuestionOf(next.Id)!);
            live.Change(AreaCase.Alone(RandomVisits.Day, area));
        }

        Assert.Subset(
            asked.ToHashSet(),
            new HashSet<string> { "crops", "edible", "organic", "water-nearby", "neighbours" }
        );
    }

    [Fact]
    public void What_is_seldom_to_the_point_is_asked_only_when_nothing_else_is_left()
    {
        string[] last = ["potted-on", "covering-planned", "covering-date"];
        AreaAdvice advice = ShippedRules.On(AreaCase.Alone(RandomVisits.Day, Yard));
        var all = advice.AllConclusions().SelectMany(reason => reason.Needs).Select(need => need.Id).ToHashSet();

        Assert.Contains("potted-on", all);
        Assert.DoesNotContain(advice.NextQuestion!.Id, last);
    }

    [Fact]
    public void Who_counted_the_pots_is_not_asked_the_weeds_again()
    {
        VisitArea counted = Yard.With("crops", "hollies") with
        {
            Weeds = [new WeedSeen("nutsedge-yellow", "young", null) { PotsPercent = 20 }],
        };
        AreaAdvice advice = On(counted);

        Assert.NotEqual("weeds", advice.NextQuestion?.Id);
        Assert.Contains(advice.Waiting.SelectMany(one => one.Needs), need => need.Id == "weeds");
    }

    [Fact]
    public void Who_spread_a_synthetic_is_asked_last_whether_it_is_organic_and_nothing_is_cleared_by_it()
    {
        VisitArea spread = Yard with
        {
            Past = [new PastApplication("prodiamine-granule", RandomVisits.Day.AddDays(-60), "clean", WordSet.Empty)],
        };
        AreaAdvice advice = On(spread);

        Assert.NotEqual("organic", advice.NextQuestion?.Id);
        Assert.All(advice.Waiting.Where(one => s_knowledge.Treatments.ContainsKey(one.Action)), one =>
            Assert.Contains(one.Needs, need => need.Id == "organic" || need.Kind != NeedKind.Question)
        );
    }

    [Fact]
    public void What_has_one_answer_for_the_nursery_is_asked_once_a_visit()
    {
        var visit = new Visit(
            "two",
            null,
            RandomVisits.Day,
            null,
            [Yard.Without("region"), Yard.Without("region") with { Id = "b" }]
        );

        string?[] asked =
        [
            .. ShippedRules.Advisor.Advise(visit).Areas.Select(area => area.NextQuestion?.Id).Where(IsOfNursery),
        ];

        Assert.Equal(asked.Distinct(), asked);
    }

    [Fact]
    public void The_question_is_the_same_whatever_was_asked_before()
    {
        foreach (VisitArea area in Drawn(20))
        {
            LiveAdvice live = ShippedRules.Advisor.Open(AreaCase.Alone(RandomVisits.Day, Yard));
            AreaAdvice changed = live.Change(AreaCase.Alone(RandomVisits.Day, area));

            Assert.Equal(On(area).NextQuestion?.Id, changed.NextQuestion?.Id);
        }
    }

    // Nothing edible, nothing organic, nobody near: so that chemicals go on waiting for the rest.
    private static VisitArea Harmless(VisitArea area, Question question) =>
        question.Choices.FirstOrDefault(choice => choice.Id is "no" or "none-near") is { } no
            ? area.With(question.Id, no.Id)
            : Answered(area, question).First();

    private static bool IsOfNursery(string? id) => id is not null && s_knowledge.QuestionOf(id)!.IsOfNursery;

    private static (double Chosen, double Plain) Shares(IEnumerable<VisitArea> areas)
    {
        double chosen = 0,
            plain = 0;
        int counted = 0;
        foreach (VisitArea area in areas)
        {
            AreaAdvice advice = On(area);
            if (advice.NextQuestion is not { } next || MostWaitFor(advice) is not { } most)
                continue;
            counted++;
            chosen += ShareThatChanges(advice, next.Id);
            plain += ShareThatChanges(advice, most);
        }

        Assert.True(counted > 0);
        return (chosen / counted, plain / counted);
    }

    private static double ShareThatChanges(AreaAdvice advice, string question)
    {
        ImmutableArray<string> first = FirstThings.Of(advice.Clear);
        return Answered(advice.Area, s_knowledge.QuestionOf(question)!)
            .Select(area => FirstThings.Of(On(area).Clear).SequenceEqual(first) ? 0.0 : 1.0)
            .Average();
    }

    // Each bar 1, each caution a fifth, each argument its certainty, in equal parts for each answer that it waits for;
    // nothing for what is barred anyway.
    private static string? MostWaitFor(AreaAdvice advice)
    {
        HashSet<string> barred = [.. advice.Barred.Select(one => one.Action)];
        var weight = new Dictionary<string, double>(StringComparer.Ordinal);
        foreach (Reason open in advice.AllConclusions().Where(reason => !reason.IsCertain))
        {
            if (open.Action is { } action && barred.Contains(action))
                continue;
            double one = open.Then switch
            {
                Consequence.Bar => 1,
                Consequence.Caution => 0.2,
                _ => open.Certainty,
            };
            foreach (Need need in open.Needs.Where(need => need.Kind == NeedKind.Question))
                weight[need.Id] = weight.GetValueOrDefault(need.Id) + one / open.Needs.Length;
        }

        return weight
            .Keys.OrderByDescending(id => Math.Round(weight[id], 9))
            .ThenBy(id => s_knowledge.QuestionOf(id)!.Order)
            .FirstOrDefault();
    }

    // An area for each of the answers that a grower could give, or for some of them.
    private static IEnumerable<VisitArea> Answered(VisitArea area, Question question) =>
        question.Kind switch
        {
            QuestionKind.OneOf or QuestionKind.AnyOf => question.Choices.Select(choice =>
                area.With(question.Id, choice.Id)
            ),
            QuestionKind.Number => new[] { question.Between!.Value.Low, question.Between.Value.High }.Select(number =>
                area.With(question.Id, number)
            ),
            QuestionKind.Date => new[] { -200, -20, question.PastOnly ? -5 : 40 }.Select(days =>
                area.With(question.Id, RandomVisits.Day.AddDays(days))
            ),
            QuestionKind.Crops => new[] { "junipers", "hydrangeas", "ferns", "boxwood" }
                .Where(s_knowledge.Crops.ContainsKey)
                .Select(crop => area.With(question.Id, crop)),
            QuestionKind.Region => new[] { "north-carolina-piedmont", "willamette-valley", "sussex-coast" }.Select(
                region => area.With(question.Id, region)
            ),
            QuestionKind.Chemicals => [area.With(question.Id, "glyphosate")],
            QuestionKind.Name => [area.With(question.Id, "house-1")],
            QuestionKind.Weeds =>
            [
                area with
                {
                    Weeds = [],
                },
                area with
                {
                    Weeds = [new WeedSeen("liverwort", "mature", 20)],
                },
                area with
                {
                    Weeds = [new WeedSeen("spurge-spotted", "young", 5)],
                },
            ],
            _ =>
            [
                area with
                {
                    Past = [],
                },
                area with
                {
                    Past =
                    [
                        new PastApplication(
                            "prodiamine-granule",
                            RandomVisits.Day.AddDays(-60),
                            "clean",
                            WordSet.Empty
                        ),
                    ],
                },
            ],
        };

    private static IEnumerable<VisitArea> WorkedWithLess(int many)
    {
        VisitArea[] areas =
        [
            .. s_knowledge.WorkedVisits.SelectMany(worked => worked.Visit.Areas).Where(area => !area.Answers.IsEmpty),
        ];
        return Enumerable.Range(0, many).Select(i => Less(areas[i * 7 % areas.Length], new Draw((ulong)i + 1)));
    }

    private static VisitArea Less(VisitArea area, Draw draw)
    {
        string[] told = [.. area.Answers.Keys];
        return draw.Some([.. told], Math.Max(1, told.Length / 2))
            .Aggregate(area, (less, question) => less.Without(question));
    }

    private static IEnumerable<VisitArea> Drawn(int many)
    {
        var pcg = new PCG(1, 13);
        Gen<VisitArea> area = new RandomVisits(s_knowledge).Area;
        return Enumerable.Range(0, many).Select(one => area.Generate(pcg, null, out _));
    }

    private static AreaAdvice On(VisitArea area) => s_live.Value!.Change(AreaCase.Alone(RandomVisits.Day, area));

    private static VisitArea Yard =>
        new(
            "yard",
            "Yard",
            AreaAnswers.Of(
                ("put-on-lately", "no"),
                ("place", "container-yard"),
                ("cover", "open-sky"),
                ("stock", "established"),
                ("region", "north-carolina-piedmont")
            ),
            [],
            []
        );
}

using System.Collections.Immutable;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Trade;

/// <summary>
/// What is barred for good, what only until a day or a state, and what only in this way: read off the worked visits.
/// Sources stand beside the rows; the rest is common practice.
/// </summary>
public class BarsThatEndTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    public static TheoryData<string, string, string, ActionStatus, string> Rows =>
        new()
        {
            // pnw-containers: soft new growth burns, hardened growth does not.
            { "crop-in-flush", "shrubs", "clethodim-over-top", ActionStatus.NotYet, "when the flush has hardened" },
            // neal-2011, osu-bc: two to three weeks open before the film goes on; what was missed goes on after it is
            // off.
            {
                "maples-six-weeks-before-the-film",
                "house",
                "isoxaben-trifluralin-granule",
                ActionStatus.NotYet,
                "when the film is off again"
            },
            // ncsu-gh: film counts as a roof; it comes off. Glass never does.
            {
                "covered-house-in-january",
                "hoop-house",
                "prodiamine-granule",
                ActionStatus.NotYet,
                "when the film is off"
            },
            { "foliage-house-in-december", "bench", "oxadiazon-granule", ActionStatus.Never, "" },
            // kent-de: a house is empty when every wanted plant is out.
            {
                "under-bench-floor",
                "floor",
                "glyphosate-empty-house",
                ActionStatus.NotYet,
                "when every wanted plant is out of the house"
            },
            // pnw-containers: nothing over cuttings without roots, whatever else is wrong with it.
            { "mist-house-with-liverwort", "mist-house", "pelargonic-acid-floor-spray", ActionStatus.Never, "" },
            // udel-drift: what drifts has no place beside vines; a wiper sends nothing into the air.
            {
                "strip-beside-vines",
                "strip",
                "glyphosate-outdoor-directed",
                ActionStatus.NotThisWay,
                "wiped on single weeds, which sends nothing into the air"
            },
            // porter-parish-1993, ncsu-individual: most of what is broadcast over spaced pots misses them.
            {
                "spaced-trees-and-only-a-spreader",
                "trees",
                "oxadiazon-granule",
                ActionStatus.NotThisWay,
                "dosed pot by pot with a measured spoon, once there is one"
            },
            // pnw-containers, nc-prodiamine: open mix lets whatever is put on it down to the roots, however short its
            // own wait.
            {
                "potted-this-morning",
                "dry-cracks",
                "oxadiazon-granule",
                ActionStatus.NotYet,
                "when the mix has settled: watered in twice, firm, no cracks"
            },
            // kent-de: an edible crop under the same roof bars it for good.
            { "herbs-under-film", "herbs", "oxadiazon-granule", ActionStatus.Never, "" },
        };

    [Theory]
    [MemberData(nameof(Rows))]
    public void A_worked_visit_says_what_ends_a_bar(
        string visit,
        string area,
        string action,
        ActionStatus status,
        string ends
    )
    {
        Visit read = Read(visit);
        BarredAction barred = Assert.Single(Advise(read, IndexOf(read, area), read.Date).Barred, one =>
            one.Action == action
        );
        Assert.Equal(status, barred.Status);
        Assert.Equal(ends.Length == 0 ? [] : [ends], [.. barred.Until?.States ?? [], .. barred.OtherWays]);
    }

    // pnw-containers, nc-isox-dith; the waits are in the records. Counted by hand: 13 May + 14 days = 27 May;
    // 24 March + 21 days for bare roots = 14 April; 24 March + 7 days = 31 March.
    [Theory]
    [InlineData("hydrangea-liners-potted-last-week", "bed", "isoxaben-dithiopyr-granule", "2026-05-27")]
    [InlineData("bare-root-potting", "potted", "oxadiazon-granule", "2026-04-14")]
    [InlineData("bare-root-potting", "potted", "oxyfluorfen-prodiamine-granule", "2026-03-31")]
    public void A_wait_after_potting_ends_on_a_day(string visit, string area, string action, string day)
    {
        Visit read = Read(visit);
        BarredAction barred = Assert.Single(Advise(read, IndexOf(read, area), read.Date).Barred, one =>
            one.Action == action
        );
        Assert.Equal(DateOnly.ParseExact(day, "yyyy-MM-dd", null), barred.Until!.Day);
    }

    // The same sources. Its own wait is none, so only the state of the mix stands between it and the day of potting.
    [Fact]
    public void On_the_day_of_potting_only_a_settled_mix_clears_what_stops_seed_in_the_pot()
    {
        Visit read = Read("potted-this-morning");
        Assert.Equal(
            ["settled"],
            read.Areas.Where(
                    (area, i) =>
                        area.Id != "loose-for-weeks"
                        && Advise(read, i, read.Date).Clear.Any(one => one.Action == "oxadiazon-granule")
                )
                .Select(area => area.Id)
        );
        foreach (string area in new[] { "dry-cracks", "potted-on" })
        {
            AreaAdvice advice = Advise(read, IndexOf(read, area), read.Date);
            HashSet<string> barred = [.. advice.Barred.Select(one => one.Action)];
            Assert.All(
                s_knowledge.Treatments.Values.Where(one => one.ReachesCrop && one.ActsOn.Contains("germinating")),
                one => Assert.Contains(one.Id, barred)
            );
        }
    }

    [Fact]
    public void On_the_day_that_is_named_the_bar_is_gone_and_on_the_day_before_it_still_holds()
    {
        int counted = 0;
        foreach ((_, Visit visit, ImmutableArray<AreaAdvice> areas) in ShippedRules.WorkedAdvice)
        {
            for (int i = 0; i < areas.Length; i++)
            {
                // One day of each area; in the long run every one.
                foreach (var named in DaysNamed(areas[i]).GroupBy(one => one.Day).Take(Sizes.Of(1, int.MaxValue)))
                {
                    AreaAdvice before = Advise(visit, i, named.Key.AddDays(-1));
                    AreaAdvice then = Advise(visit, i, named.Key);
                    Assert.All(named, one => Assert.Contains(one.Judgement, BarsOf(one.Action, before)));
                    Assert.All(named, one => Assert.DoesNotContain(one.Judgement, BarsOf(one.Action, then)));
                    counted += named.Count();
                }
            }
        }

        Assert.True(counted > 10, $"only {counted} days were named");
    }

    // The oracle is the record alone: a stage that it does not list is barred, at whatever place and under whatever
    // cover. Cleaning of empty places hurts no stock: it is told for when the place is empty, and for no day before.
    [Fact]
    public void Whatever_stock_a_record_leaves_out_is_barred_by_a_rule_on_stock()
    {
        HashSet<string> onStock =
        [
            .. s_knowledge
                .Judgements.Where(rule =>
                    rule.Then is Consequence.Bar
                    && rule.When.OfType<Pattern.Fact>()
                        .Any(pattern => pattern.Tests.Any(test => test.Attribute == "stock-stages"))
                )
                .Select(rule => rule.Id),
        ];
        CatalogueAction[] all = [.. s_knowledge.Treatments.Values, .. s_knowledge.Practices.Values];
        foreach (AnswerChoice stage in s_knowledge.QuestionOf("stock")!.Choices)
        {
            VisitArea area = new(
                "a",
                "A",
                ImmutableSortedDictionary<string, Answer>.Empty.Add("stock", new Answer.Words(WordSet.Of([stage.Id]))),
                [],
                []
            );
            AreaAdvice advice = ShippedRules.On(AreaCase.Alone(new DateOnly(2026, 5, 12), area));
            HashSet<string> barred =
            [
                .. advice
                    .Barred.Where(one => one.Because.Any(reason => onStock.Contains(reason.Judgement)))
                    .Select(one => one.Action),
            ];
            Assert.Equal(
                [
                    .. all.Where(action => !action.StockStages.Contains(stage.Id) && !IsCleaningOfEmptyPlaces(action))
                        .Select(action => action.Id)
                        .Order(StringComparer.Ordinal),
                ],
                [.. barred.Order(StringComparer.Ordinal)]
            );
        }
    }

    [Fact]
    public void Cleaning_of_empty_places_is_told_for_when_they_are_empty()
    {
        int told = 0;
        foreach (AreaAdvice advice in ShippedRules.WorkedAreas)
        {
            if (advice.Reading.Stock is null or "none-present")
                continue;
            foreach (
                ClearAction clear in advice.Clear.Where(one =>
                    IsCleaningOfEmptyPlaces(s_knowledge.ActionOf(one.Action)!)
                )
            )
            {
                told++;
                Assert.Equal(Horizon.WhenEmpty, clear.Horizon);
            }
        }

        Assert.True(told > 5, $"told {told} times only");
    }

    private static bool IsCleaningOfEmptyPlaces(CatalogueAction action) =>
        action is Practice { Kind: "hygiene", Possible: "when-empty", StockStages.Count: 1 }
        && action.StockStages.Contains("none-present");

    private static IEnumerable<(string Action, string Judgement, DateOnly Day)> DaysNamed(AreaAdvice advice) =>
        from barred in advice.Barred
        let until = barred.Until
        where until is { HasHour: false, Day: not null }
        let days = barred.Because.Where(reason => reason.Then is Consequence.Bar { Lift: Lift.Days }).ToArray()
        where days.Length == 1
        select (barred.Action, days[0].Judgement, until.Day!.Value);

    private static string[] BarsOf(string action, AreaAdvice advice) =>
        [
            .. advice
                .Barred.Where(one => one.Action == action)
                .SelectMany(one => one.Because)
                .Select(reason => reason.Judgement),
        ];

    private static AreaAdvice Advise(Visit visit, int area, DateOnly day) =>
        ShippedRules.On(AreaCase.Of(visit, area) with { Date = day });

    private static int IndexOf(Visit visit, string area) => visit.Areas.ToList().FindIndex(one => one.Id == area);

    private static Visit Read(string visit) =>
        VisitFile.Read(Path.Combine(Repository.Rules, "visits", $"{visit}.yaml"), s_knowledge).Value!;
}

using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Shipped;

/// <summary>A weed that nobody has named promises nothing: naming it comes first, and no chemical is clear for
/// it.</summary>
public class UnnamedWeedLawTests
{
    private const string Naming = "identify-first";

    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    private static readonly ImmutableArray<string> s_kinds =
    [
        .. s_knowledge.Weeds.Values.Where(weed => weed.IsUnnamed).Select(weed => weed.Id),
    ];

    private static readonly Gen<(VisitArea Area, WeedSeen Unnamed)> s_drawn = Gen.Select(
        new RandomVisits(s_knowledge).Area,
        Gen.OneOf([.. s_kinds.Select(kind => Gen.Const(kind))]),
        Gen.OneOf<string>("seedling", "young", "mature", "flowering", "seeding", "expected"),
        Gen.Int[1, 100],
        (area, kind, stage, cover) => (area, new WeedSeen(kind, stage, cover))
    );

    [Fact]
    public void Every_broad_kind_can_be_told() =>
        Assert.Equal(
            [
                "unnamed-alga",
                "unnamed-broadleaf",
                "unnamed-creeper",
                "unnamed-grass",
                "unnamed-moss",
                "unnamed-sedge",
                "unnamed-vine",
                "unnamed-water-weed",
                "unnamed-woody",
            ],
            s_kinds.Order(StringComparer.Ordinal)
        );

    // A moss, an alga or a water weed is treated as its kind is, so beside weeds with a name it can wait.
    [Fact]
    public void Naming_it_is_the_first_step_of_the_day_where_what_is_done_hangs_on_it() =>
        Everywhere(
            (with, without, _) =>
            {
                bool isNamedUp = (without.Area.Weeds ?? []).Any(seen =>
                    seen.IsUp == true && !s_knowledge.Weeds[seen.Weed].IsUnnamed
                );
                bool hangs = with.Area.Weeds!.Value.Any(seen =>
                    s_knowledge.Weeds[seen.Weed] is { IsUnnamed: true, Kind: not ("bryophyte" or "alga" or "water") }
                );
                if (isNamedUp && !hangs)
                    return;
                // While nobody may go in nothing is advised that sends anybody in.
                if (with.KeepOut is not null)
                    return;
                // What keeps people from harm, or other stock from catching it, goes before everything.
                ClearAction first = with.Clear.First(one => Possible(one.Action) != "at-once");
                Assert.Equal((Naming, Horizon.Today), (first.Action, first.Horizon));
            }
        );

    private static string? Possible(string action) => s_knowledge.Practices.GetValueOrDefault(action)?.Possible;

    [Fact]
    public void No_figure_counts_for_it() =>
        Everywhere(
            (with, _, unnamed) =>
                Assert.All(
                    with.Clear.SelectMany(one => one.Effect.Parts).Where(part => part.Weed == unnamed.Weed),
                    part => Assert.Equal((null, null), (part.LowPercent, part.HighPercent))
                )
        );

    [Fact]
    public void No_chemical_is_clear_that_would_not_be_without_it() =>
        Everywhere((with, without, _) => Assert.Empty(Chemicals(with).Except(Chemicals(without))));

    [Fact]
    public void Where_nothing_has_a_name_no_chemical_is_clear() =>
        s_drawn.Sample(
            drawn => Assert.Empty(Chemicals(Advise(drawn.Area with { Weeds = [drawn.Unnamed] }))),
            iter: Sizes.Of(30, 5_000),
            threads: 1
        );

    [Fact]
    public void Where_every_weed_has_a_name_naming_stands_for_look_alikes_only()
    {
        string[] alike =
        [
            .. s_knowledge
                .Weeds.Values.Where(weed =>
                    weed.LookAlikes.Any(other => Lives(s_knowledge.Weeds[other.Weed]) != Lives(weed))
                )
                .Select(weed => weed.Id),
        ];
        int stood = 0;
        foreach (AreaAdvice advice in ShippedRules.WorkedAreas)
        {
            if (advice.Clear.All(one => one.Action != Naming))
                continue;
            stood++;
            Assert.Contains(advice.Area.Weeds!.Value, seen => s_kinds.Contains(seen.Weed) || alike.Contains(seen.Weed));
        }

        Assert.True(stood > 0);
    }

    // Read anew from the record: what is treated otherwise comes from below or is a mat where the other is not.
    private static (bool Below, string Kind) Lives(Weed weed) => (weed.Underground, weed.Kind);

    private static IEnumerable<string> Chemicals(AreaAdvice advice) =>
        advice.Clear.Select(one => one.Action).Where(s_knowledge.Treatments.ContainsKey);

    private static void Everywhere(Action<AreaAdvice, AreaAdvice, WeedSeen> holds) =>
        s_drawn.Sample(
            drawn =>
            {
                ImmutableArray<WeedSeen> others =
                [
                    .. (drawn.Area.Weeds ?? []).Where(seen =>
                        seen.Weed != drawn.Unnamed.Weed && !s_kinds.Contains(seen.Weed)
                    ),
                ];
                holds(
                    Advise(drawn.Area with { Weeds = others.Add(drawn.Unnamed) }),
                    Advise(drawn.Area with { Weeds = others }),
                    drawn.Unnamed
                );
            },
            iter: Sizes.Of(30, 5_000),
            threads: 1
        );

    private static AreaAdvice Advise(VisitArea area) => ShippedRules.On(AreaCase.Alone(RandomVisits.Day, area));
}

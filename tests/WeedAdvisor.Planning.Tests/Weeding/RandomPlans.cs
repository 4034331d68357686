using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Tests.Weeding;

/// <summary>Plans drawn at random from the six weeds.</summary>
internal static class RandomPlans
{
    private static readonly ImmutableArray<WeedTraits> s_traits = [.. Yard.SixWeeds.Select(Yard.Traits)];

    public static Gen<WeedingPlan> Any { get; } = Of(Yard.Numbers);

    public static Gen<WeedingPlan> WithRoom { get; } = Of(Yard.Roomy);

    private static Gen<WeedingPlan> Of(WeedingNumbers numbers) =>
        from weeds in Weeds
        from first in Gen.Int[0, 51]
        from interval in Gen.Int[1, 12]
        from missed in Gen.Double[0, 1]
        from smallest in Gen.Double[0, 5]
        select new WeedingPlan
        {
            Weeds = weeds.List,
            FirstWeek = first,
            Weeks = weeds.Weeks,
            IntervalWeeks = interval,
            Missed = missed,
            SmallestPulledCm = smallest,
            Numbers = numbers,
        };

    private static Gen<(int Weeks, ImmutableArray<PlannedWeed> List)> Weeds =>
        from weeks in Gen.Int[1, 104]
        from chosen in Gen.Bool.Array[s_traits.Length].Where(all => all.Any(one => one))
        from control in Gen.Double[0, 1].Array[weeks]
        from standing in Gen.Double[0, 500].Array[0, 20]
        select (
            weeks,
            s_traits
                .Where((_, i) => chosen[i])
                .Select(traits => new PlannedWeed(traits, [.. control], [.. standing]))
                .ToImmutableArray()
        );
}

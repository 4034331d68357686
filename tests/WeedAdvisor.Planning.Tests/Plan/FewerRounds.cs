using WeedAdvisor.Golden;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;

namespace WeedAdvisor.Planning.Tests.Plan;

/// <summary>
/// The same search over fewer rounds in the short run, for laws that hold plans against each other: what is proven is
/// then proven of those rounds.
/// </summary>
internal static class FewerRounds
{
    public static PlanEffort Effort { get; } = Of([2, 4, null]);

    /// <summary>The search over some weeks between rounds; over all in the long run.</summary>
    public static PlanEffort Of(int?[] weeks) =>
        Sizes.IsLong
            ? new PlanEffort()
            : new PlanEffort
            {
                Rounds =
                [
                    .. from spring in weeks
                    from summer in weeks
                    from cool in weeks
                    select new YearRounds(spring, summer, cool),
                ],
            };
}

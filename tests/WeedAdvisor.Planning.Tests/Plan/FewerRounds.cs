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
    private static readonly int?[] s_weeks = [2, 4, null];

    public static PlanEffort Effort { get; } =
        Sizes.IsLong
            ? new PlanEffort()
            : new PlanEffort
            {
                Rounds =
                [
                    .. from spring in s_weeks
                    from summer in s_weeks
                    from cool in s_weeks
                    select new YearRounds(spring, summer, cool),
                ],
            };
}

using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Season.Programme;

/// <summary>Inside a week: clean first, then cover, then put on, then water in.</summary>
public sealed class WorkOrderTests
{
    private const string Cover = "bark-mulch",
        Other = "hand-weed-now";
    private const int Days = 40,
        Week = 7;

    private static readonly PlannedWorkKind[] s_kinds = Enum.GetValues<PlannedWorkKind>();
    private static readonly DateOnly s_first = new(2026, 3, 2);

    [Fact]
    public void Nothing_is_laid_before_a_cleaning_that_begins_while_it_may_still_be_laid() =>
        Drawn()
            .Array[1, 12]
            .Sample(
                work =>
                {
                    PlannedWork[] told = [.. WorkOrder.Of(work, ShippedRules.Knowledge)];
                    Assert.Equal(work.Length, told.Length);
                    Assert.Equal(told.OrderBy(one => one.Day), told);
                    for (int i = 0; i < told.Length; i++)
                    {
                        PlannedWork cover = told[i];
                        if (cover.Action != Cover || cover.Kind != PlannedWorkKind.Practice)
                            continue;
                        PlannedWork[] before = [.. told.Take(i)];
                        bool isClean = before.Any(one => IsCleaning(one) && one.Day > cover.Day.AddDays(-Week));
                        Assert.True(
                            isClean
                                || !told.Any(one => IsCleaning(one) && one.Day >= cover.Day && one.Day <= cover.LastDay)
                        );
                        Assert.DoesNotContain(before, one => one.Day == cover.Day && IsAfterCovering(one));
                    }
                },
                iter: Sizes.Of(few: 2000, many: 100_000)
            );

    private static bool IsCleaning(PlannedWork work) => work.Kind is PlannedWorkKind.CleanUp or PlannedWorkKind.Round;

    private static bool IsAfterCovering(PlannedWork work) =>
        work.Kind is PlannedWorkKind.Apply or PlannedWorkKind.WaterIn or PlannedWorkKind.Film;

    private static Gen<PlannedWork> Drawn() =>
        Gen.Select(
                Gen.Int[0, Days],
                Gen.Int[0, 2 * Week],
                Gen.Int[0, s_kinds.Length - 1].Select(kind => s_kinds[kind]),
                Gen.Bool.Select(isCover => isCover ? Cover : Other)
            )
            .Select(
                (day, length, kind, action) =>
                    new PlannedWork(
                        s_first.AddDays(day),
                        s_first.AddDays(day + length),
                        kind,
                        kind == PlannedWorkKind.Practice ? action : null,
                        "Something."
                    )
            );
}

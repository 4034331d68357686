using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Season.Year;

/// <summary>How an area is taken to change through the year, where the visit cannot say it.</summary>
public sealed record YearAssumptions
{
    /// <summary>Weeks for which what the visit says of growth and shipping is taken to hold.</summary>
    public required int StatedHoldsWeeks { get; init; }

    /// <summary>Weeks before the average last frost at which buds break.</summary>
    public required int FlushStartsWeeksBeforeLastFrost { get; init; }

    /// <summary>Weeks after the average last frost at which the spring flush has hardened.</summary>
    public required int FlushEndsWeeksAfterLastFrost { get; init; }

    /// <summary>Weeks after the average first frost at which plants are at rest.</summary>
    public required int RestStartsWeeksAfterFirstFrost { get; init; }

    /// <summary>Weeks after potting at which newly potted plants are established.</summary>
    public required int EstablishedWeeksAfterPotting { get; init; }

    /// <summary>The values of the knowledge.</summary>
    /// <param name="numbers">What is usual.</param>
    /// <param name="flushesAfterBloom">Whether a crop flushes after its bloom in spring, so for longer.</param>
    public static YearAssumptions Of(UsualNumbers numbers, bool flushesAfterBloom = false) =>
        new()
        {
            StatedHoldsWeeks = numbers.Whole(UsualIds.StatedHolds),
            FlushStartsWeeksBeforeLastFrost = numbers.Whole(UsualIds.FlushStarts),
            FlushEndsWeeksAfterLastFrost = numbers.Whole(
                flushesAfterBloom ? UsualIds.FlushAfterBloomEnds : UsualIds.FlushEnds
            ),
            RestStartsWeeksAfterFirstFrost = numbers.Whole(UsualIds.RestStarts),
            EstablishedWeeksAfterPotting = numbers.Whole(UsualIds.Established),
        };
}

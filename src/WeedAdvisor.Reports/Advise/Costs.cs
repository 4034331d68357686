using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise;

/// <summary>What an action costs, in words.</summary>
internal static class Costs
{
    // The pots that the figures of records are counted for.
    private const decimal PotsOfRecord = 1000;

    /// <summary>Dollars and hours; null when neither is known.</summary>
    public static Line? Of(ClearAction action, string basis) =>
        Known(
            action.CostUsd is { } usd ? Line.Of($"about {Amounts.Dollars(usd)}") : null,
            action.Hours is { } hours ? Line.Of($"{Amounts.Hours(hours)} of work") : null
        )
            is { } known
            ? Line.Of($"{known} {basis}")
            : null;

    /// <summary>
    /// Dollars and hours for the pots of an area; null unless their number, width and spacing are told.
    /// </summary>
    public static Line? ForArea(ClearAction action, CatalogueAction? record, AreaReading reading)
    {
        if (!reading.IsSizeTold || reading.PotsAnswered is not { } pots || !GrowsWithPots(record))
            return null;
        decimal thousands = pots / PotsOfRecord;
        return Known(
            action.CostUsd * thousands is { } usd ? Line.Of($"about {Amounts.Dollars(usd)}") : null,
            action.Hours * thousands is { } hours ? Line.Of($"{Amounts.Hours(hours)} of work") : null
        );
    }

    // The work on a strip, a leak or a store is the same however many pots stand there.
    private static bool GrowsWithPots(CatalogueAction? record) =>
        record is Treatment or Practice { Kind: "weeding" or "covering" or "feeding" or "substrate" or "choice" };

    private static Line? Known(params Line?[] parts) =>
        parts.OfType<Line>().ToArray() is { Length: > 0 } known ? Line.Join(", ", known) : null;

    /// <summary>Whether the record's cost is an invented figure.</summary>
    public static bool IsInvented(CatalogueAction? record) =>
        record?.Cost is { } cost && cost.Sources.Contains("invented");
}

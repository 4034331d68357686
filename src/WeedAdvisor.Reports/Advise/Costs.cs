using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise;

/// <summary>What an action costs, in words.</summary>
internal static class Costs
{
    /// <summary>Dollars and hours; null when neither is known.</summary>
    public static Line? Of(ClearAction action, string basis) =>
        Known(
            action.CostUsd is { } usd ? Line.Of($"about {Amounts.Dollars(usd)}") : null,
            action.Hours is { } hours ? Line.Of($"{Amounts.Hours(hours)} of work") : null
        )
            is { } known
            ? Line.Of($"{known} {basis}")
            : null;

    /// <summary>Dollars and hours where room is short, on the same basis; null when neither is known.</summary>
    public static Line? Brief(ClearAction action) =>
        Known(
            action.CostUsd is { } usd ? Line.FromTextPart(Amounts.Dollars(usd)) : null,
            action.Hours is { } hours ? Line.FromTextPart(Amounts.Hours(hours)) : null
        );

    private static Line? Known(params Line?[] parts) =>
        parts.OfType<Line>().ToArray() is { Length: > 0 } known ? Line.Join(", ", known) : null;

    /// <summary>Whether the record's cost is an invented figure.</summary>
    public static bool IsInvented(CatalogueAction? record) =>
        record?.Cost is { } cost && cost.Sources.Contains("invented");
}

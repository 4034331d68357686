using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Reports.Text;

/// <summary>What an action costs, in words.</summary>
internal static class Costs
{
    /// <summary>Dollars and hours; null when neither is known.</summary>
    public static string? Text(ClearAction action, string basis)
    {
        string?[] parts =
        [
            action.CostUsd is { } usd ? $"about {Figures.Dollars(usd)}" : null,
            action.Hours is { } hours ? $"{Figures.Plain(hours)} h of work" : null,
        ];
        string known = string.Join(", ", parts.Where(part => part is not null));
        return known.Length == 0 ? null : $"{known} {basis}";
    }

    /// <summary>Dollars and hours where room is short, on the same basis; null when neither is known.</summary>
    public static string? Short(ClearAction action)
    {
        string?[] parts =
        [
            action.CostUsd is { } usd ? Figures.Dollars(usd) : null,
            action.Hours is { } hours ? $"{Figures.Plain(hours)} h" : null,
        ];
        string known = string.Join(", ", parts.Where(part => part is not null));
        return known.Length == 0 ? null : known;
    }

    /// <summary>Whether the record's cost is an invented figure.</summary>
    public static bool IsInvented(CatalogueAction? record) =>
        record?.Cost is { } cost && cost.Sources.Contains("invented");
}

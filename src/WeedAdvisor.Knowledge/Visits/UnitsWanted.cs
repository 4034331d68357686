using System.Collections.Immutable;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>
/// The units in which quantities are printed. Where nobody wants any, they stand as their source has them.
/// </summary>
public enum UnitsWanted
{
    /// <summary>Metric.</summary>
    Metric,

    /// <summary>Those of the United States.</summary>
    Us,

    /// <summary>Each quantity as its source has it, and in the other units beside it.</summary>
    Both,
}

/// <summary>The words for units: the same in a visit file, a region, an option and on the screens.</summary>
public static class UnitsWords
{
    /// <summary>The words as readers of files know them.</summary>
    public const string Notation = "words:metric|us|both";

    /// <summary>The words.</summary>
    public static ImmutableArray<string> All { get; } = [.. Enum.GetValues<UnitsWanted>().Select(Of)];

    /// <summary>The word for some units.</summary>
    public static string Of(UnitsWanted units) =>
        units switch
        {
            UnitsWanted.Metric => "metric",
            UnitsWanted.Us => "us",
            UnitsWanted.Both => "both",
            _ => throw new ArgumentOutOfRangeException(nameof(units), units, "units without a word"),
        };

    /// <summary>The units of a word; null when it is none of them.</summary>
    public static UnitsWanted? Find(string? word) =>
        word switch
        {
            "metric" => UnitsWanted.Metric,
            "us" => UnitsWanted.Us,
            "both" => UnitsWanted.Both,
            _ => null,
        };
}

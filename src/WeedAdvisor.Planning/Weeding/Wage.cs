using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>What an hour of labour may cost, and what is said when it is not known: of weeding, of money
/// and of the season alike.</summary>
public static class Wage
{
    /// <summary>The highest, US dollars an hour.</summary>
    public const int Highest = 10_000;

    /// <summary>
    /// The wage set, else the visit's answer, else the price list; refused when out of range or missing.
    /// </summary>
    /// <param name="area">The area.</param>
    /// <param name="prices">Finds a price by its id.</param>
    /// <param name="set">US dollars an hour set for this reckoning; null for none.</param>
    public static Outcome<Told<decimal>, string> Of(AreaReading area, Func<string, Price?> prices, decimal? set) =>
        area.Wage(set, prices) switch
        {
            null =>
                "What an hour of labour costs is not known. Answer the question 'labour-rate', put it in a price file, "
                    + "or set it with --wage.",
            { Value: >= 0 and <= Highest } wage => wage,
            { Value: var wage } => OutOfRange((double)wage),
        };

    /// <summary>The price that stands in for the answer: it has its id.</summary>
    public const string PriceId = QuestionIds.Wage;

    /// <summary>Who says it, for the grower.</summary>
    internal static string Says(Origin from, Func<string, Price?> prices) =>
        from switch
        {
            Origin.Set => "as you set it",
            Origin.Answer => "your answer",
            _ => prices(PriceId) is { } price && price.Sources.Contains("invented")
                ? "the price list, invented"
                : "the price list",
        };

    /// <summary>Whether it may be the cost of an hour, US dollars.</summary>
    internal static bool IsInRange(double usdPerHour) => usdPerHour is >= 0 and <= Highest;

    /// <summary>What is said of a wage that is not in range.</summary>
    internal static string OutOfRange(double usdPerHour) =>
        FormattableString.Invariant($"An hour of labour costs 0 to {Highest} US dollars, not {usdPerHour:0.##}.");
}

using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Spreaders;

/// <summary>Holds a rate found against the rate wanted: per cent off, and what to change next.</summary>
internal static class AgainstWanted
{
    /// <summary>What is assumed by a comparison.</summary>
    public const string Assumption = "Within 5 % counts as on the rate: common practice.";

    private const decimal Near = 5;
    private const decimal Far = 25;

    /// <summary>The field for the rate wanted, where it may be left out.</summary>
    public static RateField Wanted { get; } =
        new(
            "wanted",
            "Rate wanted",
            GranuleRate.Kind(),
            "Weight of product on an area, from the label; to be told what to change."
        )
        {
            IsOptional = true,
        };

    /// <summary>Adds the comparison to a sheet.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="found">The rate found.</param>
    /// <param name="wanted">The rate wanted; null for none.</param>
    /// <returns>Figures and notes; empty when no rate is wanted.</returns>
    public static (ImmutableArray<RateResult> Results, ImmutableArray<string> Notes) Of(
        WorkingSheet sheet,
        Quantity found,
        Quantity? wanted
    )
    {
        if (wanted is not { } goal)
            return ([], []);
        Quantity same = sheet.Convert("Rate wanted", goal, found.Unit.Symbol);
        Quantity off = sheet.Line("Off the rate wanted", $"({found} - {same}) ÷ {same}", (found - same) / same, "%");
        return ([new("off", "Off the rate wanted", off, [])], [Verdict(off.Value), .. Advice(off.Value)]);
    }

    private static string Verdict(decimal percent)
    {
        string share = Figures.Of(Math.Abs(percent), 2);
        return Math.Abs(percent) <= Near
                ? $"Within {Near} % of the rate wanted: keep this setting and write it down with the product and the "
                    + $"walker."
            : percent > 0
                ? $"{share} % too much. If the rate wanted is the label's highest, do not treat anything at this "
                    + $"setting."
            : $"{share} % too little: weeds will come through.";
    }

    private static ImmutableArray<string> Advice(decimal percent)
    {
        if (Math.Abs(percent) <= Near)
            return [];
        string way = percent > 0 ? "Close" : "Open";
        string pace = percent > 0 ? "a little faster or on a wider swath" : "a little slower or on a narrower swath";
        string first =
            Math.Abs(percent) > Far
                ? $"{way} the gate by one mark, then weigh again: this is too far off for a change of pace."
                : $"{way} the gate by half a mark, or walk {pace}; one of them, not both.";
        return [first, "Change one thing at a time and weigh again after each change. Crank and walk as before."];
    }
}

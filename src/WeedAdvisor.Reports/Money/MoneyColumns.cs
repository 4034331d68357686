using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Money;

/// <summary>A column of the table of ways.</summary>
/// <param name="Short">Its heading where room is short.</param>
/// <param name="Long">Its heading in full.</param>
/// <param name="Width">Columns it takes in plain text.</param>
/// <param name="Value">What stands in it.</param>
internal sealed record MoneyColumn(string Short, string Long, int Width, Func<WaysCompared, Way, string> Value);

/// <summary>The columns of the table of ways, the same in every format.</summary>
internal static class MoneyColumns
{
    private const decimal Thousand = 1000;

    public static ImmutableArray<MoneyColumn> All { get; } =
    [
        new("1000 pots", "a year, 1000 pots", 10, (_, way) => Figures.Dollars(way.Usd)),
        new("a pot", "a year, one pot", 7, (_, way) => Cents(way.Usd / Thousand)),
        new("hours", "hours, 1000 pots", 7, (_, way) => Hours(way.Hours)),
        new("bought", "materials", 7, (_, way) => Figures.Dollars(way.Of(CostKind.Material))),
        new("weeding", "work of weeding", 8, (_, way) => Figures.Dollars(Weeding(way))),
        new("other", "other work", 6, (_, way) => Figures.Dollars(way.Of(CostKind.Labour) - Weeding(way))),
        new("tools", "tools that are bought, a year's share", 6, (_, way) => Figures.Dollars(way.Of(CostKind.Equipment))),
        new("lost", "plants that cannot be sold", 6, (_, way) => Figures.Dollars(way.Of(CostKind.LostReturn))),
        new("all pots", "a year, all pots", 10, (compared, way) => Figures.Dollars(Whole(compared, way.Usd))),
        new("change", "change from today's way, all pots", 9, Change),
    ];

    /// <summary>An amount for 1000 pots, for the whole area.</summary>
    public static decimal Whole(WaysCompared compared, decimal usd) => usd * compared.Case.Pots / Thousand;

    /// <summary>Hours with one decimal.</summary>
    public static string Hours(decimal hours) => hours.ToString("#,0.0", CultureInfo.InvariantCulture);

    private static string Change(WaysCompared compared, Way way) => way == compared.Today
        ? "-"
        : Signed(Whole(compared, way.Usd - compared.Today.Usd));

    private static string Signed(decimal usd) => usd > 0 ? "+" + Figures.Dollars(usd) : SwingBars.Signed(usd);

    private static string Cents(decimal usd) => "$" + usd.ToString("0.000", CultureInfo.InvariantCulture);

    private static decimal Weeding(Way way) =>
        way.Items.Where(item => item.Id is "walking" or "pulling").Sum(item => item.Usd);
}

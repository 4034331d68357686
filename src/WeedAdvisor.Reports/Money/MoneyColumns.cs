using System.Collections.Immutable;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Money;

/// <summary>A column of the table of ways.</summary>
/// <param name="Shape">Its headings and its width.</param>
/// <param name="Value">What stands in it.</param>
internal sealed record MoneyColumn(Column Shape, Func<WaysCompared, Way, Line> Value);

/// <summary>The columns of the table of ways, the same in every format.</summary>
internal static class MoneyColumns
{
    private const decimal Thousand = 1000;

    public static ImmutableArray<MoneyColumn> All { get; } =
    [
        Of("1000 pots", "a year, 1000 pots", 9, (_, way) => Amounts.Dollars(way.Usd)),
        Of("a pot", "a year, one pot", 7, (_, way) => new Amount(way.Usd / Thousand, Amount.Dollar, "0.000")),
        Of("hours", "hours, 1000 pots", 6, (_, way) => new Amount(way.Hours, "", "#,0.0")),
        Of("bought", "materials, and a year's share of tools", 7, (_, way) =>
            Amounts.Dollars(way.Of(CostKind.Material) + way.Of(CostKind.Equipment))
        ),
        Of("weeding", "work of weeding", 8, (_, way) => Amounts.Dollars(Weeding(way))),
        Of("other", "other work", 6, (_, way) => Amounts.Dollars(way.Of(CostKind.Labour) - Weeding(way))),
        Of("lost", "plants that cannot be sold", 7, (_, way) => Amounts.Dollars(way.Of(CostKind.LostReturn))),
        Of("next", "work that seed left makes next year", 7, (_, way) => Amounts.Dollars(way.Of(CostKind.NextYear))),
        Of("all pots", "a year, all pots", 9, (compared, way) => Amounts.Dollars(Whole(compared, way.Usd))),
        Of("change", "change from today's way, all pots", 10, Change),
    ];

    /// <summary>An amount for 1000 pots, for the whole area.</summary>
    public static decimal Whole(WaysCompared compared, decimal usd) => usd * compared.Case.Pots / Thousand;

    private static MoneyColumn Of(string brief, string name, int width, Func<WaysCompared, Way, Line> value) =>
        new(new Column(name, width) { Brief = [brief], Before = name + " " }, value);

    private static Line Change(WaysCompared compared, Way way) =>
        way == compared.Today ? "-" : Signed(Whole(compared, way.Usd - compared.Today.Usd));

    private static Line Signed(decimal usd) => Line.Of($"{(usd > 0 ? "+" : "")}{Amounts.Dollars(usd)}");

    private static decimal Weeding(Way way) =>
        way.Items.Where(item => item.Id is "walking" or "pulling").Sum(item => item.Usd);
}

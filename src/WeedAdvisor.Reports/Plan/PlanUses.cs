using System.Globalization;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Units;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Season;
using WeedAdvisor.Reports.Text;
using Significant = WeedAdvisor.Planning.Rates.Units.Figures;

namespace WeedAdvisor.Reports.Plan;

/// <summary>
/// What goes on in a plan, each use with its letter in the strip and below it product, tanks or doses, setting, water.
/// </summary>
internal static class PlanUses
{
    private const int Exact = 3,
        Indent = 5;
    private const decimal TrialM2 = 10;

    /// <summary>The uses in their order.</summary>
    public static IEnumerable<Item> Of(AreaPlan plan, PlannedWay best, Names names) =>
        best.Uses.Select(
            (use, i) =>
                new Item(
                    $"{(char)('A' + i)}  ",
                    Line.Of(
                        $"{SeasonWords.Days(use)}  {new Named(names.Action(use.Treatment))}, "
                            + $"{PlanCosts.All(plan, use.Usd)}"
                    ) with
                    {
                        Action = use.Treatment,
                    }
                )
                {
                    Below =
                    [
                        .. Lines(UseAmounts.Of(plan.Case.Year, use, best.Uses.Take(i)), names.Treatment(use.Treatment)!)
                            .Select(line => new Paragraph(line).At(Indent)),
                    ],
                }
        );

    private static IEnumerable<Line> Lines(UseAmounts use, Treatment treatment)
    {
        string[] products =
        [
            .. use.Ranges.Select(range =>
                $"{Range(range.Product, Other(range.Product.Low))}, {Range(range.Rate, null)}"
            ),
        ];
        yield return products.Length > 0
            ? $"Product on {Area(use)}: {string.Join("; or, where it is poured, ", products)}."
            : $"Product: {use.NoProduct}.";
        foreach (Line setting in Settings(use))
            yield return setting;
        if (use.WaterLitres is { } water)
        {
            string litres = water.Low == water.High ? Sig(water.Low) : $"{Sig(water.Low)} to {Sig(water.High)}";
            yield return Line.Of($"Water: {litres} litres over all beds, {WateringIn.WordsOf(treatment)}.");
        }
    }

    private static IEnumerable<Line> Settings(UseAmounts use)
    {
        if (use.Tanks is { } tanks)
        {
            decimal full = tanks["full-tanks"].Value.Value;
            string each =
                full > 0 ? $"{Significant.Of(full, Exact)} full, each with {Dose(tanks, "full-product")}" : "";
            string last = Find(tanks, "last-spray") is { } rest
                ? $"{(full > 0 ? ", and a last one" : "one")} of {Metric(rest)} litres with "
                    + Dose(tanks, "last-product")
                : "";
            yield return $"Tanks of {use.TankLitres:0.##} litres at {use.SprayLitresHa:0.##} litres a hectare and the "
                + $"lowest rate: {each}{last}. Calibrate first.";
        }

        if (!use.Doses.IsEmpty)
        {
            Quantity[] doses = [.. use.Doses.Select(one => one["dose"].Value)];
            var range = new RateRange(doses.MinBy(one => one.InBase), doses.MaxBy(one => one.InBase));
            yield return $"One pot: {Range(range, null)}, " + $"shaken on in four passes.";
        }

        if (use.Tool == ApplicationTools.Spreader && use.Ranges is [{ Rate: var rate }, ..] && IsWeighed(rate.Low))
        {
            decimal low = rate.Low.In("g/m2") * TrialM2,
                high = rate.High.In("g/m2") * TrialM2;
            string falls = low == high ? Sig(low) : $"{Sig(low)} to {Sig(high)}";
            yield return $"Set the spreader so that {falls} g fall on {TrialM2:0} m² ({Dollar(TrialM2)}); weigh it.";
        }
    }

    private static string Dollar(decimal squareM) =>
        $"{Significant.Of(Quantity.Of(squareM, "m2").In("ft2"), Exact)} ft²";

    private static string Area(UseAmounts use) => $"{Sig(use.GroundM2)} m²";

    private static Quantity? Find(RateAnswer answer, string id) =>
        answer.Results.FirstOrDefault(result => result.Id == id)?.Value;

    private static string Metric(Quantity spray) => Sig(spray.In("L"));

    // In the smaller units where it is measured out.
    private static string Dose(RateAnswer answer, string id)
    {
        Quantity dose = answer[id].Value;
        return dose.Dimension == Dimension.Weight
            ? $"{Down(dose.In("g"))} g ({Down(dose.In("oz"))} oz)"
            : $"{Down(dose.In("mL"))} mL ({Down(dose.In("fl-oz"))} fl oz)";
    }

    private static RateRange In(string unit, RateRange range) => new(range.Low.To(unit), range.High.To(unit));

    private static string Range(RateRange range, string? other)
    {
        range = In(MetricUnit(range.High), range);
        string own = Span(range);
        return other is null ? own : $"{own} ({Span(In(other, range))})";
    }

    private static string Span(RateRange range) =>
        range.Low.InBase == range.High.InBase
            ? $"{Down(range.High.Value)} {range.High.Unit.Symbol}"
            : $"{Down(range.Low.Value)} to {Down(range.High.Value)} {range.High.Unit.Symbol}";

    private static string MetricUnit(Quantity value) =>
        value.Dimension == Dimension.Weight
            ? value.In("kg") < 1
                ? "g"
                : "kg"
            : value.Dimension == Dimension.Volume
                ? value.In("L") < 1
                    ? "mL"
                    : "L"
                : IsWeighed(value)
                    ? "kg/ha"
                    : "L/ha";

    private static bool IsWeighed(Quantity rate) => rate.Dimension == Dimension.WeightPerArea;

    private static string Other(Quantity value) =>
        value.Dimension != Dimension.Weight ? "fl-oz"
        : value.In("kg") < 1 ? "oz"
        : "lb";

    // A dose is never rounded up.
    private static string Down(decimal value) => Written(Significant.Down(value, Exact));

    private static string Sig(decimal value) => Written(Significant.Rounded(value, Exact));

    private static string Written(decimal value) => value.ToString("#,0.##########", CultureInfo.InvariantCulture);
}

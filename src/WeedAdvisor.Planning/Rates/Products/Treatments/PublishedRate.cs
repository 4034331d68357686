using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products.Treatments;

/// <summary>One published rate of a treatment, with its units. It is not a label.</summary>
/// <param name="Treatment">The treatment.</param>
/// <param name="Low">Least product, on an area or in water; null when only the active is given.</param>
/// <param name="High">Most product; null when only the active is given.</param>
/// <param name="ActiveLow">Least active ingredient on an area; null when not given.</param>
/// <param name="ActiveHigh">Most active ingredient on an area; null when not given.</param>
/// <param name="Sources">Keys of the sources.</param>
/// <param name="Note">A note, or null.</param>
internal sealed record PublishedRate(
    Treatment Treatment,
    Quantity? Low,
    Quantity? High,
    Quantity? ActiveLow,
    Quantity? ActiveHigh,
    ImmutableArray<string> Sources,
    string? Note
)
{
    /// <summary>Whether the rate counts product in so much water, not on an area.</summary>
    public bool IsInWater =>
        High is { } high && (high.Dimension == Dimension.None || high.Dimension == Dimension.Strength);

    /// <summary>Whether the product is weighed, not poured.</summary>
    public bool IsWeighed =>
        High is { } high
            ? high.Dimension == Dimension.WeightPerArea || high.Dimension == Dimension.Strength
            : Treatment.Formulation is "GR" or "WG" or "WP" or "SG" or "SP";

    /// <summary>
    /// Active ingredient in the product, percent or weight in a volume: the larger of what the record's strength and
    /// the pair of published figures say, so that active is never counted too low. Null when neither says.
    /// </summary>
    public Quantity? ActiveInProduct
    {
        get
        {
            Quantity?[] found = [OfRecord(), OfPair(ActiveLow, Low), OfPair(ActiveHigh, High)];
            return found.OfType<Quantity>().OrderBy(strength => strength.InBase).Cast<Quantity?>().LastOrDefault();
        }
    }

    /// <summary>The most active ingredient on an area that it means; null when that cannot be told.</summary>
    public Quantity? MostActive =>
        High is not { } high ? ActiveHigh
        : !IsInWater && ActiveInProduct is { } strength ? (high * strength).To("kg/ha")
        : ActiveHigh;

    /// <summary>The range with its sources and note, for people.</summary>
    public string Text
    {
        get
        {
            string range =
                Low is { } low && High is { } high ? Range(low, high)
                : ActiveLow is { } least && ActiveHigh is { } most ? Range(least, most) + " of active"
                : "";
            string note = Note is null ? "" : $"; {Note.TrimEnd('.')}";
            return $"{range} ({string.Join(", ", Sources)}{note})";
        }
    }

    /// <summary>The published rates of a treatment that can be reckoned with, in the order of the record.</summary>
    public static ImmutableArray<PublishedRate> Of(Treatment treatment) =>
        [
            .. treatment
                .Rates.Where(rate => rate.Product is null || UnitOf(rate.Unit) is not null)
                .Where(rate => rate.Product is not null || rate.AiLbPerAcre is not null)
                .Select(rate => new PublishedRate(
                    treatment,
                    Product(rate, rate.Product?.Low),
                    Product(rate, rate.Product?.High),
                    Active(rate.AiLbPerAcre?.Low),
                    Active(rate.AiLbPerAcre?.High),
                    rate.Sources,
                    rate.Note
                )),
        ];

    private static string Range(Quantity low, Quantity high) =>
        low == high ? $"{high}" : $"{Figures.Of(low.Value, 6)} to {high}";

    private static Quantity? Product(Rate rate, decimal? value) =>
        value is { } number && UnitOf(rate.Unit) is { } unit ? new Quantity(number, unit) : null;

    private static Quantity? Active(decimal? value) => value is { } number ? Quantity.Of(number, "lb/acre") : null;

    private static Unit? UnitOf(string? unit) =>
        unit == "percent-solution" ? UnitTable.Of("%")
        : unit is null ? null
        : UnitTable.Find(unit);

    private Quantity? OfRecord() =>
        Treatment.Strength switch
        {
            { Unit: "percent" } strength when IsWeighed => Quantity.Of(strength.Value, "%"),
            { Unit: "lb-ai-per-gal" } strength when !IsWeighed => Quantity.Of(strength.Value, "lb/gal"),
            { Unit: "g-ai-per-litre" } strength when !IsWeighed => Quantity.Of(strength.Value, "g/L"),
            _ => null,
        };

    private Quantity? OfPair(Quantity? active, Quantity? product) =>
        !IsInWater && active is { } held && product is { Value: > 0 } sold
            ? (held / sold).To(IsWeighed ? "%" : "lb/gal")
            : null;
}

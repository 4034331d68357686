using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products;

/// <summary>
/// Fields that the sums about products share, and the bounds beyond which their entries are questioned.
/// </summary>
internal static class ProductField
{
    // Bounds of belief: more than any herbicide needs, so that a slipped point or a wrong unit is caught.
    private static readonly Quantity s_mostWeight = Quantity.Of(2000, "lb/acre");
    private static readonly Quantity s_mostVolume = Quantity.Of(300, "gal/acre");
    private static readonly Quantity s_strongest = Quantity.Of(10, "lb/gal");
    private static readonly Quantity s_heaviest = Quantity.Of(20, "lb/gal");
    private static readonly Quantity s_lightest = Quantity.Of(5, "lb/gal");

    /// <summary>Active ingredient on an area.</summary>
    public static RateFieldKind.Measure ActiveRate() =>
        Field.Measure("lb/acre", "oz/acre", "kg/ha", "g/ha") with
        {
            Most = Quantity.Of(500, "lb/acre"),
        };

    /// <summary>Product on an area, dry or liquid.</summary>
    public static RateFieldKind.Measure ProductRate() =>
        Field.Measure(
            "lb/acre",
            "oz/acre",
            "pt/acre",
            "qt/acre",
            "fl-oz/acre",
            "lb/1000ft2",
            "oz/1000ft2",
            "kg/ha",
            "L/ha",
            "g/m2"
        );

    /// <summary>How much active ingredient a product holds.</summary>
    public static RateFieldKind.Measure Strength() => Field.Measure("%", "lb/gal", "g/L");

    /// <summary>How heavy a liquid is.</summary>
    public static RateFieldKind.Measure Density() => Field.Measure("lb/gal", "g/L");

    /// <summary>What is wrong with a strength; null when it can be believed.</summary>
    public static RateProblem? Doubt(string field, Quantity strength)
    {
        if (strength.Dimension == Dimension.Strength)
        {
            return strength.InBase > s_strongest.InBase
                ? new(
                    field,
                    $"{strength} is more than {s_strongest}, stronger than herbicides are sold; check the number and "
                        + $"its unit"
                )
                : null;
        }

        if (strength.Unit.Symbol != "%")
            return new(field, "write a strength in %, lb/gal or g/L");
        return strength.Value > 100
            ? new(field, $"{strength} cannot be; a product is at most 100 % active ingredient")
            : null;
    }

    /// <summary>What is wrong with a rate of product; null when it can be believed.</summary>
    public static RateProblem? DoubtRate(string field, Quantity rate)
    {
        Quantity most = rate.Dimension == Dimension.WeightPerArea ? s_mostWeight : s_mostVolume;
        return rate.Dimension == most.Dimension && rate.InBase > most.InBase
            ? new(field, $"{rate} is more than can be believed ({most} at most); check the number and its unit")
            : null;
    }

    /// <summary>What is wrong with the weight of a liquid beside its strength; null when all is well.</summary>
    public static RateProblem? DoubtDensity(string field, Quantity? density, Quantity strength) =>
        density switch
        {
            null => null,
            _ when strength.Dimension != Dimension.None => new(field, "only a strength in % needs it; leave it blank"),
            { } heavy when heavy.InBase > s_heaviest.InBase || heavy.InBase < s_lightest.InBase => new(
                field,
                $"{heavy} cannot be; liquids weigh {s_lightest} to {s_heaviest} (water 8.34 lb/gal)"
            ),
            _ => null,
        };

    /// <summary>The strength by volume of a liquid whose strength is given by weight.</summary>
    public static Quantity ByVolume(WorkingSheet sheet, Quantity strength, Quantity? density) =>
        density is { } heavy
            ? sheet.Line(
                "Active in the volume",
                $"{heavy} × {strength} ÷ 100 %",
                heavy * strength,
                IsUs(heavy) ? "lb/gal" : "g/L"
            )
            : strength;

    /// <summary>Whether a unit is one of the US system.</summary>
    public static bool IsUs(Quantity quantity) =>
        !quantity.Unit.Symbol.EndsWith("ha", StringComparison.Ordinal)
        && !quantity.Unit.Symbol.EndsWith("m2", StringComparison.Ordinal)
        && !quantity.Unit.Symbol.EndsWith('L');
}

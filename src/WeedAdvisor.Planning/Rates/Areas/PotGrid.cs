using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Areas;

/// <summary>
/// Round pots set out in rows. The surface of a pot is pi × (width ÷ 2)² (ucanr-area). The ground that belongs to one
/// pot is spacing² in square rows and spacing² × √3 ÷ 2 in staggered rows, where each pot stands in the gap of the row
/// before.
/// </summary>
internal static class PotGrid
{
    /// <summary>The ratio of a circle's way round to its width.</summary>
    public const decimal Pi = 3.1415926535897932384626433833m;

    private const decimal HalfRootOfThree = 0.8660254037844386467637231707m;

    /// <summary>How the rows stand.</summary>
    public static RateFieldKind.Choice Pattern() =>
        Field.Choice(("square", "square rows"), ("offset", "staggered rows, each pot in the gap of the row before"));

    /// <summary>The surface of one round pot, with its line.</summary>
    public static Quantity Surface(WorkingSheet sheet, string label, Quantity width, string unit)
    {
        Quantity side = sheet.Convert("Width", width, Side(unit));
        Quantity half = side / 2;
        return sheet.Line(label, $"3.14159 × {half} × {half}", half * half * Pi, unit);
    }

    /// <summary>The ground that belongs to one pot, with its line.</summary>
    public static Quantity Ground(WorkingSheet sheet, Quantity spacing, string pattern, string unit)
    {
        Quantity side = sheet.Convert("Spacing", spacing, Side(unit));
        return pattern == "square"
            ? sheet.Line("Ground for one pot", $"{side} × {side}", side * side, unit)
            : sheet.Line("Ground for one pot", $"{side} × {side} × 0.866025", side * side * HalfRootOfThree, unit);
    }

    /// <summary>A problem when pots of a width do not fit at a spacing; null when they do.</summary>
    public static RateProblem? TooWide(Quantity width, Quantity spacing) =>
        width.InBase > spacing.InBase
            ? new RateProblem(
                "spacing",
                $"{spacing} from middle to middle is less than a pot is wide ({width}); pots do not overlap"
            )
            : null;

    /// <summary>Areas are worked out in inches or centimetres, as the pots were measured.</summary>
    public static string UnitFor(Quantity length) => length.Unit.Symbol is "mm" or "cm" or "m" or "km" ? "cm2" : "in2";

    private static string Side(string unit) => unit[..^1];
}

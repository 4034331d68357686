using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Tanks;

/// <summary>Fields that the sums about tanks share, and the loads of an amount.</summary>
internal static class TankField
{
    /// <summary>Loads beyond which a sum is questioned.</summary>
    public const decimal MostLoads = 500;

    /// <summary>The size of a spray tank.</summary>
    public static RateFieldKind.Measure Tank() =>
        Field.Measure("gal", "L") with
        {
            Least = Quantity.Of(1, "L"),
            Most = Quantity.Of(10000, "L"),
        };

    /// <summary>Spray on an area: from a mist of 10 L/ha to a drench of 50 000 L/ha.</summary>
    public static RateFieldKind.Measure SprayVolume() =>
        Field.Measure("gal/acre", "gal/1000ft2", "L/ha") with
        {
            Least = Quantity.Of(10, "L/ha"),
            Most = Quantity.Of(50000, "L/ha"),
        };

    /// <summary>An amount split into full loads and a part load.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="amount">All of it.</param>
    /// <param name="size">One full load, measuring the same.</param>
    /// <returns>The number of full loads, and the part load in the unit of the size; zero when there is none.</returns>
    public static (decimal Full, Quantity Last) Split(WorkingSheet sheet, Quantity amount, Quantity size)
    {
        decimal loads = sheet.Line("Loads", $"{amount} ÷ {size}", amount.In(size.Unit) / size.Value);

        // Conversions leave a trace in the last digits; a whole number of loads must stay one.
        decimal full = Math.Floor(Math.Round(loads, 12));
        decimal rest = Math.Max(0, Math.Round(loads, 12) - full);
        return (
            full,
            sheet.Line(
                "Last load",
                $"{amount} - {Figures.Of(full, 6)} × {size}",
                size * (rest == 0 ? 0 : loads - full),
                size.Unit.Symbol
            )
        );
    }
}

namespace WeedAdvisor.Planning.Money;

/// <summary>
/// The share of what is broadcast over a bed that cannot land in a pot: the ground between round pots. A floor under
/// the losses that were measured (porter-parish-1993): leaves shed granules, and every swath overlaps its edge.
/// </summary>
public static class BroadcastLoss
{
    /// <summary>Pots in square rows: 1 - (pi/4)(d/s)², a share from 0 to 1.</summary>
    /// <param name="diameter">Width of a pot at the rim, more than 0, in the unit of the spacing.</param>
    /// <param name="spacing">From the middle of a pot to the middle of the next, at least the diameter.</param>
    /// <exception cref="ArgumentOutOfRangeException">Outside these ranges.</exception>
    public static double Square(double diameter, double spacing) => 1 - (Math.PI / 4 * Ratio(diameter, spacing));

    /// <summary>Pots in staggered rows: 1 - (pi/(2 sqrt 3))(d/s)², a share from 0 to 1.</summary>
    /// <inheritdoc cref="Square"/>
    public static double Staggered(double diameter, double spacing) =>
        1 - (Math.PI / (2 * Math.Sqrt(3)) * Ratio(diameter, spacing));

    private static double Ratio(double diameter, double spacing)
    {
        if (!(diameter > 0))
            throw new ArgumentOutOfRangeException(nameof(diameter), diameter, "more than 0");
        if (!(spacing >= diameter))
            throw new ArgumentOutOfRangeException(nameof(spacing), spacing, "pots do not overlap");
        return diameter / spacing * (diameter / spacing);
    }
}

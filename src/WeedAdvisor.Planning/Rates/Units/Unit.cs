namespace WeedAdvisor.Planning.Rates.Units;

/// <summary>
/// A unit: one of the <see cref="UnitTable"/>, or a quotient of two of them such as <c>lb/1000ft2</c>.
/// </summary>
/// <param name="Symbol">How it is written and typed.</param>
/// <param name="Dimension">What it measures.</param>
/// <param name="Factor">
/// How many base units (metre, kilogram, second, pot) it is. Exact for the units of the table; a quotient is exact to
/// the 28 digits of a decimal.
/// </param>
public sealed record Unit(string Symbol, Dimension Dimension, decimal Factor)
{
    /// <summary>The quotient of two units.</summary>
    /// <param name="above">The unit above the line.</param>
    /// <param name="count">How many of the unit below the line, such as 1000 in <c>lb/1000ft2</c>; at least 1.</param>
    /// <param name="below">The unit below the line.</param>
    public static Unit Per(Unit above, int count, Unit below)
    {
        ArgumentOutOfRangeException.ThrowIfLessThan(count, 1);
        string number = count == 1 ? "" : FormattableString.Invariant($"{count}");
        return new Unit(
            $"{above.Symbol}/{number}{below.Symbol}",
            above.Dimension / below.Dimension,
            above.Factor / (count * below.Factor)
        );
    }

    /// <summary>Its symbol.</summary>
    public override string ToString() => Symbol;
}

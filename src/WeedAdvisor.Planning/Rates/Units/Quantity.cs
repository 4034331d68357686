namespace WeedAdvisor.Planning.Rates.Units;

/// <summary>
/// A number with its unit. Arithmetic checks what is measured, so that a wrong factor cannot slip in: gallons divided
/// by acres are gallons an acre, and can be asked for in litres a hectare but never in pounds. Nothing is rounded here.
/// </summary>
/// <param name="Value">The number.</param>
/// <param name="Unit">Its unit.</param>
public readonly record struct Quantity(decimal Value, Unit Unit)
{
    /// <summary>What it measures.</summary>
    public Dimension Dimension => Unit.Dimension;

    /// <summary>The number in base units (metre, kilogram, second, pot).</summary>
    public decimal InBase => Value * Unit.Factor;

    /// <summary>A quantity in a unit of the <see cref="UnitTable"/>.</summary>
    /// <exception cref="ArgumentException">There is no such unit.</exception>
    public static Quantity Of(decimal value, string unit) => new(value, UnitTable.Of(unit));

    /// <summary>A plain number.</summary>
    public static Quantity Number(decimal value) => new(value, Plain(Dimension.None));

    /// <summary>The number that this is in another unit.</summary>
    /// <exception cref="ArgumentException">The unit measures something else.</exception>
    public decimal In(Unit unit) =>
        unit.Dimension == Dimension
            ? unit == Unit
                ? Value
                : InBase / unit.Factor
            : throw new ArgumentException($"{Unit} cannot be given in {unit}", nameof(unit));

    /// <summary>The number that this is in another unit of the table.</summary>
    /// <exception cref="ArgumentException">There is no such unit, or it measures something else.</exception>
    public decimal In(string unit) => In(UnitTable.Of(unit));

    /// <summary>The same in another unit.</summary>
    /// <exception cref="ArgumentException">The unit measures something else.</exception>
    public Quantity To(Unit unit) => new(In(unit), unit);

    /// <summary>The same in another unit of the table.</summary>
    /// <exception cref="ArgumentException">There is no such unit, or it measures something else.</exception>
    public Quantity To(string unit) => To(UnitTable.Of(unit));

    /// <summary>The product, in base units.</summary>
    public static Quantity operator *(Quantity left, Quantity right) =>
        new(left.InBase * right.InBase, Plain(left.Dimension * right.Dimension));

    /// <summary>The quotient, in base units.</summary>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static Quantity operator /(Quantity left, Quantity right) =>
        new(left.InBase / right.InBase, Plain(left.Dimension / right.Dimension));

    /// <summary>So many times a quantity, in its unit.</summary>
    public static Quantity operator *(Quantity left, decimal times) => left with { Value = left.Value * times };

    /// <summary>A part of a quantity, in its unit.</summary>
    /// <exception cref="DivideByZeroException">The divisor is zero.</exception>
    public static Quantity operator /(Quantity left, decimal parts) => left with { Value = left.Value / parts };

    /// <summary>The sum, in the unit of the first.</summary>
    /// <exception cref="ArgumentException">They measure different things.</exception>
    public static Quantity operator +(Quantity left, Quantity right) =>
        left with
        {
            Value = left.Value + right.In(left.Unit),
        };

    /// <summary>The difference, in the unit of the first.</summary>
    /// <exception cref="ArgumentException">They measure different things.</exception>
    public static Quantity operator -(Quantity left, Quantity right) =>
        left with
        {
            Value = left.Value - right.In(left.Unit),
        };

    /// <summary>The product, in base units.</summary>
    public static Quantity Multiply(Quantity left, Quantity right) => left * right;

    /// <summary>The quotient, in base units.</summary>
    public static Quantity Divide(Quantity left, Quantity right) => left / right;

    /// <summary>The sum, in the unit of the first.</summary>
    public static Quantity Add(Quantity left, Quantity right) => left + right;

    /// <summary>The difference, in the unit of the first.</summary>
    public static Quantity Subtract(Quantity left, Quantity right) => left - right;

    /// <summary>The number with its unit, to six significant figures.</summary>
    public override string ToString() => Figures.Of(this);

    private static Unit Plain(Dimension dimension) => new(PlainSymbol(dimension), dimension, 1);

    private static string PlainSymbol(Dimension dimension) =>
        dimension == Dimension.None
            ? ""
            : FormattableString.Invariant(
                $"m^{dimension.Length} kg^{dimension.Mass} s^{dimension.Time} pot^{dimension.Count}"
            );
}

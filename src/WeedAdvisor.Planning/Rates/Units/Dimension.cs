namespace WeedAdvisor.Planning.Rates.Units;

/// <summary>What a quantity measures, as powers of length, mass, time and count (of pots).</summary>
/// <param name="Length">Power of length: 1 for a length, 2 for an area, 3 for a volume.</param>
/// <param name="Mass">Power of mass.</param>
/// <param name="Time">Power of time.</param>
/// <param name="Count">Power of a count of pots.</param>
public readonly record struct Dimension(int Length, int Mass, int Time, int Count)
{
    /// <summary>A plain number or share.</summary>
    public static Dimension None => default;

    /// <summary>A length.</summary>
    public static Dimension Distance => new(1, 0, 0, 0);

    /// <summary>An area.</summary>
    public static Dimension Area => new(2, 0, 0, 0);

    /// <summary>A volume.</summary>
    public static Dimension Volume => new(3, 0, 0, 0);

    /// <summary>A weight.</summary>
    public static Dimension Weight => new(0, 1, 0, 0);

    /// <summary>A time.</summary>
    public static Dimension Duration => new(0, 0, 1, 0);

    /// <summary>A number of pots.</summary>
    public static Dimension Pots => new(0, 0, 0, 1);

    /// <summary>A speed.</summary>
    public static Dimension Speed => Distance / Duration;

    /// <summary>A flow: volume in a time.</summary>
    public static Dimension Flow => Volume / Duration;

    /// <summary>A pressure.</summary>
    public static Dimension Pressure => new(-1, 1, -2, 0);

    /// <summary>Weight on an area.</summary>
    public static Dimension WeightPerArea => Weight / Area;

    /// <summary>Volume on an area.</summary>
    public static Dimension VolumePerArea => Volume / Area;

    /// <summary>Weight in a volume.</summary>
    public static Dimension Strength => Weight / Volume;

    /// <summary>The dimension of a product.</summary>
    public static Dimension operator *(Dimension left, Dimension right) =>
        new(left.Length + right.Length, left.Mass + right.Mass, left.Time + right.Time, left.Count + right.Count);

    /// <summary>The dimension of a quotient.</summary>
    public static Dimension operator /(Dimension left, Dimension right) =>
        new(left.Length - right.Length, left.Mass - right.Mass, left.Time - right.Time, left.Count - right.Count);

    /// <summary>The dimension of a product.</summary>
    public static Dimension Multiply(Dimension left, Dimension right) => left * right;

    /// <summary>The dimension of a quotient.</summary>
    public static Dimension Divide(Dimension left, Dimension right) => left / right;
}

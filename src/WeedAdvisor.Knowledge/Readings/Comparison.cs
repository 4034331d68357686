namespace WeedAdvisor.Knowledge.Readings;

/// <summary>How two numbers are compared in a rule.</summary>
public enum Comparison
{
    /// <summary><c>less-than</c></summary>
    LessThan,

    /// <summary><c>at-most</c></summary>
    AtMost,

    /// <summary><c>at-least</c></summary>
    AtLeast,

    /// <summary><c>more-than</c></summary>
    MoreThan,
}

/// <summary>What each comparison means.</summary>
public static class Comparisons
{
    /// <summary>Whether <paramref name="value"/> stands in the relation to <paramref name="limit"/>.</summary>
    public static bool Holds(decimal value, Comparison comparison, decimal limit) =>
        comparison switch
        {
            Comparison.LessThan => value < limit,
            Comparison.AtMost => value <= limit,
            Comparison.AtLeast => value >= limit,
            Comparison.MoreThan => value > limit,
            _ => throw new ArgumentOutOfRangeException(nameof(comparison), comparison, "not a comparison"),
        };
}

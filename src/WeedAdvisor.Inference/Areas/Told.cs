namespace WeedAdvisor.Inference.Areas;

/// <summary>Where a value comes from.</summary>
public enum Origin
{
    /// <summary>It was set for this reckoning.</summary>
    Set,

    /// <summary>The visit answers it.</summary>
    Answer,

    /// <summary>The price list has it.</summary>
    PriceList,

    /// <summary>It is taken for usual; nobody said.</summary>
    Assumed,
}

/// <summary>A value with where it comes from.</summary>
/// <typeparam name="T">The value's type.</typeparam>
/// <param name="Value">The value.</param>
/// <param name="From">Where it comes from.</param>
public sealed record Told<T>(T Value, Origin From);

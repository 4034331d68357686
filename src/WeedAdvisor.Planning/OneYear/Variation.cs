using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// What is moved when the sums are tried out: factors on what holds for all ways, and where in its range each figure of
/// one action stands, 0 its low end, 0.5 its middle, 1 its high end.
/// </summary>
internal sealed record Variation
{
    /// <summary>Nothing is moved.</summary>
    public static Variation None { get; } = new();

    /// <summary>Cost of an hour; null for the case's.</summary>
    public decimal? WageUsd { get; init; }

    /// <summary>Seedlings that come up, as a factor.</summary>
    public double Pressure { get; init; } = 1;

    /// <summary>Time to pull a weed, as a factor.</summary>
    public double PullTime { get; init; } = 1;

    /// <summary>What a finished pot brings, as a factor.</summary>
    public decimal PotPrice { get; init; } = 1;

    /// <summary>Years that tools last; null for the price.</summary>
    public decimal? ToolLife { get; init; }

    /// <summary>The action that the places in the ranges hold for; all others stand in the middle.</summary>
    public string? Action { get; init; }

    /// <summary>Place of its effect in the published range.</summary>
    public decimal Effect { get; init; } = 0.5m;

    /// <summary>Place of its materials.</summary>
    public decimal Materials { get; init; } = 0.5m;

    /// <summary>Place of its labour.</summary>
    public decimal Labour { get; init; } = 0.5m;

    /// <summary>Place of its weeks of control.</summary>
    public decimal Residual { get; init; } = 0.5m;

    /// <summary>The value at a place in a range, for the action that is moved; else the middle.</summary>
    public decimal At(string action, Span range, Func<Variation, decimal> place) =>
        range.Low + ((range.High - range.Low) * (action == Action ? place(this) : 0.5m));
}

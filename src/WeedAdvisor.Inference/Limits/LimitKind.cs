namespace WeedAdvisor.Inference.Limits;

/// <summary>What a limit counts.</summary>
public enum LimitKind
{
    /// <summary>Uses in a year.</summary>
    Uses,

    /// <summary>Active ingredient in a year.</summary>
    Amount,

    /// <summary>Days between two uses.</summary>
    Interval,
}

namespace WeedAdvisor.Inference.Advice;

/// <summary>What no rule could judge.</summary>
public enum GapKind
{
    /// <summary>Two answers contradict each other; both count as not known.</summary>
    Contradiction,

    /// <summary>No clear action has a published effect on this weed.</summary>
    WeedWithoutAnswer,

    /// <summary>Nothing meets this weed for now: it is left.</summary>
    WeedLeft,

    /// <summary>No efficacy table rates this weed.</summary>
    WeedWithoutRating,

    /// <summary>No treatment at all is clear.</summary>
    NoTreatment,

    /// <summary>Nothing at all is clear.</summary>
    Nothing,
}

/// <summary>Something that no rule could judge.</summary>
/// <param name="Kind">What kind of gap.</param>
/// <param name="Subject">The weed's id, or null.</param>
/// <param name="Text">The gap in plain words.</param>
/// <param name="Held">The id of the action that would meet a weed that is left, and may not be done yet; or
/// null.</param>
public sealed record Gap(GapKind Kind, string? Subject, string Text, string? Held = null);

namespace WeedAdvisor.Planning.Rates.Forms;

/// <summary>One entry of a form.</summary>
/// <param name="Id">Its id, kebab-case, unique in the form; the option of the command line.</param>
/// <param name="Label">What to enter, a few words.</param>
/// <param name="Kind">What may be entered.</param>
/// <param name="Help">How to find it out, in one sentence.</param>
public sealed record RateField(string Id, string Label, RateFieldKind Kind, string Help)
{
    /// <summary>What is taken when nothing is entered, as it would be typed; null when there is none.</summary>
    public string? Default { get; init; }

    /// <summary>Whether the sum can be done without it.</summary>
    public bool IsOptional { get; init; }

    /// <summary>Whether it must be entered.</summary>
    public bool IsRequired => Default is null && !IsOptional;
}

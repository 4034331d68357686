using System.Collections.Immutable;

namespace WeedAdvisor.Inference.Identify;

/// <summary>Which weeds an unknown one may be.</summary>
public sealed record Identification
{
    /// <summary>What was seen.</summary>
    public required Sighting Sighting { get; init; }

    /// <summary>Every weed: highest score first, then most matches, then ordinal order of id.</summary>
    public required ImmutableArray<WeedFit> Fits { get; init; }

    /// <summary>The weeds with the highest score. Before anything is seen, all of them.</summary>
    public required ImmutableArray<WeedFit> Leaders { get; init; }

    /// <summary>
    /// The weeds that it is still between: the leaders, or, when one leads alone, it and those that nothing speaks
    /// against and that are one point behind, since one feature that their record leaves out is all that parts them.
    /// </summary>
    public required ImmutableArray<WeedFit> Candidates { get; init; }

    /// <summary>The feature to look at next; null when no other feature parts the candidates.</summary>
    public required NextFeature? Next { get; init; }

    /// <summary>What settles it between the leaders, then between them and others that they are taken for.</summary>
    public required ImmutableArray<WeedTell> Tells { get; init; }
}

/// <summary>A feature that parts the candidates.</summary>
/// <param name="Feature">Word of list <c>weed-feature</c>.</param>
/// <param name="With">Candidates whose record names it.</param>
/// <param name="Without">Candidates whose record does not.</param>
public sealed record NextFeature(string Feature, int With, int Without)
{
    /// <summary>
    /// Candidates that are left on average after the answer, when each is as likely as the others and shows what its
    /// record names: (with² + without²) / all.
    /// </summary>
    public double ExpectedLeft => ((With * With) + (Without * Without)) / (double)(With + Without);
}

/// <summary>What settles it between two weeds.</summary>
/// <param name="Weed">The one weed's id.</param>
/// <param name="Other">The other's.</param>
/// <param name="Text">What to look at.</param>
public sealed record WeedTell(string Weed, string Other, string Text);

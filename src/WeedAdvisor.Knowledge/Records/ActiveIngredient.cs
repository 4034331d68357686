using System.Collections.Immutable;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>
/// What is true of an active whatever the product: where it acts, and what it does to roots, to water and to the air.
/// Treatments name it and inherit; what is not said here each treatment has to say itself.
/// </summary>
public sealed record ActiveIngredient : Record
{
    /// <summary>ISO common name, by which rules, limits, visits and label books know it.</summary>
    public required string Name { get; init; }

    /// <summary>Other common names under which it stands on bags and in older tables; no brand.</summary>
    public ImmutableArray<string> AlsoCalled { get; init; } = [];

    /// <summary>HRAC/WSSA code, such as <c>14</c>; null for what the scheme does not classify.</summary>
    public string? Group { get; init; }

    /// <summary>The letter that older HRAC lists gave it; null where there was none.</summary>
    public string? Was { get; init; }

    /// <summary>The number that older WSSA lists gave it, where it was another one; else null.</summary>
    public string? WasNumber { get; init; }

    /// <summary>Word of list <c>site-of-action</c>; null where none is known.</summary>
    public string? SiteOfAction { get; init; }

    /// <summary>Word of list <c>volatility</c>; null when each treatment has to say it.</summary>
    public string? Volatile { get; init; }

    /// <summary>Whether it stops root growth; null when each treatment has to say it.</summary>
    public bool? RootInhibitor { get; init; }

    /// <summary>Whether it endangers water life; null when each treatment has to say it.</summary>
    public bool? WaterHazard { get; init; }

    /// <summary>How fast it was seen to go at some temperatures; nothing where nobody measured it.</summary>
    public ImmutableArray<HalfLife> HalfLives { get; init; } = [];

    /// <summary>The day its values were last checked against the sources; null when they never were.</summary>
    public DateOnly? Checked { get; init; }

    /// <summary>The active as a treatment holds it.</summary>
    /// <param name="percent">Its share of a premix, percent by weight; null when not given or when it is alone.</param>
    public Active In(decimal? percent) => new(Name, Group, SiteOfAction, Was, percent) { WasNumber = WasNumber };
}

/// <summary>How long half of an active lasted at a temperature.</summary>
/// <param name="AtC">The temperature, degrees Celsius.</param>
/// <param name="Days">Days until half was gone.</param>
/// <param name="Sources">Keys of the sources.</param>
public sealed record HalfLife(decimal AtC, Span Days, ImmutableArray<string> Sources);

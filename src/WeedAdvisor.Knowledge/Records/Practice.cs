using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>A non-chemical action.</summary>
public sealed record Practice : CatalogueAction
{
    private const string AnyTime = "any-time";

    /// <summary>Word of list <c>practice-kind</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>
    /// Words of list <c>practice-tag</c>: what rules need to know of it beyond its kind, so that they need not name it.
    /// </summary>
    public WordSet Tags { get; init; } = WordSet.Empty;

    /// <summary>What it is called within a sentence, such as <c>the hulls</c>; null where its name does.</summary>
    public string? Brief { get; init; }

    /// <summary>Word of list <c>works-on</c>.</summary>
    public required string WorksOn { get; init; }

    /// <summary>When it can be done at all, whatever presses: word of list <c>possible</c>.</summary>
    public string Possible { get; init; } = AnyTime;

    /// <summary>Word of list <c>one-of</c>; null when no other does its job.</summary>
    public string? OneOf { get; init; }

    /// <summary>What to do on the grounds where it differs from <see cref="CatalogueAction.What"/>.</summary>
    public ImmutableArray<WhatOnGround> Wordings { get; init; } = [];

    /// <summary>What it costs on the grounds where it differs from <see cref="CatalogueAction.Cost"/>.</summary>
    public ImmutableArray<CostOnGround> CostOnGrounds { get; init; } = [];

    /// <summary>Whether it may be done under an enclosed cover.</summary>
    public required bool EnclosedOk { get; init; }

    /// <summary>Whether it sends anybody into the area; where the record does not say, it does.</summary>
    public EntryNeed Entry { get; init; }

    /// <summary>Published effects; empty when there is no figure.</summary>
    public ImmutableArray<PublishedEffect> Effects { get; init; } = [];

    /// <summary>Where it does not work.</summary>
    public ImmutableArray<string> NotWhere { get; init; } = [];

    /// <inheritdoc/>
    public override string WhatOn(string? ground) =>
        Wordings.FirstOrDefault(wording => wording.Ground == ground)?.What ?? What;

    /// <inheritdoc/>
    public override CostDrivers? CostOn(string? ground) =>
        CostOnGrounds.FirstOrDefault(cost => cost.Ground == ground)?.Cost ?? Cost;
}

/// <summary>What to do on one ground.</summary>
/// <param name="Ground">Word of list <c>ground</c>.</param>
/// <param name="What">What to do there.</param>
public sealed record WhatOnGround(string Ground, string What);

/// <summary>What it costs on one ground.</summary>
/// <param name="Ground">Word of list <c>ground</c>.</param>
/// <param name="Cost">What it costs there, for 100 m², or for 1000 pots where it holds pots.</param>
public sealed record CostOnGround(string Ground, CostDrivers Cost);

/// <summary>A published reduction of a weed by a practice.</summary>
/// <param name="On">A weed's id, a word of list <c>weed-kind</c>, or <c>all</c>.</param>
/// <param name="ReductionPercent">Reduction against doing nothing, percent, 0 to 100.</param>
/// <param name="Sources">Keys of the sources.</param>
/// <param name="Note">Under which conditions, or null.</param>
public sealed record PublishedEffect(string On, Span ReductionPercent, ImmutableArray<string> Sources, string? Note);

/// <summary>Whether a practice sends anybody into the area.</summary>
public enum EntryNeed
{
    /// <summary>Somebody goes in and works there.</summary>
    Worker = 0,

    /// <summary>It is done elsewhere: at the gate, in the store, at the desk.</summary>
    Elsewhere,

    /// <summary>
    /// A step of an application itself that its own handlers do, equipped as the label says: brushing off, watering in,
    /// airing, washing off.
    /// </summary>
    Handlers,
}

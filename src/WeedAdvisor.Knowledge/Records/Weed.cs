using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>
/// A weed of nurseries and greenhouses, or a broad kind under which one is told that nobody has named. Of a broad kind
/// little is known: what its record does not say is empty.
/// </summary>
public sealed record Weed : Record
{
    /// <summary>Common name.</summary>
    public required string Name { get; init; }

    /// <summary>Other common names.</summary>
    public ImmutableArray<string> AlsoCalled { get; init; } = [];

    /// <summary>Whether it stands for a weed that nobody has named: only its broad kind is known.</summary>
    public bool IsUnnamed { get; init; }

    /// <summary>Of a broad kind, how all of it live, words of <see cref="WaysOfLife"/>; empty when they
    /// differ. <see cref="WaysOfLife.Of"/> says it of every weed.</summary>
    public WordSet LivesBy { get; init; } = WordSet.Empty;

    /// <summary>Scientific name; empty of a broad kind.</summary>
    public required string Scientific { get; init; }

    /// <summary>Word of list <c>weed-kind</c>.</summary>
    public required string Kind { get; init; }

    /// <summary>Word of list <c>life-cycle</c>; empty of a broad kind.</summary>
    public required string LifeCycle { get; init; }

    /// <summary>Months (1 = January) in which it comes up in numbers, by emergence zone.</summary>
    public required ImmutableSortedDictionary<string, ImmutableArray<int>> Emergence { get; init; }

    /// <summary>Temperature below which it does not germinate, degrees Celsius; null when not known.</summary>
    public Span? BaseTemperatureC { get; init; }

    /// <summary>What the first hard frosts do to its green part.</summary>
    public FrostFate Frost { get; init; }

    /// <summary>
    /// Daily mean below which a plant that is up does not grow, degrees Celsius; null when not known.
    /// </summary>
    public decimal? GrowthFloorC { get; init; }

    /// <summary>
    /// Weeks from emergence to the first ripe seed (or new propagule): shortest and typical; null when not known.
    /// </summary>
    public Span? WeeksToFirstSeed { get; init; }

    /// <summary>Seeds (or propagules) of one plant; null when not known.</summary>
    public Span? SeedsPerPlant { get; init; }

    /// <summary>Years that seed stays alive; null when not known.</summary>
    public Span? SeedLifeYears { get; init; }

    /// <summary>Words of list <c>spread</c>.</summary>
    public required WordSet SpreadsBy { get; init; }

    /// <summary>How far it spreads by itself, metres; null when carried or not known.</summary>
    public decimal? SpreadDistanceM { get; init; }

    /// <summary>Words of list <c>favour</c>: what it thrives on.</summary>
    public required WordSet FavouredBy { get; init; }

    /// <summary>Answers of question <c>place</c>: where it sits in a nursery.</summary>
    public required WordSet Places { get; init; }

    /// <summary>Emergence zones in which it is among the weeds of nearly every nursery.</summary>
    public WordSet CommonestIn { get; init; } = WordSet.Empty;

    /// <summary>Emergence zones in which it is common in nurseries.</summary>
    public WordSet CommonIn { get; init; } = WordSet.Empty;

    /// <summary><c>yes</c>, <c>partly</c> or <c>no</c>: whether its seed needs light; empty of a broad kind.</summary>
    public required string NeedsLight { get; init; }

    /// <summary>Whether it comes back from tubers, rhizomes, creeping roots or a taproot.</summary>
    public required bool Underground { get; init; }

    /// <summary>Ids under which efficacy tables rate it, best match first.</summary>
    public ImmutableArray<string> RatedAs { get; init; } = [];

    /// <summary>Words of list <c>weed-feature</c> that hold for it.</summary>
    public WordSet Features { get; init; } = WordSet.Empty;

    /// <summary>Weeds it is taken for, and what settles it.</summary>
    public ImmutableArray<LookAlike> LookAlikes { get; init; } = [];

    /// <summary>How to know it.</summary>
    public required string Identify { get; init; }

    /// <summary>What all this means for control.</summary>
    public ImmutableArray<string> Control { get; init; } = [];
}

/// <summary>A weed that another is taken for.</summary>
/// <param name="Weed">The other weed's id.</param>
/// <param name="Tell">What settles which of the two it is.</param>
public sealed record LookAlike(string Weed, string Tell);

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>One consultation: a date and what was seen in one or more areas.</summary>
/// <param name="Id">The visit's id.</param>
/// <param name="Title">A title; null when not given.</param>
/// <param name="Date">The day of the visit.</param>
/// <param name="Nursery">Whose nursery; null when not given.</param>
/// <param name="Areas">The areas, in the order of the file; ids are unique.</param>
public sealed record Visit(string Id, string? Title, DateOnly Date, string? Nursery, ImmutableArray<VisitArea> Areas)
{
    /// <summary>
    /// Answers that stand once, at the head of the file, for every area that has none of its own. They are already
    /// among the answers of those areas: whoever reads an area needs nothing else.
    /// </summary>
    public ImmutableSortedDictionary<string, Answer> Head { get; init; } = VisitArea.NoAnswers;

    /// <summary>The units in which its quantities are printed; null when it does not say.</summary>
    public UnitsWanted? Units { get; init; }

    /// <summary>
    /// Areas of the visit that are not asked about; what was put on there may close the house all the same.
    /// </summary>
    public ImmutableArray<VisitArea> Elsewhere { get; init; } = [];
}

/// <summary>One place in one production system, with what is known of it.</summary>
/// <param name="Id">The area's id, unique in the visit.</param>
/// <param name="Name">Its name.</param>
/// <param name="Answers">Answers by question id. A question that is missing, or <see cref="Answer.NotKnown"/>, is not
/// known.</param>
/// <param name="Weeds">The weeds seen: empty when none was seen, null when not known.</param>
/// <param name="Past">Earlier applications: empty when there were none, null when not known.</param>
public sealed record VisitArea(
    string Id,
    string Name,
    ImmutableSortedDictionary<string, Answer> Answers,
    ImmutableArray<WeedSeen>? Weeds,
    ImmutableArray<PastApplication>? Past
)
{
    /// <summary>No answers at all.</summary>
    public static ImmutableSortedDictionary<string, Answer> NoAnswers { get; } =
        ImmutableSortedDictionary.Create<string, Answer>(StringComparer.Ordinal);

    /// <summary>An area of which nothing is known yet.</summary>
    public static VisitArea Blank(string id, string name) => new(id, name, NoAnswers, null, null);
}

/// <summary>An answer to a question. A closed family: the nested types are all there are.</summary>
public abstract record Answer
{
    private Answer() { }

    /// <summary>The grower said that they do not know.</summary>
    public sealed record NotKnown : Answer;

    /// <summary>One or several words; an empty set says that there is none.</summary>
    /// <param name="Value">The words.</param>
    public sealed record Words(WordSet Value) : Answer;

    /// <summary>A number, in the question's unit.</summary>
    /// <param name="Value">The number.</param>
    public sealed record Number(decimal Value) : Answer;

    /// <summary>A date.</summary>
    /// <param name="Value">The date.</param>
    public sealed record Date(DateOnly Value) : Answer;
}

/// <summary>A weed seen in an area.</summary>
/// <param name="Weed">The weed's id.</param>
/// <param name="Stage">Word of list <c>stage</c>; null when not known.</param>
/// <param name="CoverPercent">How much of the surface it covers, 0 to 100 percent; of the pots that have it, where
/// their share is told. Null when not known.</param>
public sealed record WeedSeen(string Weed, string? Stage, decimal? CoverPercent)
{
    /// <summary>The stage of a weed that is not up, but to come.</summary>
    public const string ToCome = "expected";

    /// <summary>It stands in the pots.</summary>
    public const string InPots = "pots";

    /// <summary>It stands in the ground, gravel or fabric below and beside the pots.</summary>
    public const string InGround = "ground";

    /// <summary>Where it may stand.</summary>
    public const string Places = $"words:{InPots}|{InGround}";

    /// <summary>The share of pots or trays that have it, 0 to 100 percent; null when it was not told apart.</summary>
    public decimal? PotsPercent { get; init; }

    /// <summary>
    /// Whether it stands in the pots, or in the ground, gravel or fabric below and beside them:
    /// <see cref="InPots"/> or <see cref="InGround"/>; null when it was not told.
    /// </summary>
    public string? Stands { get; init; }

    /// <summary>
    /// How much of the surface of the whole area it covers, 0 to 100 percent: one pot in five full is a fifth; null
    /// when not known.
    /// </summary>
    public decimal? CoverOfAreaPercent => CoverPercent * (PotsPercent ?? 100) / 100;

    /// <summary>Whether it stands there; null when its stage was not noted.</summary>
    public bool? IsUp => Stage is null ? null : Stage != ToCome;

    /// <summary>Whether it flowers or bears seed, cups or spores already.</summary>
    public bool IsAboutToSeed => Stage is "flowering" or "seeding";
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>What an attribute can hold.</summary>
public enum AttributeShape
{
    /// <summary>One word.</summary>
    Word,

    /// <summary>A set of words.</summary>
    WordSet,

    /// <summary>A number.</summary>
    Number,

    /// <summary>The word <c>true</c> or <c>false</c>.</summary>
    Flag,
}

/// <summary>An attribute that a pattern can test.</summary>
/// <param name="Name">Its name in a rule.</param>
/// <param name="Shape">What it holds.</param>
/// <param name="Words">
/// Where its words come from: <c>list:ID</c> a list of vocabulary; <c>answers:ID</c> the answers of a question;
/// <c>weeds</c>, <c>crops</c>, <c>practices</c>, <c>treatments</c> the ids of a catalogue; <c>actives</c>,
/// <c>groups</c>, <c>rated</c> what the treatment records name; <c>words:A|B</c> just these; null for numbers and
/// flags.
/// </param>
public sealed record AttributeDefinition(string Name, AttributeShape Shape, string? Words = null);

/// <summary>
/// The attributes of every kind of fact but <see cref="FactKind.Site"/>, whose attributes are the questions (and what
/// is derived from them, <see cref="DerivedSite"/>). Readers check rules against this list; facts are built from it.
/// </summary>
public static class AttributeSchema
{
    /// <summary>
    /// Attributes of the site that no question asks for but that follow from the answers and the date.
    /// </summary>
    public static ImmutableArray<AttributeDefinition> DerivedSite { get; } =
    [
        new("season", AttributeShape.Word, Climate.Seasons),
        new("mean-c", AttributeShape.Number),
        new("warming", AttributeShape.Flag),
        new("days-since-potting", AttributeShape.Number),
        new("days-to-covering", AttributeShape.Number),
        new("days-to-next", AttributeShape.Number),
        new("enclosed", AttributeShape.Word, "words:yes|no"),
        new("untold-use", AttributeShape.Flag),
        new("country", AttributeShape.Word, Region.Countries),
        new("months-of", AttributeShape.Word, "list:emergence-zone"),
        new("weeds-seen", AttributeShape.Number),
        new("total-cover-percent", AttributeShape.Number),
    ];

    /// <summary>Attributes of a weed seen.</summary>
    public static ImmutableArray<AttributeDefinition> Weed { get; } =
    [
        new("id", AttributeShape.Word, "weeds"),
        new("kind", AttributeShape.Word, "list:weed-kind"),
        new("life-cycle", AttributeShape.Word, "list:life-cycle"),
        new("stage", AttributeShape.Word, "list:stage"),
        new("cover-percent", AttributeShape.Number),
        new("pots-percent", AttributeShape.Number),
        new("stands", AttributeShape.Word, WeedSeen.Places),
        new("up", AttributeShape.Flag),
        new("emerging-now", AttributeShape.Flag),
        new("spreads-by", AttributeShape.WordSet, "list:spread"),
        new("favoured-by", AttributeShape.WordSet, "list:favour"),
        new("underground", AttributeShape.Flag),
        new("lives-by", AttributeShape.WordSet, WaysOfLife.Notation),
        new("unnamed", AttributeShape.Flag),
        new("needs-light", AttributeShape.Word, "words:yes|partly|no"),
        new("weeks-to-first-seed", AttributeShape.Number),
        new("rated-as", AttributeShape.WordSet, "rated"),
        new("places", AttributeShape.WordSet, "answers:place"),
    ];

    /// <summary>Attributes of a crop.</summary>
    public static ImmutableArray<AttributeDefinition> Crop { get; } =
    [
        new("id", AttributeShape.Word, "crops"),
        new("is-a", AttributeShape.WordSet, "crops"),
        new("traits", AttributeShape.WordSet, "list:crop-trait"),
    ];

    /// <summary>Attributes that practices and treatments share.</summary>
    public static ImmutableArray<AttributeDefinition> Action { get; } =
    [
        new("id", AttributeShape.Word, "actions"),
        new("is", AttributeShape.Word, "words:practice|treatment"),
        new("when", AttributeShape.Word, "list:when"),
        new("places", AttributeShape.WordSet, "answers:place"),
        new("stock-stages", AttributeShape.WordSet, "answers:stock"),
        new("needs-equipment", AttributeShape.WordSet, "answers:equipment"),
        new("enters", AttributeShape.Flag),
    ];

    /// <summary>Attributes of a practice.</summary>
    public static ImmutableArray<AttributeDefinition> Practice { get; } =
    [
        .. Action,
        new("kind", AttributeShape.Word, "list:practice-kind"),
        new("tags", AttributeShape.WordSet, "list:practice-tag"),
        new("works-on", AttributeShape.Word, "list:works-on"),
        new("enclosed-ok", AttributeShape.Flag),
    ];

    /// <summary>Attributes of a treatment: what its record says, and what tables rate of it.</summary>
    public static ImmutableArray<AttributeDefinition> Treatment { get; } =
    [
        .. Action,
        .. TreatmentTestables.All.Select(attribute => attribute.Definition),
        new("controls-well", AttributeShape.WordSet, "weeds"),
        new("controls-partly", AttributeShape.WordSet, "weeds"),
        new("misses", AttributeShape.WordSet, "weeds"),
        new("unrated", AttributeShape.WordSet, "weeds"),
    ];

    /// <summary>Attributes of an earlier application.</summary>
    public static ImmutableArray<AttributeDefinition> Past { get; } =
    [
        new("treatment", AttributeShape.Word, "treatments"),
        new("groups", AttributeShape.WordSet, "groups"),
        new("actives", AttributeShape.WordSet, "actives"),
        new("withdrawn-in", AttributeShape.WordSet, Records.Region.Countries),
        new("days-ago", AttributeShape.Number),
        new("latest", AttributeShape.Flag),
        new("result", AttributeShape.Word, PastWords.Results),
        new("escaped", AttributeShape.WordSet, "weeds"),
        new("control-days-left", AttributeShape.Number),
        new("uses-of-its-site", AttributeShape.Number),
        new("above-published-rate", AttributeShape.Flag),
        new("drifted", AttributeShape.Flag),
        new("method", AttributeShape.Word, PastWords.Methods),
        new("part-only", AttributeShape.Flag),
        new("watered-in", AttributeShape.Flag),
        new("came-through", AttributeShape.Word, PastWords.Amounts),
        new("seasons-running", AttributeShape.Number),
    ];

    /// <summary>Attributes of an application whose entry interval runs or may run.</summary>
    public static ImmutableArray<AttributeDefinition> Closure { get; } =
    [
        new("runs", AttributeShape.Flag),
        new("hours-left", AttributeShape.Number),
        new("where", AttributeShape.Word, "words:here|same-roof"),
        new("airing-counts", AttributeShape.Flag),
    ];

    /// <summary>Attributes of a limit that keeps treatments out.</summary>
    public static ImmutableArray<AttributeDefinition> Limit { get; } =
    [
        new("holds", AttributeShape.Flag),
        new("treatments", AttributeShape.WordSet, "treatments"),
        new("active", AttributeShape.Word, "actives"),
        new("kind", AttributeShape.Word, "words:uses|amount|interval"),
        new("days-left", AttributeShape.Number),
    ];

    /// <summary>Attributes of a weed that came through a site of action although it is rated good on it.</summary>
    public static ImmutableArray<AttributeDefinition> Escape { get; } =
    [
        new("weed", AttributeShape.Word, "weeds"),
        new("site", AttributeShape.Word, "groups"),
        new("times", AttributeShape.Number),
        new("failed-sites", AttributeShape.WordSet, "groups"),
        new("on-record", AttributeShape.Flag),
    ];

    /// <summary>The attributes of a kind of fact; for <see cref="FactKind.Site"/> only the derived ones.</summary>
    public static ImmutableArray<AttributeDefinition> Of(FactKind kind) =>
        kind switch
        {
            FactKind.Site => DerivedSite,
            FactKind.Weed => Weed,
            FactKind.Crop => Crop,
            FactKind.Practice => Practice,
            FactKind.Treatment => Treatment,
            FactKind.Action => Action,
            FactKind.Past => Past,
            FactKind.Closure => Closure,
            FactKind.Limit => Limit,
            FactKind.Escape => Escape,
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "not a kind of fact"),
        };
}

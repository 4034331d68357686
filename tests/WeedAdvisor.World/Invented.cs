using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.World;

/// <summary>
/// Records with nothing but a name and what must be there, to be changed with <c>with</c>. Invented: true of no weed,
/// crop or chemical.
/// </summary>
public static class Invented
{
    private static readonly Place s_where = Place.Whole("invented");
    private static readonly ImmutableArray<string> s_source = ["invented"];

    /// <summary>A knowledge base with nothing in it but what is taken for usual.</summary>
    public static KnowledgeBase Knowledge { get; } =
        new()
        {
            Usual = UsualValues.Of(),
            Stamp = new KnowledgeStamp("0.0.0", new string('0', 64)),
            Vocabulary = ImmutableSortedDictionary<string, WordList>.Empty,
            Questions = [],
            Weeds = ById<Weed>(),
            Crops = ById<Crop>(),
            Practices = ById<Practice>(),
            Treatments = ById<Treatment>(),
            Regions = ById<Region>(),
            Findings = ById<FindingText>(),
            Scale = ById<ScaleStep>(),
            Prices = ById<Price>(),
            Sources = ImmutableSortedDictionary<string, Source>.Empty,
            Judgements = [],
            WorkedVisits = [],
        };

    /// <summary>Records as the knowledge holds them.</summary>
    public static ImmutableSortedDictionary<string, T> ById<T>(params T[] records)
        where T : Record =>
        records.ToImmutableSortedDictionary(record => record.Id, record => record, StringComparer.Ordinal);

    /// <summary>A question that is answered by one word.</summary>
    public static Question Question(string id, int order = 0) =>
        new()
        {
            Id = id,
            Order = order,
            Group = "g",
            Ask = $"{id}?",
            Why = "w",
            Kind = QuestionKind.OneOf,
            Sources = s_source,
            Where = s_where,
        };

    /// <summary>An annual broadleaf weed that grows nowhere yet.</summary>
    public static Weed Weed(string id) =>
        new()
        {
            Id = id,
            Name = id,
            Scientific = id,
            Kind = "broadleaf",
            LifeCycle = "annual",
            Emergence = ImmutableSortedDictionary<string, ImmutableArray<int>>.Empty,
            SpreadsBy = WordSet.Empty,
            FavouredBy = WordSet.Empty,
            Places = WordSet.Empty,
            NeedsLight = "yes",
            Underground = false,
            Identify = id,
            Sources = s_source,
            Where = s_where,
        };

    /// <summary>A crop, and what it is a kind of.</summary>
    public static Crop Crop(string id, params string[] parents) =>
        new()
        {
            Id = id,
            Name = id,
            Parents = WordSet.Of(parents),
            IsA = WordSet.Of([id, .. parents]),
            Traits = WordSet.Empty,
            Sources = s_source,
            Where = s_where,
        };

    /// <summary>A way of weeding by hand, on standing weeds, under a roof too.</summary>
    public static Practice Practice(string id) =>
        new()
        {
            Id = id,
            Name = id,
            What = id,
            When = "now",
            Places = WordSet.Empty,
            StockStages = WordSet.Empty,
            NeedsEquipment = WordSet.Empty,
            Kind = "weeding",
            WorksOn = "standing-weeds",
            EnclosedOk = true,
            Sources = s_source,
            Where = s_where,
        };

    /// <summary>A preemergence granule of one active that touches the crop and is for the open sky.</summary>
    public static Treatment Treatment(string id, string active, string group) =>
        new()
        {
            Id = id,
            Name = id,
            What = id,
            When = "season",
            Places = WordSet.Empty,
            StockStages = WordSet.Empty,
            NeedsEquipment = WordSet.Empty,
            Actives = [new Active(active, group, null, null)],
            Formulation = "GR",
            Role = "preemergence",
            ActsOn = WordSet.Of("germinating"),
            Applied = WordSet.Of("granule-over-top"),
            ReachesCrop = true,
            AllowedUnder = WordSet.Of("open-sky"),
            EnclosedUse = "never",
            CropsTolerant = WordSet.Empty,
            CropsHurt = WordSet.Empty,
            EdibleOk = false,
            OrganicOk = false,
            Volatile = "low",
            RootInhibitor = false,
            WaterHazard = true,
            DriftHazard = false,
            RestrictedUse = false,
            Status = "current",
            Checked = new DateOnly(2026, 1, 1),
            Sources = s_source,
            Where = s_where,
        };
}

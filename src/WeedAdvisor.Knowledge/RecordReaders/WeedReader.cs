using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads weeds.</summary>
internal static class WeedReader
{
    /// <summary>A weed, or a broad kind for weeds that nobody has named.</summary>
    public static Weed Read(MappingReader map) => map.OptionalFlag("unnamed") ? Unnamed(map) : Named(map);

    private static Weed Unnamed(MappingReader map) =>
        new()
        {
            Id = map.Id(),
            IsUnnamed = true,
            Name = map.Text("name"),
            AlsoCalled = map.Texts("also-called"),
            Scientific = "",
            Kind = map.Word("kind", "list:weed-kind"),
            LivesBy = map.OptionalWordSet("lives-by", WaysOfLife.Notation),
            LifeCycle = "",
            Emergence = ImmutableSortedDictionary<string, ImmutableArray<int>>.Empty,
            SpreadsBy = WordSet.Empty,
            FavouredBy = WordSet.Empty,
            Places = WordSet.Empty,
            NeedsLight = "",
            Underground = false,
            Identify = map.Text("identify"),
            Control = map.Texts("control"),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.Weed),
        };

    private static Weed Named(MappingReader map) =>
        new()
        {
            Id = map.Id(),
            Name = map.Text("name"),
            AlsoCalled = map.Texts("also-called"),
            Scientific = map.Text("scientific"),
            Kind = map.Word("kind", "list:weed-kind"),
            LifeCycle = map.Word("life-cycle", "list:life-cycle"),
            Emergence = Emergence(map),
            BaseTemperatureC = map.OptionalRange("base-temperature-c", -20, 40),
            Frost = FrostWords.Of(map.OptionalWord("frost", FrostWords.Notation)),
            GrowthFloorC = map.OptionalNumber("growth-floor-c", -20, 40),
            WeeksToFirstSeed = map.OptionalRange("weeks-to-first-seed", 0, 520),
            SeedsPerPlant = map.OptionalRange("seeds-per-plant", 0, 10_000_000_000),
            SeedLifeYears = map.OptionalRange("seed-life-years", 0, 1000),
            SpreadsBy = map.WordSet("spreads-by", "list:spread"),
            SpreadDistanceM = map.OptionalNumber("spread-distance-m", 0, 1_000_000),
            FavouredBy = map.WordSet("favoured-by", "list:favour"),
            Places = map.WordSet("places", "answers:place"),
            CommonestIn = map.OptionalWordSet("commonest-in", "list:emergence-zone"),
            CommonIn = map.OptionalWordSet("common-in", "list:emergence-zone"),
            NeedsLight = map.Word("needs-light", "words:yes|partly|no"),
            Underground = map.Flag("underground"),
            RatedAs = RatedAs(map),
            Features = map.OptionalWordSet("features", "list:weed-feature"),
            LookAlikes = map.Each("look-alikes", "a look-alike", LookAlike),
            Identify = map.Text("identify"),
            Control = map.Texts("control"),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.Weed),
        };

    private static ImmutableSortedDictionary<string, ImmutableArray<int>> Emergence(MappingReader map)
    {
        var months = ImmutableSortedDictionary.CreateBuilder<string, ImmutableArray<int>>(StringComparer.Ordinal);
        if (
            map.Required("emergence") is not { } node
            || MappingReader.Of(node, map.Context, "months by emergence zone") is not { Node: MappingNode zones } reader
        )
            return months.ToImmutable();
        foreach (Entry zone in zones.Entries)
        {
            map.Context.CheckWord(zone.Key, zone.Key.Text, map.Context.Lexicon.Of("list:emergence-zone"));
            months[zone.Key.Text] = reader.Months(zone.Key.Text);
        }

        return months.ToImmutable();
    }

    private static ImmutableArray<string> RatedAs(MappingReader map) =>
        map.Words("rated-as", notation: null, isRequired: true);

    private static LookAlike LookAlike(MappingReader map)
    {
        var lookAlike = new LookAlike(map.Word("weed", "weeds"), map.Text("tell"));
        map.Finish();
        return lookAlike;
    }
}

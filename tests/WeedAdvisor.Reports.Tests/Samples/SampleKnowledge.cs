using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Samples;

/// <summary>A small knowledge made by hand, so that reports are tested without rules, files or an engine.</summary>
internal static class SampleKnowledge
{
    private static readonly Place s_here = new("sample.yaml", 1, 1);

    public static KnowledgeBase Small { get; } =
        Invented.Knowledge with
        {
            Stamp = new KnowledgeStamp("1.2.3", "0123456789abcdef0123456789abcdef"),
            Vocabulary = Sorted<WordList>(
                (list => list.Id),
                new("stage", [new("mature", "mature, not yet seeding"), new("seedling", "seedling")]),
                new("status", [new("current", "in use")])
            ),
            Questions =
            [
                Question(0, "cover", "What is over the plants?"),
                Question(1, "crops", "Which crops stand here?"),
                Question(2, "heated", "Is the house heated?"),
                Question(3, "covering-date", "When does film go on?") with
                {
                    Kind = QuestionKind.Date,
                    Choices = [],
                },
            ],
            Weeds = Sorted(
                weed => weed.Id,
                Weed("liverwort", "Liverwort"),
                Weed("bittercress", "Bittercress") with
                {
                    Kind = "broadleaf",
                }
            ),
            Practices = Sorted(
                practice => practice.Id,
                Practice("pull-by-hand", "Pull the weeds by hand", "now", "weeding"),
                Practice("let-surface-dry", "Let the surface dry between waterings", "standing", "watering"),
                Practice("mulch-pots", "Mulch the pots", "season", "covering")
            ),
            Treatments = Sorted(
                treatment => treatment.Id,
                [Wash, .. Enumerable.Range(1, 19).Select(n => Treatment($"granule-{n:00}", $"Granule number {n:00}"))]
            ),
            Prices = Sorted(
                price => price.Id,
                new Price
                {
                    Id = "labour-rate",
                    Name = "Labour",
                    Value = 18,
                    Unit = "usd-per-hour",
                    Sources = ["invented"],
                    Where = s_here,
                }
            ),
            Regions = Sorted(
                region => region.Id,
                new Region
                {
                    Id = "mild-coast",
                    Name = "Mild coast",
                    Country = "us",
                    EmergenceZone = "pacific-northwest",
                    MeanTemperatureC = [4m, 5m, 7.5m, 10m, 13m, 16m, 19m, 19m, 16m, 12m, 7m, 4m],
                    LastFrost = "04-10",
                    FirstFrost = "10-30",
                    Sources = ["invented"],
                    Where = s_here,
                }
            ),
            Findings = Sorted(
                finding => finding.Id,
                new FindingText
                {
                    Id = "surface-stays-wet",
                    Text = "The surface stays wet.",
                    Sources = ["book-one"],
                    Where = s_here,
                }
            ),
            Sources = Sorted<Source>(
                source => source.Key,
                new(
                    "book-one",
                    "A. Author",
                    "A book about weeds",
                    "2001",
                    "A press",
                    "https://example.org/book-one",
                    null
                ),
                new("paper-two", null, "A paper about liverwort", "2010", null, null, "one trial, one summer")
            ),
            Judgements =
            [
                new(
                    "wet-surfaces-stay-wet",
                    "liverwort",
                    [
                        new Pattern.Fact(FactKind.Site, [new("surface-moisture", Word("moist", "wet"))]),
                        new Pattern.None(new Pattern.Fact(FactKind.Weed, [new("cover-percent", AtLeast(50m))])),
                    ],
                    new Consequence.MakesFinding("surface-stays-wet", 0.9),
                    "Water that never leaves keeps the surface wet.",
                    ["book-one"],
                    [],
                    s_here
                ),
                new(
                    "open-days-before-the-film",
                    "covering",
                    [
                        new Pattern.Fact(
                            FactKind.Site,
                            [new("days-to-covering", new AttributeTest.Variable("days", true, false))]
                        ),
                        new Pattern.Fact(
                            FactKind.Treatment,
                            [new("days-before-covering", new AttributeTest.VariableLimit(Comparison.MoreThan, "days"))]
                        ),
                    ],
                    new Consequence.Bar(Severity.Prohibited),
                    "It must lie in the open longer.",
                    ["book-one"],
                    [],
                    s_here
                ),
            ],
        };

    private static Treatment Wash =>
        Treatment("surface-wash", "Surface wash") with
        {
            // At $18 an hour, $45 and 2.25 h.
            Cost = new CostDrivers(new Span(4, 5), new Span(2, 2.5m), ["invented"]),
            When = "now",
            Memory = ["rei-hours", "rates"],
            Cautions = ["Rinse the sprayer."],
            ReiHours = new Span(12, 24),
            WaitAfterPottingDays = 14,
            DaysBeforeCovering = 21,
            ResidualWeeks = new Span(8, 12),
            SignalWord = "caution",
            ProtectiveEquipment = "gloves and goggles.",
            RestrictedUse = true,
            Ratings = [new("liverwort", "good", "percent-control", "91", ["paper-two"], "two weeks after")],
            Rates = [new(new Span(1, 2.5m), "fl-oz/gal", null, ["paper-two"], null)],
        };

    private static ImmutableSortedDictionary<string, T> Sorted<T>(Func<T, string> id, params T[] items) =>
        items.ToImmutableSortedDictionary(id, item => item, StringComparer.Ordinal);

    private static AttributeTest.Word Word(params string[] words) => new(WordSet.Of(words), false);

    private static AttributeTest.Limit AtLeast(decimal value) => new(Comparison.AtLeast, value);

    private static Question Question(int order, string id, string ask) =>
        Invented.Question(id, order) with
        {
            Group = "structure",
            Ask = ask,
            Why = "Much depends on it.",
            Choices = [new("one", "The one"), new("other", "The other")],
            Sources = ["common-practice"],
            Where = s_here,
        };

    private static Weed Weed(string id, string name) =>
        Invented.Weed(id) with
        {
            Name = name,
            Scientific = "Plantus exemplaris",
            Kind = "bryophyte",
            LifeCycle = "perennial",
            Emergence = ImmutableSortedDictionary<string, ImmutableArray<int>>.Empty.Add("heated-house", [1, 2, 12]),
            SpreadsBy = WordSet.Of(["gemmae", "spores"]),
            FavouredBy = WordSet.Of(["wet-surface"]),
            Places = WordSet.Of(["propagation-house"]),
            Identify = "Flat and green.",
            WeeksToFirstSeed = new Span(3, 6),
            LookAlikes = [new("liverwort", "cups tell")],
            Sources = ["book-one"],
            Where = s_here,
        };

    private static Practice Practice(string id, string name, string when, string kind) =>
        Invented.Practice(id) with
        {
            Name = name,
            What = "Do it with care, and take away what comes off.",
            When = when,
            Places = WordSet.Of(["propagation-house"]),
            StockStages = WordSet.Of(["rooted-liners"]),
            Kind = kind,
            Cost = kind == "watering" ? null : new CostDrivers(new Span(10, 20), new Span(1, 2), ["invented"]),
            Effects = [new("all", new Span(40, 60), ["book-one"], "every two weeks")],
            Memory = id == "mulch-pots" ? ["effects"] : [],
            Sources = ["book-one"],
            Where = s_here,
        };

    private static Treatment Treatment(string id, string name) =>
        Invented.Treatment(id, "examplazine", "14") with
        {
            Name = name,
            What = "Use it as its label says.",
            Places = WordSet.Of(["container-yard"]),
            StockStages = WordSet.Of(["established"]),
            Actives = [new Active("examplazine", "14", "ppo", "E")],
            Volatile = "none",
            Checked = new DateOnly(2026, 11, 25),
            Sources = ["paper-two"],
            Where = s_here,
        };
}

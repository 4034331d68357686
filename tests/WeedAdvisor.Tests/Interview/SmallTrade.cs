using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Interview;

/// <summary>
/// A trade small enough to hold in the head: a dozen questions, five weeds, three crops, two regions, five actions.
/// </summary>
internal static class SmallTrade
{
    public static KnowledgeBase Knowledge { get; } = Make();

    public static Question Question(string id) => Knowledge.QuestionOf(id) ?? throw new ArgumentException(id);

    private static KnowledgeBase Make() =>
        Invented.Knowledge with
        {
            Usual = UsualValues.Of((UsualIds.Rounds, 4), (UsualIds.Pots, 10_000)),
            Stamp = new KnowledgeStamp("0.1.0", new string('0', 64)),
            Vocabulary = ById(
                [
                    List(
                        "stage",
                        ("expected", "not up yet, known from last year"),
                        ("seedling", "seedling"),
                        ("young", "young plant"),
                        ("mature", "full grown"),
                        ("flowering", "in flower"),
                        ("seeding", "with ripe seed or spores")
                    ),
                    List(
                        "weed-feature",
                        ("flat-ribbons", "flat, forking green ribbons"),
                        ("basal-rosette", "leaves in a ring on the ground"),
                        ("flat-mat", "lies flat and spreads as a mat"),
                        ("many-leaflets", "each leaf made of several leaflets"),
                        ("three-heart-shaped-leaflets", "three heart-shaped leaflets"),
                        ("hairy", "clearly hairy"),
                        ("hairless", "no hairs"),
                        ("milky-sap", "white milky sap when broken"),
                        ("purple-spot-on-leaf", "dark blotch in the middle of the leaf"),
                        ("flowers-white", "white flowers"),
                        ("flowers-yellow", "yellow flowers"),
                        ("pods-that-burst", "ripe pods burst when touched")
                    ),
                    List("weed-feature-either", ("hairy", "hairs"), ("hairless", "hairs")),
                ],
                list => list.Id
            ),
            Questions = Questions(),
            Weeds = ById(
                [
                    Weed(
                        "bittercress",
                        "Hairy bittercress",
                        "Cardamine hirsuta",
                        "broadleaf",
                        ["hairy cress"],
                        "container-yard"
                    ) with
                    {
                        Features = WordSet.Of(
                            "basal-rosette",
                            "many-leaflets",
                            "hairy",
                            "flowers-white",
                            "pods-that-burst"
                        ),
                    },
                    Weed(
                        "liverwort",
                        "Liverwort",
                        "Marchantia polymorpha",
                        "bryophyte",
                        ["common liverwort"],
                        "propagation-house",
                        "container-yard"
                    ) with
                    {
                        Features = WordSet.Of("flat-ribbons", "flat-mat", "hairless"),
                    },
                    Weed(
                        "oxalis",
                        "Creeping woodsorrel",
                        "Oxalis corniculata",
                        "broadleaf",
                        ["yellow sorrel"],
                        "propagation-house"
                    ) with
                    {
                        Features = WordSet.Of(
                            "flat-mat",
                            "three-heart-shaped-leaflets",
                            "flowers-yellow",
                            "pods-that-burst"
                        ),
                    },
                    Weed(
                        "spurge-prostrate",
                        "Prostrate spurge",
                        "Euphorbia prostrata",
                        "broadleaf",
                        [],
                        "container-yard"
                    ) with
                    {
                        Features = WordSet.Of("flat-mat", "milky-sap", "hairy"),
                        LookAlikes =
                        [
                            new LookAlike("spurge-spotted", "Spotted spurge mostly has a dark blotch on the leaf."),
                        ],
                    },
                    Weed(
                        "spurge-spotted",
                        "Spotted spurge",
                        "Euphorbia maculata",
                        "broadleaf",
                        ["milk purslane"],
                        "container-yard"
                    ) with
                    {
                        Features = WordSet.Of("flat-mat", "milky-sap", "hairy", "purple-spot-on-leaf"),
                        LookAlikes =
                        [
                            new LookAlike("spurge-prostrate", "Spotted spurge mostly has a dark blotch on the leaf."),
                        ],
                    },
                ],
                weed => weed.Id
            ),
            Crops = ById([Crop("ferns", "Ferns"), Crop("hydrangeas", "Hydrangeas"), Crop("roses", "Roses")], crop =>
                crop.Id
            ),
            Practices = ById(
                [
                    Practice("pull-before-seed", "Pull and bag the weeds before they seed", "now"),
                    Practice("rice-hull-mulch", "Mulch the pots with rice hulls", "season"),
                    Practice("water-less-often", "Let the surface dry between waterings", "standing"),
                ],
                practice => practice.Id
            ),
            Treatments = ById(
                [
                    Treatment("pelargonic-acid-spray", "Pelargonic acid, directed spray", "pelargonic acid", "0"),
                    Treatment("pendimethalin-granules", "Pendimethalin granules", "pendimethalin", "3"),
                ],
                treatment => treatment.Id
            ),
            Prices = ById(
                [
                    new Price
                    {
                        Id = "labour-rate",
                        Name = "Labour",
                        Value = 18,
                        Unit = "usd-per-hour",
                        Sources = ["invented"],
                        Where = Place.Whole("prices.yaml"),
                    },
                ],
                price => price.Id
            ),
            Regions = ById(
                [Region("cool-coast", "Cool, wet coast"), Region("warm-south", "Warm, humid south")],
                region => region.Id
            ),
            Sources = ById(
                [new Source("common-practice", null, "Common practice of the trade", null, null, null, null)],
                source => source.Key
            ),
        };

    private static ImmutableArray<Question> Questions()
    {
        var growing = new AttributeCondition("stock", Not("none-present"));
        var covered = new AttributeCondition("cover", Is("film-on", "glass-or-rigid"));
        Question[] questions =
        [
            Ask(
                "place",
                QuestionKind.OneOf,
                "What kind of place is it?",
                choices:
                [
                    ("propagation-house", "propagation house"),
                    ("container-yard", "container yard"),
                    ("walkway", "paths and roads"),
                ]
            ),
            Ask(
                "cover",
                QuestionKind.OneOf,
                "What is over it?",
                choices:
                [
                    ("open-sky", "open sky"),
                    ("shade-cloth", "shade cloth"),
                    ("film-on", "film"),
                    ("glass-or-rigid", "glass or rigid sheets"),
                ]
            ),
            Ask(
                "sides",
                QuestionKind.OneOf,
                "Are the sides open?",
                [covered],
                [("closed", "closed"), ("open", "open")]
            ),
            Ask(
                "stock",
                QuestionKind.OneOf,
                "What stands there?",
                choices:
                [
                    ("unrooted-cuttings", "unrooted cuttings"),
                    ("newly-potted", "newly potted plants"),
                    ("established", "established plants"),
                    ("none-present", "no plants"),
                ]
            ),
            Ask(
                "potted-on",
                QuestionKind.Date,
                "When was it potted?",
                [new AttributeCondition("stock", Is("newly-potted", "established"))]
            ) with
            {
                PastOnly = true,
            },
            Ask("crops", QuestionKind.Crops, "Which crops stand there?", [growing]),
            Ask(
                "surface-moisture",
                QuestionKind.OneOf,
                "How wet is the surface between waterings?",
                choices: [("dry-between", "it dries"), ("moist", "it stays moist"), ("wet", "it stays wet")]
            ),
            Ask("mulch-depth", QuestionKind.Number, "How deep is the mulch?", [growing]) with
            {
                Unit = "cm",
                Between = new Span(0, 30),
            },
            Ask(
                "weeds",
                QuestionKind.Weeds,
                "Which weeds are there, how big, and how much of the surface do they cover?"
            ),
            Ask("past", QuestionKind.Past, "What was applied here in the last twelve months?"),
            Ask("region", QuestionKind.Region, "Which climate is nearest to yours?"),
            Ask(
                "equipment",
                QuestionKind.AnyOf,
                "What equipment is at hand?",
                choices:
                [
                    ("hand-spreader", "hand-held spreader"),
                    ("backpack-sprayer", "backpack sprayer"),
                    ("mower", "mower"),
                ]
            ),
        ];
        return [.. questions.Select((question, order) => question with { Order = order })];
    }

    private static Question Ask(
        string id,
        QuestionKind kind,
        string ask,
        ImmutableArray<AttributeCondition>? when = null,
        (string Id, string Text)[]? choices = null
    ) =>
        Invented.Question(id) with
        {
            Group = "site",
            Ask = ask,
            Why = $"The advice turns on the {id.Replace('-', ' ')}: it says what may be used and what works.",
            Kind = kind,
            Choices = [.. (choices ?? []).Select(choice => new AnswerChoice(choice.Id, choice.Text))],
            AskedWhen = when ?? [],
            Sources = ["common-practice"],
        };

    private static AttributeTest.Word Is(params string[] words) => new(WordSet.Of(words), Negated: false);

    private static AttributeTest.Word Not(params string[] words) => new(WordSet.Of(words), Negated: true);

    private static WordList List(string id, params (string Id, string Text)[] words) =>
        new(id, [.. words.Select(word => KeyValuePair.Create(word.Id, word.Text))]);

    private static Weed Weed(
        string id,
        string name,
        string scientific,
        string kind,
        ImmutableArray<string> also,
        params string[] places
    ) =>
        Invented.Weed(id) with
        {
            Name = name,
            AlsoCalled = also,
            Scientific = scientific,
            Kind = kind,
            LifeCycle = "summer-annual",
            Places = WordSet.Of(places),
            Identify = "As in the book.",
            Sources = ["common-practice"],
        };

    private static Crop Crop(string id, string name) =>
        Invented.Crop(id) with
        {
            Name = name,
            Sources = ["common-practice"],
        };

    private static Region Region(string id, string name) =>
        new()
        {
            Id = id,
            Name = name,
            Country = "us",
            EmergenceZone = "us-southeast",
            MeanTemperatureC = [.. Enumerable.Repeat(10m, 12)],
            Sources = ["common-practice"],
            Where = Place.Whole("regions.yaml"),
        };

    // At $18 an hour, $45 and 2.5 h.
    private static CostDrivers WorkOnly => new(new Span(0, 0), new Span(2.5m, 2.5m), ["invented"]);

    private static Practice Practice(string id, string name, string when) =>
        Invented.Practice(id) with
        {
            Name = name,
            What = $"{name}, and look again after three weeks.",
            When = when,
            Cost = WorkOnly,
            Cautions = ["Bag what you pull; do not drop it under the bench."],
            Sources = ["common-practice"],
        };

    private static Treatment Treatment(string id, string name, string active, string group) =>
        Invented.Treatment(id, active, group) with
        {
            Name = name,
            What = $"{name}.",
            Cost = WorkOnly,
            RootInhibitor = true,
            Checked = new DateOnly(2026, 11, 25),
            Sources = ["common-practice"],
        };

    private static ImmutableSortedDictionary<string, T> ById<T>(IEnumerable<T> records, Func<T, string> id) =>
        records.ToImmutableSortedDictionary(id, record => record, StringComparer.Ordinal);
}

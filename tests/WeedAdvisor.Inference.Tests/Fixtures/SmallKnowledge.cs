using System.Collections.Immutable;
using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Tests.Fixtures;

/// <summary>
/// A small invented knowledge base for trying the engine: enough of everything, nothing true of any trade.
/// </summary>
internal static class SmallKnowledge
{
    private static readonly Place s_nowhere = Place.Whole("small");
    private static readonly ImmutableArray<string> s_source = ["invented"];

    public static KnowledgeBase Of(params IEnumerable<Judgement> judgements) => new()
    {
        // As where the usual interval is not known: a year.
        Usual = UsualValues.Of((UsualIds.UnknownInterval, 365m / 7)),
        Stamp = new KnowledgeStamp("0.0.0", new string('0', 64)),
        Vocabulary = ImmutableSortedDictionary<string, WordList>.Empty
            .Add("enclosed-cover", new WordList("enclosed-cover", [new("film", "film")])),
        Questions =
        [
            Choice(0, "cover", ["sky", "shade", "film"]),
            Choice(1, "stock", ["cuttings", "liners", "none"]),
            Choice(2, "heated", ["yes", "no"], When("cover", "film")),
            new Question
            {
                Id = "crops", Order = 3, Group = "g", Ask = "Crops?", Why = "w", Kind = QuestionKind.Crops,
                Sources = s_source, Where = s_nowhere, AskedWhen = [When("stock", "cuttings", "liners")],
            },
            new Question
            {
                    Id = "rate",
                    Order = 4,
                    Group = "g",
                    Ask = "Rate?",
                    Why = "w",
                    Kind = QuestionKind.Number,
                    Unit = "usd/h",
                Between = new Span(0, 9), Sources = s_source, Where = s_nowhere,
            },
            List(5, "weeds", QuestionKind.Weeds),
            List(6, "past", QuestionKind.Past),
        ],
        Weeds = Map(WeedOf("moss", "bryophyte", 3), WeedOf("spurge", "broadleaf", 4), WeedOf("sedge", "grass", 9)),
        Crops = Map(CropOf("shrubs"), CropOf("heathers", "shrubs"), CropOf("ferns")),
        Practices = Map(PracticeOf("pull", ["sky", "shade"], 2, 80, 95), PracticeOf("mulch", ["sky"], 30, 50, 90),
            PracticeOf("sweep", [], 1, 10, 20)),
        Treatments = Map(
                TreatmentOf(
                    "grain",
                    true,
                    ["sky"],
                    ["heathers"],
                    ["shrubs"],
                    "14",
                    7,
                    [("moss", "good"), ("spurge", "fair")]
                ),
                TreatmentOf(
                    "spray",
                    true,
                    ["sky", "shade"],
                    ["ferns"],
                    ["shrubs", "ferns"],
                    "3",
                    null,
                    [("spurge", "good")]
                ),
            TreatmentOf("wash", false, ["sky", "shade", "film"], [], [], "14", 0, [("moss", "poor")])),
        Regions = ImmutableSortedDictionary<string, Region>.Empty,
        Findings = Map("wet", "fed", "weedy", "open").ToImmutableSortedDictionary(
            id => id,
            id => new FindingText { Id = id, Text = $"It is {id}.", Sources = s_source, Where = s_nowhere },
            StringComparer.Ordinal),
        Scale = Map(Step("good", 80, 95), Step("fair", 50, 80), Step("poor", 10, 50), Step("none", 0, 0)),
        Prices = ImmutableSortedDictionary<string, Price>.Empty,
        Sources = ImmutableSortedDictionary<string, Source>.Empty,
        Judgements = [.. judgements.OrderBy(judgement => judgement.Id, StringComparer.Ordinal)],
        WorkedVisits = [],
    };

    public static Judgement Rule(string id, Consequence then, params ImmutableArray<Pattern> when) =>
        new(id, "small", when, then, $"because of {id}", s_source, [], s_nowhere);

    public static AttributeTest Is(params string[] words) => new AttributeTest.Word(WordSet.Of(words), false);

    public static AttributeTest IsNot(params string[] words) => new AttributeTest.Word(WordSet.Of(words), true);

    public static Pattern.Fact Fact(FactKind kind, params (string Attribute, AttributeTest Test)[] tests) =>
        new(kind, [.. tests.Select(test => new AttributeCondition(test.Attribute, test.Test))]);

    private static string[] Map(params string[] ids) => ids;

    public static ImmutableSortedDictionary<string, T> Map<T>(params T[] records)
        where T : WeedAdvisor.Knowledge.Records.Record =>
        records.ToImmutableSortedDictionary(record => record.Id, record => record, StringComparer.Ordinal);

    public static AttributeCondition When(string question, params string[] answers) => new(question, Is(answers));

    public static Question Choice(int order, string id, string[] answers, params AttributeCondition[] when) => new()
    {
        Id = id,
        Order = order,
        Group = "g",
        Ask = $"{id}?",
        Why = "w",
        Kind = QuestionKind.OneOf,
        Choices = [.. answers.Select(answer => new AnswerChoice(answer, answer))],
        AskedWhen = [.. when],
        Sources = s_source,
        Where = s_nowhere,
    };

    private static Question List(int order, string id, QuestionKind kind) => new()
    {
        Id = id,
        Order = order,
        Group = "g",
        Ask = $"{id}?",
        Why = "w",
        Kind = kind,
        Sources = s_source,
        Where = s_nowhere,
    };

    public static Weed WeedOf(string id, string kind, int weeks) => new()
    {
        Id = id,
        Name = id,
        Scientific = id,
        Kind = kind,
        LifeCycle = "annual",
        NeedsLight = "yes",
        Underground = kind == "grass",
        Emergence = ImmutableSortedDictionary<string, ImmutableArray<int>>.Empty,
        WeeksToFirstSeed = new Span(weeks, weeks + 1),
        SpreadsBy = WordSet.Of(["wind"]),
        FavouredBy = WordSet.Of(["wet"]),
        Places = WordSet.Empty,
        Identify = id,
        Sources = s_source,
        Where = s_nowhere,
    };

    public static Crop CropOf(string id, params string[] parents) => new()
    {
        Id = id,
        Name = id,
        Parents = WordSet.Of(parents),
        IsA = WordSet.Of([id, .. parents]),
        Traits = WordSet.Empty,
        Sources = s_source,
        Where = s_nowhere,
    };

    public static Practice PracticeOf(string id, string[] places, decimal usd, decimal low, decimal high) => new()
    {
        Id = id,
        Name = id,
        What = id,
        When = "now",
        Places = WordSet.Of(places),
        StockStages = WordSet.Of(["liners", "none"]),
        NeedsEquipment = WordSet.Empty,
        Kind = "weeding",
        WorksOn = "both",
        EnclosedOk = true,
        Cost = new CostDrivers(new Span(usd, usd), new Span(1, 1), s_source),
        Effects = [new PublishedEffect("all", new Span(low, high), s_source, null)],
        Sources = s_source,
        Where = s_nowhere,
    };

    public static Treatment TreatmentOf(
        string id, bool reaches, string[] under, string[] hurt, string[] tolerant, string group, decimal? wait,
        (string Weed, string Grade)[] ratings) => new()
        {
            Id = id,
            Name = id,
            What = id,
            When = "season",
            Places = WordSet.Of(["sky"]),
            StockStages = WordSet.Of(["liners", "none"]),
            NeedsEquipment = WordSet.Empty,
            Actives = [new Active(id + "-active", group, null, null)],
            Formulation = "GR",
            Role = "preemergence",
            ActsOn = WordSet.Of(["germinating"]),
            Applied = WordSet.Of(["granule"]),
            ReachesCrop = reaches,
            AllowedUnder = WordSet.Of(under),
            EnclosedUse = "never",
            CropsTolerant = WordSet.Of(tolerant),
            CropsHurt = WordSet.Of(hurt),
            EdibleOk = false,
            OrganicOk = false,
            WaitAfterPottingDays = wait,
            Volatile = "low",
            RootInhibitor = false,
            WaterHazard = true,
            DriftHazard = false,
            RestrictedUse = false,
            Status = "current",
            Checked = new DateOnly(2026, 1, 1),
            Ratings = [.. ratings.Select(rating => new Rating(rating.Weed, rating.Grade, "s", null, s_source, null))],
            Sources = s_source,
            Where = s_nowhere,
        };

    private static ScaleStep Step(string id, decimal low, decimal high) =>
        new() { Id = id, ReductionPercent = new Span(low, high), Sources = s_source, Where = s_nowhere };
}

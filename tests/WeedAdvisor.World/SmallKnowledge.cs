using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.World;

/// <summary>
/// A small invented knowledge base for trying the engine: enough of everything, nothing true of any trade.
/// </summary>
public static class SmallKnowledge
{
    private static readonly Place s_nowhere = Place.Whole("small");
    private static readonly ImmutableArray<string> s_source = ["invented"];

    public static KnowledgeBase Of(params IEnumerable<Judgement> judgements) =>
        Invented.Knowledge with
        {
            // As where the usual interval is not known: a year.
            Usual = UsualValues.Of((UsualIds.UnknownInterval, 365m / 7)),
            Vocabulary = ImmutableSortedDictionary<string, WordList>.Empty.Add(
                "enclosed-cover",
                new WordList("enclosed-cover", [new("film", "film")])
            ),
            Questions =
            [
                Choice(0, "cover", ["sky", "shade", "film"]),
                Choice(1, "stock", ["cuttings", "liners", "none"]),
                Choice(2, "heated", ["yes", "no"], When("cover", "film")),
                Invented.Question("crops", 3) with
                {
                    Kind = QuestionKind.Crops,
                    AskedWhen = [When("stock", "cuttings", "liners")],
                },
                Invented.Question("rate", 4) with
                {
                    Kind = QuestionKind.Number,
                    Unit = "usd/h",
                    Between = new Span(0, 9),
                },
                List(5, "weeds", QuestionKind.Weeds),
                List(6, "past", QuestionKind.Past),
            ],
            Weeds = Invented.ById(
                WeedOf("moss", "bryophyte", 3),
                WeedOf("spurge", "broadleaf", 4),
                WeedOf("sedge", "grass", 9)
            ),
            Crops = Invented.ById(CropOf("shrubs"), CropOf("heathers", "shrubs"), CropOf("ferns")),
            Practices = Invented.ById(
                PracticeOf("pull", ["sky", "shade"], 2, 80, 95),
                PracticeOf("mulch", ["sky"], 30, 50, 90),
                PracticeOf("sweep", [], 1, 10, 20)
            ),
            Treatments = Invented.ById(
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
                TreatmentOf("wash", false, ["sky", "shade", "film"], [], [], "14", 0, [("moss", "poor")])
            ),
            Findings = ((string[])["wet", "fed", "weedy", "open"]).ToImmutableSortedDictionary(
                id => id,
                id => new FindingText
                {
                    Id = id,
                    Text = $"It is {id}.",
                    Sources = s_source,
                    Where = s_nowhere,
                },
                StringComparer.Ordinal
            ),
            Scale = Invented.ById(Step("good", 80, 95), Step("fair", 50, 80), Step("poor", 10, 50), Step("none", 0, 0)),
            Judgements = [.. judgements.OrderBy(judgement => judgement.Id, StringComparer.Ordinal)],
        };

    public static Judgement Rule(string id, Consequence then, params ImmutableArray<Pattern> when) =>
        new(id, "small", when, then, $"because of {id}", s_source, [], s_nowhere);

    public static AttributeTest Is(params string[] words) => new AttributeTest.Word(WordSet.Of(words), false);

    public static AttributeTest IsNot(params string[] words) => new AttributeTest.Word(WordSet.Of(words), true);

    public static Pattern.Fact Fact(FactKind kind, params (string Attribute, AttributeTest Test)[] tests) =>
        new(kind, [.. tests.Select(test => new AttributeCondition(test.Attribute, test.Test))]);

    public static AttributeCondition When(string question, params string[] answers) => new(question, Is(answers));

    public static Question Choice(int order, string id, string[] answers, params AttributeCondition[] when) =>
        Invented.Question(id, order) with
        {
            Choices = [.. answers.Select(answer => new AnswerChoice(answer, answer))],
            AskedWhen = [.. when],
        };

    private static Question List(int order, string id, QuestionKind kind) =>
        Invented.Question(id, order) with
        {
            Kind = kind,
        };

    public static Weed WeedOf(string id, string kind, int weeks) =>
        Invented.Weed(id) with
        {
            Kind = kind,
            Underground = kind == "grass",
            WeeksToFirstSeed = new Span(weeks, weeks + 1),
            SpreadsBy = WordSet.Of(["wind"]),
            FavouredBy = WordSet.Of(["wet"]),
        };

    public static Crop CropOf(string id, params string[] parents) => Invented.Crop(id, parents);

    public static Practice PracticeOf(string id, string[] places, decimal usd, decimal low, decimal high) =>
        Invented.Practice(id) with
        {
            Places = WordSet.Of(places),
            StockStages = WordSet.Of(["liners", "none"]),
            WorksOn = "both",
            Cost = new CostDrivers(new Span(usd, usd), new Span(1, 1), s_source),
            Effects = [new PublishedEffect("all", new Span(low, high), s_source, null)],
        };

    public static Treatment TreatmentOf(
        string id,
        bool reaches,
        string[] under,
        string[] hurt,
        string[] tolerant,
        string group,
        decimal? wait,
        (string Weed, string Grade)[] ratings
    ) =>
        Invented.Treatment(id, id + "-active", group) with
        {
            Places = WordSet.Of(["sky"]),
            StockStages = WordSet.Of(["liners", "none"]),
            Applied = WordSet.Of(["granule"]),
            ReachesCrop = reaches,
            AllowedUnder = WordSet.Of(under),
            CropsTolerant = WordSet.Of(tolerant),
            CropsHurt = WordSet.Of(hurt),
            WaitAfterPottingDays = wait,
            Ratings =
            [
                .. ratings.Select(rating => new Rating(rating.Weed, rating.Grade, "s", rating.Grade, s_source, null)),
            ],
        };

    private static ScaleStep Step(string id, decimal low, decimal high) =>
        new()
        {
            Id = id,
            ReductionPercent = new Span(low, high),
            Sources = s_source,
            Where = s_nowhere,
        };
}

using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Oracle;

/// <summary>A small knowledge base with a few questions, and an area with some of them open.</summary>
/// <param name="Knowledge">Questions, catalogue and judgements.</param>
/// <param name="Area">What is known of the area.</param>
internal sealed record DrawnCase(KnowledgeBase Knowledge, VisitArea Area)
{
    private const int MostNumber = 3;
    private const ulong Seed = 20261128;
    private static readonly string[] s_covers = ["film", "sky", "shade"];
    private static readonly string[] s_lights = ["full", "part", "deep", "none"];

    /// <summary>The day.</summary>
    public static DateOnly Day { get; } = new(2026, 4, 14);

    /// <summary>The case as it is looked at.</summary>
    public AreaCase Looked => AreaCase.Alone(Day, Area);

    /// <summary>A case for every number: the same number gives the same case on every machine.</summary>
    public static DrawnCase Number(int number) =>
        s_cases.Generate(new PCG((uint)number, Seed), null, out _) with
        {
            Drawn = number,
        };

    /// <summary>Its number.</summary>
    public int Drawn { get; init; }

    /// <summary>One of some values.</summary>
    public static Gen<T> Among<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(at => values[at]);

    /// <summary>At least one of some words.</summary>
    public static Gen<string[]> Some(params string[] words) =>
        Gen.Int[1, (1 << words.Length) - 1].Select(bits => words.Where((_, at) => (bits & (1 << at)) != 0).ToArray());

    private static Gen<decimal?> NumberOrNull => Gen.Int[-1, MostNumber].Select(decimal? (n) => n < 0 ? null : n);

    private static readonly Gen<Treatment> s_treatment = Gen.Select(
        Some("sky", "shade", "film"),
        Some("shrubs", "heathers"),
        Among("14", "3"),
        NumberOrNull,
        NumberOrNull,
        Among("caution", "danger", null),
        Gen.Bool,
        (under, tolerant, group, wait, repeat, word, reaches) =>
            SmallKnowledge.TreatmentOf("grain", reaches, under, [], tolerant, group, wait, []) with
            {
                RepeatAfterDays = repeat,
                SignalWord = word,
            }
    );

    private static readonly Gen<KnowledgeBase> s_catalogue = Gen.Select(
        s_treatment.Array[2],
        Gen.Int[2, 3],
        Gen.Int[2, 4],
        Gen.Frequency((1, Among((decimal?)null)), (1, NumberOrNull)),
        (treatments, covers, lights, weeks) =>
            SmallKnowledge.Of() with
            {
                Questions =
                [
                    SmallKnowledge.Choice(0, "cover", s_covers[..covers]),
                    SmallKnowledge.Choice(1, "light", s_lights[..lights]),
                    SmallKnowledge.Choice(2, "heated", ["yes", "no"], SmallKnowledge.When("cover", "film")),
                    SmallKnowledge.Choice(3, "tools", ["hoe", "steam"]) with
                    {
                        Kind = QuestionKind.AnyOf,
                    },
                    SmallKnowledge.Choice(4, "depth", []) with
                    {
                        Kind = QuestionKind.Number,
                        Between = new Span(0, MostNumber),
                    },
                    SmallKnowledge.Choice(5, "stock", ["liners", "none-present"]),
                    SmallKnowledge.Choice(6, "crops", [], SmallKnowledge.When("stock", "liners")) with
                    {
                        Kind = QuestionKind.Crops,
                    },
                ],
                Weeds = Invented.ById(
                    SmallKnowledge.WeedOf("moss", "bryophyte", 1) with
                    {
                        WeeksToFirstSeed = weeks is { } first ? new Span(first, first) : null,
                    },
                    SmallKnowledge.WeedOf("spurge", "broadleaf", 2)
                ),
                Crops = Invented.ById(SmallKnowledge.CropOf("shrubs"), SmallKnowledge.CropOf("heathers", "shrubs")),
                Practices = Invented.ById(SmallKnowledge.PracticeOf("pull", ["sky"], 1, 50, 90)),
                Treatments = Invented.ById(treatments[0], treatments[1] with { Id = "spray", Name = "spray" }),
            }
    );

    // Most answers are given: what is open multiplies.
    private static Gen<Answer?> Maybe(Gen<Answer?> answer) => Gen.Frequency((1, Among((Answer?)null)), (3, answer));

    private static Gen<Answer?> Word(params string[] words) =>
        Maybe(Among(words).Select(Answer? (word) => Words([word])));

    private static Answer.Words Words(string[] words) => new(WordSet.Of(words));

    private static readonly Gen<WeedSeen> s_seen = Gen.Select(
        Among("seedling", "mature", "expected", null),
        NumberOrNull,
        (stage, cover) => new WeedSeen("moss", stage, cover)
    );

    private static readonly Gen<ImmutableArray<WeedSeen>?> s_weeds = Gen.Frequency(
        (1, Among((ImmutableArray<WeedSeen>?)null)),
        (
            4,
            Gen.Select(s_seen, s_seen, Gen.Int[0, 3], ImmutableArray<WeedSeen>? (moss, spurge, which) =>
                [.. If((which & 1) != 0, moss), .. If((which & 2) != 0, spurge with { Weed = "spurge" })]
            )
        )
    );

    private static readonly Gen<PastApplication> s_use = Gen.Select(
        Among("grain", "spray"),
        NumberOrNull,
        Among("clean", "escapes", "injury", null),
        (treatment, ago, result) =>
            new PastApplication(treatment, ago is { } days ? Day.AddDays(-(int)days) : null, result, WordSet.Empty)
    );

    private static readonly Gen<ImmutableArray<PastApplication>?> s_past = Gen.Frequency(
        (1, Among((ImmutableArray<PastApplication>?)null)),
        (4, s_use.Array[0, 2].Select(ImmutableArray<PastApplication>? (uses) => [.. uses]))
    );

    private static readonly Gen<VisitArea> s_area = Gen.Select(
        Gen.Select(
            Word("film", "sky", "shade"),
            Word("full", "part"),
            Word("yes", "no"),
            Word("liners", "none-present")
        ),
        Maybe(
            Gen.Int[0, 3].Select(Answer? (which) => Words([.. If(which % 2 == 1, "hoe"), .. If(which > 1, "steam")]))
        ),
        Maybe(Gen.Int[0, MostNumber].Select(Answer? (number) => new Answer.Number(number))),
        Maybe(Some("shrubs", "heathers").Select(Answer? (crops) => Words(crops))),
        s_weeds,
        s_past,
        (words, tools, depth, crops, weeds, past) =>
            new VisitArea(
                "a",
                "Area",
                new (string Id, Answer? Answer)[]
                {
                    ("cover", words.Item1),
                    ("light", words.Item2),
                    ("heated", words.Item3),
                    ("stock", words.Item4),
                    ("tools", tools),
                    ("depth", depth),
                    ("crops", crops),
                }
                    .Where(pair => pair.Answer is not null)
                    .ToImmutableSortedDictionary(pair => pair.Id, pair => pair.Answer!, StringComparer.Ordinal),
                weeds,
                past
            )
    );

    private static readonly Gen<DrawnCase> s_cases = Gen.Select(
        s_catalogue,
        DrawnJudgements.All,
        s_area,
        (knowledge, judgements, area) =>
            new DrawnCase(knowledge with { Judgements = judgements }, Told(area, knowledge))
    );

    // Nobody answers with a word that is not asked for, nor a question that certainly does not apply.
    private static VisitArea Told(VisitArea area, KnowledgeBase knowledge)
    {
        var answers = area.Answers;
        if (answers.TryGetValue("cover", out Answer? cover) && !IsAllowed(knowledge, "cover", cover))
            answers = answers.SetItem("cover", Words(["sky"]));
        if (Is(answers, "cover") is { } over && over != "film")
            answers = answers.Remove("heated");
        return area with { Answers = Is(answers, "stock") == "none-present" ? answers.Remove("crops") : answers };
    }

    private static T[] If<T>(bool isThere, T one) => isThere ? [one] : [];

    private static bool IsAllowed(KnowledgeBase knowledge, string question, Answer answer) =>
        answer is Answer.Words words
        && words.Value.All(word => knowledge.QuestionOf(question)!.Choices.Any(choice => choice.Id == word));

    private static string? Is(ImmutableSortedDictionary<string, Answer> answers, string question) =>
        (answers.GetValueOrDefault(question) as Answer.Words)?.Value.First();
}

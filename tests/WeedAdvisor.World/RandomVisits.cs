using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.World;

/// <summary>
/// Random areas over any knowledge base: every question unanswered, said not to be known, or answered in any way it
/// allows.
/// </summary>
public sealed class RandomVisits(KnowledgeBase knowledge)
{
    private static readonly string[] s_houses = ["house-1", "house-2"];

    /// <summary>The day of all random visits.</summary>
    public static DateOnly Day { get; } = new(2026, 5, 12);

    /// <summary>A random area; the seed decides everything, so a failing case can be drawn again.</summary>
    public Gen<VisitArea> Area => Gen.ULong.Select(seed => new Draw(seed)).Select(AreaOf);

    /// <summary>A random area of a visit to one, two or three of them, some of which share a house.</summary>
    public Gen<AreaCase> Case =>
        Gen
            .ULong.Select(seed => new Draw(seed))
            .Select(draw => new AreaCase(
                Day,
                AreaOf(draw),
                [
                    .. Enumerable
                        .Range(0, draw.Below(3))
                        .Select(i => AreaOf(draw) with { Id = $"other-{i}", Name = $"Other {i}" }),
                ]
            ));

    private VisitArea AreaOf(Draw draw)
    {
        // Some visits are nearly complete, some nearly empty.
        int answered = draw.Below(11);
        var answers = ImmutableSortedDictionary.CreateBuilder<string, Answer>(StringComparer.Ordinal);
        foreach (Question question in knowledge.Questions)
        {
            if (draw.Below(10) < answered && AnswerTo(question, draw) is { } answer)
                answers[question.Id] = answer;
            else if (draw.Below(5) == 0)
                answers[question.Id] = new Answer.NotKnown();
        }

        return new VisitArea(
            "area",
            "Area",
            answers.ToImmutable(),
            draw.Below(10) < answered ? Weeds(draw) : null,
            draw.Below(10) < answered ? Past(draw) : null
        );
    }

    private Answer? AnswerTo(Question question, Draw draw) =>
        question.Kind switch
        {
            QuestionKind.OneOf => new Answer.Words(WordSet.Of([draw.From(question.Choices).Id])),
            QuestionKind.AnyOf => new Answer.Words(
                WordSet.Of(draw.Some(question.Choices, 3).Select(choice => choice.Id))
            ),
            QuestionKind.Number => new Answer.Number(
                question.Between!.Value.Low
                    + Math.Round((question.Between.Value.High - question.Between.Value.Low) * draw.Below(101) / 100, 1)
            ),
            QuestionKind.Date => new Answer.Date(
                Day.AddDays(question.PastOnly ? -draw.Below(120) : draw.Below(200) - 50)
            ),
            QuestionKind.Crops => new Answer.Words(WordSet.Of(draw.Some([.. knowledge.Crops.Keys], 3))),
            QuestionKind.Name => new Answer.Words(WordSet.Of([draw.From(s_houses)])),
            QuestionKind.Chemicals => new Answer.Words(WordSet.Of(draw.Some(InHand(), 6))),
            QuestionKind.Region => new Answer.Words(WordSet.Of([draw.From([.. knowledge.Regions.Keys])])),
            _ => null,
        };

    // By treatment, by active, withdrawn, and what nobody knows.
    private string[] InHand() =>
        [
            .. knowledge.Treatments.Keys,
            .. knowledge.Ingredients.Keys,
            .. knowledge.GoneIds(),
            "vinegar",
            "something-in-a-can",
            "glyphosate-something",
        ];

    // Some in a part of the pots only; at times one of them in a second stage.
    private ImmutableArray<WeedSeen> Weeds(Draw draw)
    {
        WeedSeen[] seen =
        [
            .. draw.Some([.. knowledge.Weeds.Keys], 4)
                .Select(weed => new WeedSeen(
                    weed,
                    draw.Below(6) == 0 ? null : Stage(draw),
                    draw.Below(6) == 0 ? null : draw.Below(101)
                )
                {
                    PotsPercent = draw.Below(4) == 0 ? draw.Below(101) : null,
                    Stands = draw.Below(6) switch
                    {
                        0 => WeedSeen.InPots,
                        1 => WeedSeen.InGround,
                        _ => null,
                    },
                }),
        ];
        if (seen is [var first, ..] && draw.Below(4) == 0 && Stage(draw) is var other && other != first.Stage)
            return [.. seen, new WeedSeen(first.Weed, other, draw.Below(101))];
        return [.. seen];
    }

    private string Stage(Draw draw) => draw.From(knowledge.Vocabulary["stage"].Words).Key;

    private ImmutableArray<PastApplication> Past(Draw draw) =>
        [.. Enumerable.Range(0, draw.Below(4)).Select(_ => Use(draw))];

    // Every field told or left out; of products in the catalogue and outside it; this week as often as long ago. What a
    // use tells does not contradict itself: nothing came through a clean one, and granules are not fogged.
    private PastApplication Use(Draw draw)
    {
        string? treatment = draw.Below(4) == 0 ? null : draw.From([.. knowledge.Treatments.Keys]);
        string? result = draw.From(["clean", "escapes", "injury", (string?)null]);
        Treatment? record = treatment is null ? null : knowledge.Treatments[treatment];
        var use = new PastApplication(
            treatment,
            draw.Below(6) == 0 ? null : Day.AddDays(-(draw.Below(2) == 0 ? draw.Below(5) : draw.Below(400))),
            result,
            result == "clean" ? WordSet.Empty : WordSet.Of(draw.Some([.. knowledge.Weeds.Keys], 2))
        )
        {
            Hour = draw.Below(2) == 0 ? null : new TimeOnly(draw.Below(24), 0),
            Method =
                draw.Below(2) == 0 ? null
                : record is { Formulation: "GR" } ? "granules"
                : draw.From(["low-coarse-spray", "other-spray", "mist-or-fog"]),
            PartOnly = Flag(draw),
            WateredIn = Flag(draw),
            Aired = Flag(draw),
            CameThrough = result == "clean" ? null : draw.From(["few", "many", (string?)null]),
            SeasonsRunning = result == "clean" || draw.Below(2) == 0 ? null : 1 + draw.Below(3),
            Drifted = draw.Below(5) == 0 ? true : null,
        };
        if (record?.Rates.FirstOrDefault(rate => rate.Product is not null) is { } rate && draw.Below(2) == 0)
            use = use with { Rate = rate.Product!.Value.Low, RateUnit = rate.Unit };
        return treatment is not null
            ? use
            : draw.Below(4) switch
            {
                0 => use with { Actives = WordSet.Of([draw.From(Actives)]) },
                1 => use with { Groups = WordSet.Of([draw.From(Groups)]) },
                2 => use with { Kind = "other-pesticide" },
                _ => use with { Kind = "weed-killer" },
            };
    }

    private ImmutableArray<string> Actives =>
        [.. knowledge.Treatments.Values.SelectMany(one => one.Actives).Select(one => one.Name).Distinct().Order()];

    private ImmutableArray<string> Groups =>
        [
            .. knowledge
                .Treatments.Values.SelectMany(one => one.Actives)
                .Select(one => one.Group)
                .OfType<string>()
                .Distinct()
                .Order(),
        ];

    private static bool? Flag(Draw draw) => draw.From([true, false, (bool?)null]);
}

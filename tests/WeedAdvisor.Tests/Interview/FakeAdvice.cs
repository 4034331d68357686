using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Tests.Interview;

/// <summary>
/// Advice by rule of thumb: pulling is always clear; mulch waits for its depth; granules wait for the cover, are
/// prohibited under film, and are clear under open sky. It wants the sides, the moisture and the date of potting, never
/// the equipment.
/// </summary>
internal sealed class FakeAdvice : IAdviceSource
{
    private const double Missing = 0.5;

    public int Asked { get; private set; }

    public AreaAdvice Of(AreaCase looked)
    {
        Asked++;
        VisitArea area = looked.Area;
        string? cover = Word(area, "cover");
        var clear = new List<ClearAction> { Clear("pull-before-seed", 1, "now", 0.9, 0.8) };
        var waiting = new List<WaitingAction>();
        var barred = new List<BarredAction>();
        if (cover == "open-sky")
            clear.Add(Clear("pendimethalin-granules", 2, "season", 0.8, null));
        else if (cover is null)
            waiting.Add(new WaitingAction("pendimethalin-granules", [Need.Question("cover")], [Bar(certain: false)]));
        else
            barred.Add(
                new BarredAction(
                    "pendimethalin-granules",
                    Severity.Prohibited,
                    [Bar(certain: true)],
                    ["common-practice"]
                )
            );
        if (Word(area, "surface-moisture") is "moist" or "wet")
            clear.Add(Clear("water-less-often", clear.Count + 1, "standing", 0.7, 0.4));
        string[] wants = ["sides", "surface-moisture", "potted-on", "mulch-depth"];
        string[] open = [.. wants.Where(id => !area.Answers.ContainsKey(id))];
        string? next = open.Contains("surface-moisture") ? "surface-moisture" : null;
        return new AreaAdvice
        {
            Area = area,
            Reading = AreaReading.Of(area, looked.Date, SmallTrade.Knowledge),
            Findings =
                Word(area, "surface-moisture") == "wet"
                    ? [new AreaFinding("surface-stays-wet", "The surface stays wet.", 0.9, true, [])]
                    : [],
            Clear = [.. clear],
            Waiting = [.. waiting],
            Barred = [.. barred],
            Cautions =
                cover == "film-on"
                    ? [new AreaCaution("Vapour cannot escape under film.", true, Bar(certain: true))]
                    : [],
            Conflicts = [],
            Gaps = [],
            NextQuestion = next is null
                ? null
                : new NextQuestion(next, SmallTrade.Question(next).Ask, "It settles most."),
            Trail = new GivenTrail([
                .. open.Select(Possible),
                .. clear.SelectMany(one => one.Because),
                .. waiting.SelectMany(one => one.Because),
                .. barred.SelectMany(one => one.Because),
            ]),
        };
    }

    private static ClearAction Clear(string id, int rank, string when, double certainty, double? reduction) =>
        new()
        {
            Action = id,
            Rank = rank,
            Worth = certainty * (reduction ?? Missing),
            EffectCounted = reduction ?? Missing,
            Horizon = when switch
            {
                "now" => Horizon.ThisWeek,
                "season" => Horizon.ThisSeason,
                _ => Horizon.Habit,
            },
            Certainty = certainty,
            Effect = new Effect(
                reduction,
                [new EffectPart("liverwort", 1, reduction is null ? null : 70, reduction is null ? null : 90, [])]
            ),
            When = when,
            RecordUsd = 45,
            Because = [For(id, certainty)],
            Cautions = [new ActionCaution("Bag what you pull.", null, true)],
            Sources = ["common-practice"],
        };

    private static Reason For(string action, double certainty) =>
        new(
            "weeds-that-stand-are-removed-first",
            "hygiene",
            "What stands now seeds next.",
            new Consequence.Argument(certainty, false),
            action,
            certainty,
            true,
            [],
            [
                new MatchedPattern(
                    "weed up",
                    "Liverwort",
                    Truth.Yes,
                    [new MatchedTest("up", "is true", "true", Truth.Yes)],
                    []
                ),
            ],
            ["common-practice"]
        );

    private static Reason Bar(bool certain) =>
        new(
            "treatment-must-allow-the-cover",
            "under-cover",
            "The label does not allow it under this cover.",
            new Consequence.Bar(Severity.Prohibited),
            "pendimethalin-granules",
            1,
            certain,
            certain ? [] : [Need.Question("cover")],
            [new MatchedPattern("the area", "this area", certain ? Truth.Yes : Truth.NotKnown, [], [])],
            ["common-practice"]
        );

    private static Reason Possible(string question) =>
        new(
            "some-rule-on-" + question,
            "site",
            "It may matter.",
            new Consequence.MakesFinding("f", 0.5),
            null,
            0.5,
            false,
            [Need.Question(question)],
            [],
            ["common-practice"]
        );

    private static string? Word(VisitArea area, string question) =>
        area.Answers.GetValueOrDefault(question) is Answer.Words words ? words.Value.FirstOrDefault() : null;
}

using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Tests.Support;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>One thing is wrong in a visit; a problem in these words must come out.</summary>
public sealed class BadVisitTests
{
    private static readonly string s_good = FixtureFiles.All["visits/wet-house.yaml"];

    [Theory]
    [InlineData(
        "answers: { plaice: house }",
        "mulch-depth, past, place, potted-on, region, sides, stock, weeds; did you mean 'place'?"
    )]
    [InlineData(
        "answers: { place: hose }",
        "found 'hose'; expected an answer to 'place': house, yard; did you mean 'house'?"
    )]
    [InlineData("answers: { place: [house] }", "found a list; expected an answer to 'place'")]
    [InlineData("answers: { place: }", "found nothing; expected an answer to 'place'")]
    [InlineData("answers: { place: { a: b } }", "found a map of keys; expected an answer to 'place'")]
    [InlineData(
        "answers: { equipment: [sprayr] }",
        "found 'sprayr'; expected an answer to 'equipment': sprayer, spreader; did you mean 'sprayer'?"
    )]
    [InlineData("answers: { equipment: [[sprayer]] }", "found a list; expected an answer to 'equipment'")]
    [InlineData("answers: { crops: [holly] }", "found 'holly'; expected the id of a crop")]
    [InlineData("answers: { region: cold-coast }", "found 'cold-coast'; expected the id of a region: warm-coast")]
    [InlineData("answers: { mulch-depth: 31 }", "found 31; expected a number from 0 to 30, in cm")]
    [InlineData("answers: { mulch-depth: \"2,5\" }", "found '2,5'; expected a number, in cm")]
    [InlineData("answers: { mulch-depth: deep }", "found 'deep'; expected a number, in cm")]
    [InlineData(
        "answers: { potted-on: 2026-04-15 }",
        "found 2026-04-15; expected a day not after the visit (2026-04-14)"
    )]
    [InlineData("answers: { potted-on: yesterday }", "found 'yesterday'; expected a date, YYYY-MM-DD")]
    [InlineData(
        "answers: { weeds: [] }",
        "found 'weeds' among the answers; expected the key 'weeds' of the area, beside 'answers'"
    )]
    [InlineData(
        "answers: { past: [] }",
        "found 'past' among the answers; expected the key 'past' of the area, beside 'answers'"
    )]
    [InlineData("answers: [place]", "found a list; expected answers by question, as a map of keys")]
    [InlineData("weeds: [{ weed: liverwurt }]", "did you mean 'liverwort'?")]
    [InlineData("weeds: [{ weed: liverwort, stage: matur }]", "did you mean 'mature'?")]
    [InlineData("weeds: [{ weed: liverwort, cover-percent: 101 }]", "found 101; expected a number from 0 to 100")]
    [InlineData("weeds: [{ weed: liverwort, cover-percent: -1 }]", "found -1; expected a number from 0 to 100")]
    [InlineData(
        "weeds: [{ weed: liverwort }, { weed: liverwort }]",
        "found the weed 'liverwort' a second time without a stage; expected each stage of a weed once"
    )]
    [InlineData(
        "weeds: [{ weed: liverwort, stage: mature }, { weed: liverwort, stage: mature, cover-percent: 5 }]",
        "found the weed 'liverwort' a second time as 'mature'; expected each stage of a weed once"
    )]
    [InlineData("weeds: [{ weed: liverwort, pots-percent: 101 }]", "found 101; expected a number from 0 to 100")]
    [InlineData("weeds: [{ weed: liverwort, stands: bench }]", "found 'bench'; expected one of: ground, pots")]
    [InlineData("weeds: liverwort", "found 'liverwort'; expected a list; each item a weed seen")]
    [InlineData("weeds: [liverwort]", "found 'liverwort'; expected a weed seen, as a map of keys")]
    [InlineData(
        "weeds: [{ weed: liverwort, colour: green }]",
        "found the key 'colour'; expected keys of a weed seen: weed, stage, cover-percent, pots-percent, stands"
    )]
    [InlineData(
        "past: [{ treatment: oxadine-granules, seasons-running: 2.5 }]",
        "found 2.5; expected whole seasons, such as 2"
    )]
    [InlineData("past: [{ treatment: oxadine }]", "found 'oxadine'; expected the id of a treatment: oxadine-granules")]
    [InlineData("past: [{ treatment: let-it-dry }]", "found 'let-it-dry'; expected the id of a treatment")]
    [InlineData(
        "past: [{ treatment: oxadine-granules, date: 2026-04-15 }]",
        "found 2026-04-15; expected a day not after the visit"
    )]
    [InlineData(
        "past: [{ treatment: oxadine-granules, result: good }]",
        "found 'good'; expected one of: clean, escapes, injury, unknown"
    )]
    [InlineData("past: [{ treatment: oxadine-granules, escaped: [liverwurt] }]", "did you mean 'liverwort'?")]
    [InlineData(
        "answer: { place: house }",
        "found the key 'answer'; expected keys of an area: id, name, answers, weeds, past; did you mean 'answers'?"
    )]
    public void A_bad_area_is_a_problem(string area, string expected)
    {
        string problem = Assert.Single(Area(area).Refusals).ToString();

        Assert.Contains(expected, problem, StringComparison.Ordinal);
        Assert.StartsWith("visit.yaml:4:", problem, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("visit: wet-house", "visit: Wet House", "found 'Wet House'; expected an id")]
    [InlineData("date: 2026-04-14", "date: 14/4/2026", "found '14/4/2026'; expected a date, YYYY-MM-DD")]
    [InlineData("date: 2026-04-14\n", "", "found a visit without 'date'; expected the key 'date'")]
    [InlineData("nursery:", "nursry:", "did you mean 'nursery'?")]
    [InlineData(
        "nursery:",
        "units: metrik\nnursery:",
        "found 'metrik'; expected one of: both, metric, us; did you mean 'metric'?"
    )]
    [InlineData("nursery:", "units: [us]\nnursery:", "found a list; expected one of")]
    [InlineData("id: yard", "id: bench", "found the area 'bench' a second time; expected each once")]
    [InlineData("name: The bench", "name:", "found nothing; expected text")]
    [InlineData("title: A wet house", "title: A wet house\ntitle: Again", "3:1: found the key 'title' a second time")]
    public void A_bad_visit_is_a_problem(string old, string changed, string expected) =>
        Assert.Contains(Parse(s_good.Replace(old, changed, StringComparison.Ordinal)).Refusals, problem =>
            problem.ToString().Contains(expected, StringComparison.Ordinal)
        );

    [Theory]
    [InlineData(
        "area: bench",
        "area: bensch",
        "found 'bensch'; expected an area of this visit: bench, yard; did you mean 'bench'?"
    )]
    [InlineData(
        "clear: [let-it-dry]",
        "clear: [let-it-drie]",
        "expected the id of a practice or treatment: let-it-dry, oxadine-granules; did you mean 'let-it-dry'?"
    )]
    [InlineData(
        "because: treatment-must",
        "because: treatments-must",
        "did you mean 'treatment-must-allow-the-cover'?"
    )]
    [InlineData("needs: sides", "needs: side", "stock, weeds; did you mean 'sides'?")]
    [InlineData("no-clear: treatment", "no-clear: action", "found 'action'; expected one of: practice, treatment")]
    [InlineData("fires: [drying", "fires: [dying", "did you mean 'drying-helps'?")]
    [InlineData("is: not-yet", "is: notyet", "did you mean 'not-yet'?")]
    [InlineData(", day: 2026-05-02", "", "found an end without a day or a state; expected 'day' or 'state'")]
    [InlineData("findings: [", "finding: [", "did you mean 'findings'?")]
    public void A_bad_expectation_of_a_worked_visit_is_a_problem(string old, string changed, string expected) =>
        Assert.Contains(
            expected,
            Assert
                .Single(new FixtureKnowledge().Change("visits/wet-house.yaml", old, changed).Load().Refusals)
                .ToString(),
            StringComparison.Ordinal
        );

    private static Outcome<Visit, Problem> Parse(string text) =>
        VisitFile.Parse(text, "visit.yaml", FixtureKnowledge.Good);

    private static Outcome<Visit, Problem> Area(string keys) =>
        Parse($"visit: v\ndate: 2026-04-14\nareas:\n  - {{ id: a, name: A, {keys} }}\n");
}

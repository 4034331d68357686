using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>Reads what a worked visit must lead to.</summary>
internal static class ExpectationReader
{
    /// <summary>All expectations of the visit; none when the key is missing.</summary>
    public static ImmutableArray<Expectation> ReadAll(MappingReader map, Visit visit)
    {
        var areas = new ValidWords("an area of this visit", visit.Areas.Select(area => area.Id));
        return map.Each("expect", "what an area must lead to", item => Read(item, areas));
    }

    private static Expectation Read(MappingReader map, ValidWords areas)
    {
        var expectation = new Expectation
        {
            Area = map.Id("area"),
            Clear = Ids(map, "clear", "actions"),
            First = Ids(map, "first", "actions"),
            NotClear = Ids(map, "not-clear", "actions"),
            Barred = map.Each("barred", "a bar", Bar),
            Waiting = map.Each("waiting", "a wait", Wait),
            Status = map.Each("status", "a status", Status),
            Until = map.Each("until", "an end", Until),
            Unless = map.Each("unless", "a doubt", Wait),
            Findings = Ids(map, "findings", "findings"),
            Cautions = Ids(map, "cautions", "judgements"),
            NoClear = map.OptionalWord("no-clear", "words:treatment|practice"),
            NoClearReachingCrop = map.OptionalFlag("no-clear-reaching-crop"),
            NextQuestion = map.OptionalWord("next-question", "questions"),
            Fires = Ids(map, "fires", "judgements"),
            Holds = Ids(map, "holds", "judgements"),
            Where = map.Where,
        };
        if (map.Optional("area") is ScalarNode area)
            map.Context.CheckWord(area, area.Text, areas);
        map.Finish();
        return expectation;
    }

    private static ImmutableArray<string> Ids(MappingReader map, string key, string notation) =>
        map.Words(key, notation, isRequired: false);

    private static ExpectedBar Bar(MappingReader map)
    {
        var bar = new ExpectedBar(map.Word("action", "actions"), map.Word("because", "judgements"));
        map.Finish();
        return bar;
    }

    private static ExpectedWait Wait(MappingReader map)
    {
        var wait = new ExpectedWait(map.Word("action", "actions"), map.Word("needs", "questions"));
        map.Finish();
        return wait;
    }

    private static ExpectedStatus Status(MappingReader map)
    {
        var status = new ExpectedStatus(map.Word("action", "actions"), map.Word("is", ExpectedStatus.Words));
        map.Finish();
        return status;
    }

    private static ExpectedUntil Until(MappingReader map)
    {
        var until = new ExpectedUntil(
            map.Word("action", "actions"),
            map.OptionalDate("day"),
            map.OptionalText("state")
        );
        if (until is { Day: null, State: null })
            map.Context.Report(map.Node, "an end without a day or a state", "'day' or 'state'");
        map.Finish();
        return until;
    }
}

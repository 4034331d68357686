using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Earlier;

/// <summary>All that is told of an earlier use, in the order of asking.</summary>
public static class PastFields
{
    /// <summary>The product.</summary>
    public static readonly PastField Product = new PastProductField(TakesTreatments: true);

    /// <summary>The day.</summary>
    public static readonly PastField Day = new PastDay();

    /// <summary>How it turned out.</summary>
    public static readonly PastField Result = new PastChoice(
        "result",
        "How it turned out",
        "Injury bars the product here; not known counts as if it might have hurt.",
        PastResults.All,
        past => past.Result,
        (past, word) => past with { Result = word }
    );

    /// <summary>The weeds that came through.</summary>
    public static readonly PastField Escaped = new PastWeeds();

    /// <summary>What the short form of a screen leaves out.</summary>
    public static ImmutableArray<PastField> More { get; } =
    [
        new PastHour(),
        new PastChoice(
            "method",
            "How it went on",
            "Under a roof it decides what is closed; not known closes the whole house.",
            [
                new("granules", "granules"),
                new("low-coarse-spray", "low coarse spray"),
                new("other-spray", "other spray"),
                new("mist-or-fog", "mist or fog"),
            ],
            past => past.Method,
            (past, word) => past with { Method = word }
        ),
        new PastChoice(
            "part",
            "Where",
            "Not known counts as the whole area.",
            [new("whole-area", "whole area"), new("part-only", "part only")],
            past =>
                past.PartOnly switch
                {
                    true => "part-only",
                    false => "whole-area",
                    null => null,
                },
            (past, word) => past with { PartOnly = Flag(word, "part-only") }
        ),
        new PastChoice(
            "watered",
            "Watered in",
            "Where weeds came through, it is the first thing to check.",
            [new("watered-in", "watered in"), new("not-watered-in", "not watered in")],
            past =>
                past.WateredIn switch
                {
                    true => "watered-in",
                    false => "not-watered-in",
                    null => null,
                },
            (past, word) => past with { WateredIn = Flag(word, "watered-in") }
        ),
        new PastChoice(
            "aired",
            "Aired afterwards",
            "A house that was not aired as the label asks stays closed; not known counts as not.",
            [new("aired", "aired"), new("not-aired", "not aired")],
            past =>
                past.Aired switch
                {
                    true => "aired",
                    false => "not-aired",
                    null => null,
                },
            (past, word) => past with { Aired = Flag(word, "aired") }
        ),
        new PastChoice(
            "drifted",
            "Drift",
            "When it reached plants or ground it was not meant for, off this area or into it; not told counts as none.",
            [new("drifted", "it drifted"), new("no-drift", "no drift")],
            past =>
                past.Drifted switch
                {
                    true => "drifted",
                    false => "no-drift",
                    null => null,
                },
            (past, word) => past with { Drifted = Flag(word, "drifted") }
        ),
        new PastRate(),
        new PastChoice(
            "came-through",
            "How many came through",
            "Many of a weed on which it is rated good, season after season: it may be resistant.",
            [new("few", "few"), new("many", "many")],
            past => past.CameThrough,
            (past, word) => past with { CameThrough = word }
        ),
        new PastSeasons(),
    ];

    /// <summary>All of them.</summary>
    public static ImmutableArray<PastField> All { get; } = [Product, Day, Result, Escaped, .. More];

    private static bool? Flag(string? word, string yes) => word is null ? null : word == yes;

    /// <summary>An application of which nothing is told.</summary>
    public static PastApplication Blank { get; } = new(null, null, null, WordSet.Empty);
}

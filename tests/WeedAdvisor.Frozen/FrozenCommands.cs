namespace WeedAdvisor.Frozen;

/// <summary>The commands that are asked of every visit, by the names of the files their answers go to.</summary>
internal static class FrozenCommands
{
    /// <summary>Folders of up to so many visits are asked everything.</summary>
    public const int Few = 100;

    /// <summary>Every command that takes a visit, in every medium.</summary>
    public static readonly (string Name, string[] Args)[] OnVisit =
    [
        ("advise.txt", ["advise", "{visit}"]),
        ("advise-full.txt", ["advise", "{visit}", "--full", "--sources"]),
        ("advise-narrow.txt", ["advise", "{visit}", "--width", "50"]),
        ("advise.json", ["advise", "{visit}", "--format", "json"]),
        ("why.txt", ["why", "{visit}", "oxadiazon-granule"]),
        ("why-hand.txt", ["why", "{visit}", "hand-weed-now"]),
        ("why-contact.txt", ["why", "{visit}", "glufosinate-directed"]),
        ("weeding.txt", ["weeding", "{visit}"]),
        ("weeding.json", ["weeding", "{visit}", "--format", "json"]),
        ("money.txt", ["money", "{visit}"]),
        ("money.json", ["money", "{visit}", "--format", "json"]),
        ("money.html", ["money", "{visit}", "--format", "html"]),
        ("season.txt", ["season", "{visit}", "--full"]),
        ("season.json", ["season", "{visit}", "--format", "json"]),
        ("season.html", ["season", "{visit}", "--format", "html"]),
        ("season.ics", ["season", "{visit}", "--format", "ics"]),
        (
            "rate.txt",
            [
                "rate",
                "product",
                "treatment",
                "--visit",
                "{visit}",
                "--treatment",
                "oxadiazon-granule",
                "--area",
                "1000 ft2",
            ]
        ),
    ];

    /// <summary>What many visits are asked: of each topic the medium that says most.</summary>
    public static readonly string[] OfMany =
    [
        "advise.txt",
        "advise.json",
        "why.txt",
        "weeding.json",
        "money.json",
        "season.json",
    ];

    /// <summary>From so many visits on, most are asked no more than <see cref="OfThousands"/>.</summary>
    public const int Thousands = 1000;

    /// <summary>What most of thousands of visits are asked.</summary>
    public static readonly string[] OfThousands = ["advise.json", "why.txt"];

    /// <summary>What is asked where time is short: of each topic but the season.</summary>
    public static readonly string[] Quick = ["advise.txt", "advise.json", "why.txt", "weeding.json", "money.json"];

    /// <summary>The actions that thousands of visits are asked about in turn, by <c>why.txt</c>.</summary>
    public static readonly string[] AskedInTurn =
    [
        "oxadiazon-granule",
        "isoxaben-spray",
        "pendimethalin-granule",
        "clethodim-over-top",
        "pelargonic-acid-floor-spray",
        "prodiamine-granule",
        "glyphosate-outdoor-directed",
        "flumioxazin-granule",
        "s-metolachlor-spray",
        "hand-weed-now",
        "dithiopyr-granule",
    ];
}

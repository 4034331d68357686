namespace WeedAdvisor.Benchmarks.SideBySide;

/// <summary>
/// Rules, a catalogue and cases, drawn from a fixed seed: the same on every machine. The catalogue is joined about as
/// widely as the shipped rules join theirs: some eleven hundred conclusions a case.
/// </summary>
internal sealed class DrawnRules
{
    /// <summary>Rules of a set.</summary>
    public const int Rules = 300;

    private const int Records = 150,
        Cases = 24,
        Weeds = 29,
        Kinds = 24,
        Covers = 5,
        Stocks = 6,
        Stages = 4,
        Forms = 5;

    private ulong _state = 0x9E3779B97F4A7C15;

    private DrawnRules(int onCatalogue)
    {
        Set =
        [
            .. Enumerable
                .Range(0, Rules)
                .Select(i => new PlainRule(
                    $"r{i:000}",
                    Some("stock", Stocks, 3),
                    Some("kind", Kinds, 4),
                    Some("stage", Stages, 2),
                    Below(40),
                    i < onCatalogue ? Some("form", Forms, 2) : null
                )),
        ];
        Catalogue =
        [
            .. Enumerable
                .Range(0, Records)
                .Select(i => new PlainAction(
                    $"a{i:000}",
                    Some("kind", Kinds, 8),
                    Some("cover", Covers, 3),
                    One("form", Forms)
                )),
        ];
        All =
        [
            .. Enumerable
                .Range(0, Cases)
                .Select(_ => new PlainCase(
                    new PlainSite(One("cover", Covers), One("stock", Stocks)),
                    [
                        .. Enumerable
                            .Range(0, Weeds)
                            .Select(i => new PlainWeed(
                                $"w{i:00}",
                                One("kind", Kinds),
                                One("stage", Stages),
                                Below(100)
                            )),
                    ]
                )),
        ];
    }

    /// <summary>The rules.</summary>
    public IReadOnlyList<PlainRule> Set { get; }

    /// <summary>The catalogue.</summary>
    public IReadOnlyList<PlainAction> Catalogue { get; }

    /// <summary>The cases, of thirty facts each.</summary>
    public IReadOnlyList<PlainCase> All { get; }

    /// <summary>Rules on the case alone.</summary>
    public static DrawnRules OnTheCase() => new(0);

    /// <summary>Rules of which two thirds join the case with the catalogue.</summary>
    public static DrawnRules OnTheCatalogue() => new(Rules * 2 / 3);

    private string One(string word, int of) => $"{word}-{Below(of)}";

    private string[] Some(string word, int of, int count) =>
        [.. Enumerable.Range(0, count).Select(_ => One(word, of)).Distinct().Order(StringComparer.Ordinal)];

    // Marsaglia's xorshift with 64 bits.
    private int Below(int limit)
    {
        _state ^= _state << 13;
        _state ^= _state >> 7;
        _state ^= _state << 17;
        return (int)(_state % (ulong)limit);
    }
}

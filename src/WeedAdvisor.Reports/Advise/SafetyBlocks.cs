using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise;

/// <summary>The standing lines of safety under their heading.</summary>
internal static class SafetyBlocks
{
    /// <summary>The heading and the lines.</summary>
    public static IEnumerable<Block> Standing() => Standing([]);

    /// <summary>The same with more below them.</summary>
    /// <param name="more">What else has to be said of the chemical.</param>
    public static IEnumerable<Block> Standing(IEnumerable<string> more)
    {
        yield return Heading.Section("Before any chemical");
        yield return ItemList
            .Dashes(
                Safety.StandingLines.Concat(more).Select(line => Line.FromString(line) with { Tone = Tone.Warning })
            )
            .At(2);
    }
}

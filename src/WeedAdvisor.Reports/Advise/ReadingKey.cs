using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise;

/// <summary>Where the rest is found.</summary>
internal static class ReadingKey
{
    public static IEnumerable<Block> Of(SeenInAreas seen) =>
        [Heading.Section("Where the rest is"), ItemList.Dashes(Lines(seen)).At(2)];

    private static IEnumerable<Line> Lines(SeenInAreas seen)
    {
        yield return "Everything: 'weedadvisor advise VISIT --full'. All of one action: "
            + "'weedadvisor why VISIT ACTION'.";
        if (seen is { NamesTreatment: true, AnswersInHand: false })
            yield return "Ask of any chemical you have: 'weedadvisor why VISIT NAME'.";
        if (seen.HasInventedCosts)
            yield return "Costs rest on invented figures. Put your own in their place.";
        if (seen.HasClearTreatment)
            yield return "A chemical that is only named here: read all of it there before you use it.";
    }
}

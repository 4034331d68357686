using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;

namespace WeedAdvisor.Asking;

/// <summary>Asks back when a name may mean one of several weeds or treatments.</summary>
internal sealed class AskWhich(KnowledgeBase knowledge, Lines lines)
{
    private const int MostShown = 9,
        MostToldApart = 4;

    /// <summary>
    /// Puts the id of what is meant in place of the name at the beginning of a line. When it may be one of several,
    /// they are listed, the commonest first, with what tells them apart, and a number is asked for.
    /// </summary>
    /// <param name="hits">What the name finds.</param>
    /// <param name="line">The line: the name, and what follows after commas.</param>
    /// <param name="what">What is named, in one word.</param>
    /// <returns>The line, or the same one when the name finds nothing; null when it was not told which is
    /// meant.</returns>
    public string? Settle(ImmutableArray<NameHit> hits, string line, string what)
    {
        string[] parts = line.Split(',', 2);
        string? id =
            hits.IsEmpty || parts[0].Trim().Length == 0 ? parts[0]
            : NameMeaning.Sole(hits, parts[0]) is { } sole ? sole.Id
            : Which(hits, parts[0].Trim(), what);
        return id is null ? null : string.Join(',', [id, .. parts.Skip(1)]);
    }

    private string? Which(ImmutableArray<NameHit> hits, string name, string what)
    {
        NameHit[] shown = [.. hits.Take(MostShown)];
        lines.Say($"\"{name}\" may be one of {hits.Length} {what}s:", "  ");
        for (int i = 0; i < shown.Length; i++)
            lines.Say(Line(shown[i]), (i + 1).ToString(CultureInfo.InvariantCulture).PadLeft(4) + "  ");
        if (hits.Length > shown.Length)
            lines.Say($"and {hits.Length - shown.Length} more; type more of the name", "      ");
        if (hits.Length <= MostToldApart)
        {
            foreach (string tell in NameMeaning.Apart(knowledge, [.. shown.Select(hit => hit.Id)]))
                lines.Say(tell, "  ");
        }

        if (lines.Hear("Which one? its number") is not { Length: > 0 } said)
            return Nothing();
        if (
            int.TryParse(said, NumberStyles.None, CultureInfo.InvariantCulture, out int at)
            && at >= 1
            && at <= shown.Length
        )
            return shown[at - 1].Id;
        if (shown.Where(hit => Means(hit, NearWords.Fold(said))).ToArray() is [var one])
            return one.Id;
        lines.HearFirst(said);
        return Nothing();
    }

    private string Line(NameHit hit) =>
        knowledge.Weeds.TryGetValue(hit.Id, out var weed) && hit.Id == weed.Id && !weed.IsUnnamed
            ? $"{weed.Name} ({weed.Scientific})"
            : hit.Name;

    private static bool Means(NameHit hit, string folded) =>
        hit.Id == folded || NearWords.HasWords(NearWords.Fold(hit.Name), folded);

    private string? Nothing()
    {
        lines.Say("Nothing was named.", "  ");
        return null;
    }
}

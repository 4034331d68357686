using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>
/// What decides over every chemical that the page of an area names, also over the likely one: what keeps people, crop
/// and water from harm, and without what it is put on for nothing. What several share is said once. Never cut.
/// </summary>
internal static class MindSection
{
    /// <summary>The section; nothing where the page names no chemical.</summary>
    public static IEnumerable<Block> Of(PageStyle style, AreaAdvice area, PageDetail detail)
    {
        ClearAction[] named = [.. NamedChemicals.Of(style, area, detail).DistinctBy(one => one.Action)];
        HashSet<string> inHand = [.. style.Held.Where(one => one.IsUsable).Select(one => one.Action!)];
        // What is weak here is named with what it could harm, not with how to make it work; in hand it may be used.
        HashSet<string> weak =
        [
            .. style
                .Chemicals.Free.Where(one => one.Use == FreeUse.Little)
                .Select(one => one.Action)
                .Except(inHand, StringComparer.Ordinal),
        ];
        if (named.Length == 0)
            return [];
        HashSet<string> labelled = [.. WorkSection.Told(style, detail).Select(line => line.Best.Action), .. inHand];
        Line[] lines =
        [
            .. named
                .SelectMany(one =>
                    one.Cautions.Where(caution =>
                            caution.Decides && !(caution.SavesTheResult && weak.Contains(one.Action))
                        )
                        .Select(caution =>
                            (one.Action, Caution: caution, Text: style.Names.OfAny(one.Action, caution.Said))
                        )
                        .DistinctBy(said => said.Text)
                )
                .GroupBy(said => said.Text, StringComparer.Ordinal)
                .Select(group => new Shared(
                    [.. group.Select(said => said.Action)],
                    group.First().Caution.ProtectsPeople,
                    group.Count() == 1 ? Names.UnderItsName(group.First().Caution.Said) : group.Key
                ))
                // What the same chemicals share stands in one line.
                .GroupBy(one => string.Join('|', one.Whose), StringComparer.Ordinal)
                .OrderByDescending(group => group.First().Whose.Length)
                .Select(group =>
                    Whose(style, named, group.First().Whose)
                    + string.Join(" ", group.OrderBy(one => !one.IsOfPeople).Select(one => one.Text))
                )
                .Append(
                    Entry(style, [.. named.Where(one => !labelled.Contains(one.Action) && !weak.Contains(one.Action))])
                )
                .Where(text => text.Length > 0)
                .Select(text => Line.FromString(text) with { Tone = Tone.Warning }),
        ];
        return lines.Length == 0 ? [] : [Heading.Section("Mind with these chemicals"), ItemList.Dashes(lines).At(2)];
    }

    // All sprays or all granules that are named; else by name.
    private static string Whose(PageStyle style, ClearAction[] named, string[] whose)
    {
        if (whose.Length == named.Length)
            return "";
        foreach ((string form, string plural) in ((string, string)[])[("granule", "Granules"), ("spray", "Sprays")])
        {
            string[] ofForm = [.. named.Select(one => one.Action).Where(id => style.Names.Treatment(id)?.Form == form)];
            if (ofForm.Length > 1 && ofForm.Length == whose.Length && !ofForm.Except(whose).Any())
                return $"{plural}: ";
        }

        return $"{string.Join("; ", whose.Select(style.Names.Action))}: ";
    }

    // How long nobody goes in; of what is told with its label that stands there.
    private static string Entry(PageStyle style, ClearAction[] named)
    {
        string[] parts =
        [
            .. named
                .Select(one => style.Names.Treatment(one.Action))
                .OfType<Treatment>()
                .GroupBy(style.Names.EntryInBrief, StringComparer.Ordinal)
                .Select(group => $"{group.Key} after {string.Join("; ", group.Select(one => one.Name))}"),
        ];
        return parts.Length == 0 ? "" : $"Nobody in for {string.Join(", ", parts)}.";
    }

    private sealed record Shared(string[] Whose, bool IsOfPeople, string Text);
}

using System.Collections.Immutable;
using WeedAdvisor.Interview.Desks.Labels;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;

namespace WeedAdvisor.Asking;

/// <summary>Copies a label line by line into the label book.</summary>
/// <param name="shelf">The label book.</param>
/// <param name="lines">The two ends of the line.</param>
public sealed class LabelDialogue(LabelShelf shelf, Lines lines)
{
    private const int MostNamed = 8;

    /// <summary>Copies the label of a treatment that is named; without a name it says which could be.</summary>
    /// <param name="named">What was typed of its name.</param>
    public void Run(string named)
    {
        if (named.Length == 0)
        {
            List();
            return;
        }

        ImmutableArray<NameHit> hits = NameSearch.Treatments(shelf.Records, named);
        NameHit? hit =
            hits.Length == 1
                ? hits[0]
                : hits.FirstOrDefault(one =>
                    NearWords.Fold(named) is var folded && (one.Id == folded || NearWords.Fold(one.Name) == folded)
                );
        if (hit is not null)
            Copy(hit.Id);
        else if (shelf.Records.GoneAs(named) is { } gone)
            lines.Say(shelf.Records.WithdrawnText(gone), "  ");
        else if (hits.IsEmpty)
            lines.Say($"No treatment is called \"{named}\". Type label for the list.", "  ");
        else
            lines.Say($"Several fit \"{named}\": {Some(hits.Select(one => $"{one.Name} (label {one.Id})"))}.", "  ");
    }

    private void List()
    {
        lines.Say($"The label book is {shelf.FilePath}. {LabelEntry.Purpose}");
        LabelEntry[] marked = [.. LabelEntry.Of(shelf).Where(entry => !string.IsNullOrWhiteSpace(entry.Mark))];
        foreach (LabelEntry entry in marked)
            lines.Say($"{entry.Text} (label {entry.Treatment})", $"  {entry.Mark}  ");
        lines.Say("Type label and the name of a treatment to copy its label.", "  ");
    }

    private void Copy(string treatment)
    {
        var desk = new LabelDesk(shelf, treatment);
        if (!new FormDialogue(desk, lines).Run())
            return;
        string? trouble = desk.Keep();
        if (trouble is null)
            lines.Say(desk.Difference!, "  ");
        lines.Say(
            trouble is null
                ? $"Written to {shelf.FilePath}. The advice goes by it from now on."
                : $"Not written: {trouble}"
        );
    }

    private static string Some(IEnumerable<string> names)
    {
        string[] all = [.. names];
        string more = all.Length > MostNamed ? $" and {all.Length - MostNamed} more" : "";
        return string.Join(", ", all.Take(MostNamed)) + more;
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Labels;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Interview.Desks.Labels;

/// <summary>A treatment whose label can be copied.</summary>
/// <param name="Treatment">Its id.</param>
/// <param name="Mark">Why it stands where it stands: <c>yours</c>, <c>waits</c> or blank.</param>
/// <param name="Text">Its name, and the grower's name for it.</param>
public sealed record LabelEntry(string Treatment, string Mark, string Text)
{
    /// <summary>What a label book is for.</summary>
    public const string Purpose =
        "What your own label says takes the place of the record; a record is not a label, and where it is silent a "
        + "treatment waits.";

    /// <summary>
    /// Those of the book first, then those that wait here for what only a label can tell, then what is advised here,
    /// then all others by name.
    /// </summary>
    public static ImmutableArray<LabelEntry> Of(LabelShelf shelf)
    {
        var yours = shelf.Book.Labels.Select(label => new LabelEntry(
            label.Treatment,
            Padded("yours"),
            Yours(shelf, label)
        ));
        var waits = shelf
            .Wanted()
            .Select(treatment => new LabelEntry(treatment.Id, Padded("waits"), Begun(shelf, treatment)));
        var advised = shelf
            .Advised()
            .Select(treatment => new LabelEntry(treatment.Id, Padded(""), Begun(shelf, treatment)));
        var others = shelf
            .Records.Treatments.Values.OrderBy(treatment => treatment.Name, StringComparer.OrdinalIgnoreCase)
            .Select(treatment => new LabelEntry(treatment.Id, Padded(""), Begun(shelf, treatment)));
        return [.. yours.Concat(waits).Concat(advised).Concat(others).DistinctBy(entry => entry.Treatment)];
    }

    private static string Yours(LabelShelf shelf, ProductLabel label) =>
        $"{Begun(shelf, shelf.Records.Treatments[label.Treatment])} ({label.Name})";

    private static string Begun(LabelShelf shelf, Treatment treatment) =>
        shelf.IsBegun(treatment.Id) ? $"{treatment.Name}: begun, not kept" : treatment.Name;

    private static string Padded(string mark) => mark.PadRight(5);
}

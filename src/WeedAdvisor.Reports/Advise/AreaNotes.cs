using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>What is known of a weed or a crop that is there.</summary>
/// <param name="Of">Its id.</param>
/// <param name="Name">Its name.</param>
/// <param name="Texts">What its record notes of it.</param>
internal sealed record Note(string Of, string Name, ImmutableArray<string> Texts);

/// <summary>
/// What the records note of the weeds seen, the widest first, and of the crops that stand there and the groups that
/// they belong to.
/// </summary>
internal static class AreaNotes
{
    /// <summary>The notes of an area: each once.</summary>
    public static ImmutableArray<Note> Of(Names names, AreaReading reading) =>
        [.. OfWeeds(names, reading), .. OfCrops(names, reading)];

    /// <summary>What is noted of the weeds seen, the widest first.</summary>
    public static IEnumerable<Note> OfWeeds(Names names, AreaReading reading) =>
        (reading.Area.Weeds ?? [])
            .OrderByDescending(seen => seen.CoverPercent)
            .Select(seen => seen.Weed)
            .Distinct()
            .Select(weed => new Note(weed, names.Weed(weed), names.NotesOfWeed(weed)))
            .Where(note => !note.Texts.IsEmpty);

    /// <summary>The notes of an area under their heading; nothing where nothing is noted.</summary>
    public static IEnumerable<Block> Blocks(Names names, AreaReading reading)
    {
        ImmutableArray<Note> notes = Of(names, reading);
        if (notes.IsEmpty)
            yield break;
        yield return Heading.Section("Of these weeds and crops");
        yield return ItemList
            .Dashes(
                notes.Select(note =>
                    Line.Of($"{new Named(Figures.Sentence(note.Name))}: {string.Join(" ", note.Texts)}")
                )
            )
            .At(2);
    }

    private static IEnumerable<Note> OfCrops(Names names, AreaReading reading) =>
        reading
            .Crops.Select(names.Crop)
            .OfType<Crop>()
            .SelectMany(crop => crop.IsA.Prepend(crop.Id))
            .Distinct()
            .Select(names.Crop)
            .OfType<Crop>()
            .Select(crop => new Note(crop.Id, crop.Name, crop.Notes))
            .Where(note => !note.Texts.IsEmpty);
}

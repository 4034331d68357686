using System.Globalization;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Files;

/// <summary>
/// An interview that was broken off, found at the start and held until it is decided what becomes of it.
/// </summary>
/// <param name="Draft">What was kept of it.</param>
/// <param name="Slot">Where it is kept.</param>
/// <param name="IsFuller">Whether it is the state before most of the visit was taken out.</param>
public sealed record BrokenOff(Draft Draft, DraftSlot Slot, bool IsFuller)
{
    private const int MostAreas = 4;

    /// <summary>Where it stands.</summary>
    public string Path => IsFuller ? Slot.FullerPath : Slot.DraftPath;

    /// <summary>What it is, in one or two sentences.</summary>
    public string Told
    {
        get
        {
            Visit visit = Draft.Visit;
            string areas = string.Join(", ", visit.Areas.Select(area => area.Name).Take(MostAreas));
            string nursery = visit.Nursery is null ? "" : $" at {visit.Nursery}";
            string file = Draft.File is null ? "It is in no file yet." : $"Its file is {Draft.File}.";
            string fuller = IsFuller ? " This is how it stood before most of it was taken out." : "";
            return $"The interview of {Answering.Date(visit.Date)}{nursery} ({areas}) was broken off before it was "
                + $"saved. {file}{fuller}";
        }
    }

    /// <summary>Puts it aside under a name that no other file has.</summary>
    /// <returns>A sentence that tells where it is.</returns>
    public string Decline() => PutAside(Path, Answering.Date(Draft.Visit.Date));

    /// <summary>Puts a file of the state folder aside under a name that no other file has.</summary>
    /// <param name="path">The file.</param>
    /// <param name="name">What tells it from others.</param>
    /// <returns>A sentence that tells where it is.</returns>
    public static string PutAside(string path, string name)
    {
        string folder = System.IO.Path.GetDirectoryName(path)!;
        try
        {
            for (int number = 1; ; number++)
            {
                string count = number == 1 ? "" : "-" + number.ToString(CultureInfo.InvariantCulture);
                string aside = System.IO.Path.Combine(folder, $"declined-{name}{count}.yaml");
                if (File.Exists(aside))
                    continue;
                File.Move(path, aside, overwrite: false);
                return $"It is put aside in {aside}.";
            }
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return $"It could not be put aside: {e.Message.ReplaceLineEndings(" ")}";
        }
    }
}

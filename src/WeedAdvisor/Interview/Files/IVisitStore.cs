using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Files;

/// <summary>Reads and writes visit files.</summary>
public interface IVisitStore
{
    /// <summary>Reads a visit.</summary>
    /// <returns>The visit, or the lines that say what is wrong with the file.</returns>
    public (Visit? Visit, IReadOnlyList<string> Problems) Load(string path);

    /// <summary>Whether there is a file already.</summary>
    public bool Exists(string path);

    /// <summary>Writes a visit whole or not at all.</summary>
    /// <param name="path">The file.</param>
    /// <param name="visit">The visit.</param>
    /// <param name="basis">
    /// The file that the visit was read from or last saved to, whose comments it keeps; null when it stands in none.
    /// </param>
    /// <param name="over">Whether to write over a file that was changed by others since it was read.</param>
    public Outcome<Saved, NotSaved> Save(string path, Visit visit, string? basis = null, bool over = false);

    /// <summary>What a file held when it was last read or written here; null when it was not.</summary>
    public FileStamp? StampOf(string path);

    /// <summary>Goes on with a file that was read before this start.</summary>
    /// <param name="path">The file.</param>
    /// <param name="stamp">What it held when it was read; null when that is not known.</param>
    public void Resume(string path, FileStamp? stamp);
}

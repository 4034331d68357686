using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview;

/// <summary>Reads and writes visit files.</summary>
public interface IVisitStore
{
    /// <summary>Reads a visit.</summary>
    /// <returns>The visit, or the lines that say what is wrong with the file.</returns>
    public (Visit? Visit, IReadOnlyList<string> Problems) Load(string path);

    /// <summary>Whether there is a file already.</summary>
    public bool Exists(string path);

    /// <summary>Writes a visit whole or not at all.</summary>
    /// <returns>Why it could not be written, in one line, or null when it was.</returns>
    public string? Save(string path, Visit visit);
}

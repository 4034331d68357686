using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Files;

/// <summary>
/// Writes files of the grower. What a file held before the program first wrote to it is kept beside it as
/// <c>NAME.bak</c>, or as <c>NAME.1.bak</c> and so on where that name is taken by a file that is not the program's own
/// copy. Later writes make no further copy, so that the first one is not lost, unless another program has written in
/// between.
/// </summary>
/// <param name="ledger">Which copies are the program's own.</param>
public sealed class FileSaver(BackupLedger ledger)
{
    private const int MostCopies = 1000;

    private readonly Dictionary<string, FileStamp> _written = new(StringComparer.Ordinal);
    private readonly Dictionary<string, string> _copies = new(StringComparer.Ordinal);

    /// <summary>The copy that was made of a file since the start; null when there is none.</summary>
    public string? CopyOf(string path) => _copies.GetValueOrDefault(AtomicFile.Target(path));

    /// <summary>Writes a file whole or not at all. When it holds the bytes already it is left alone.</summary>
    /// <returns>The copy that was made of what was there before; null when none was.</returns>
    /// <exception cref="IOException">It can't be written; what was there before is untouched.</exception>
    /// <exception cref="UnauthorizedAccessException">The same, for want of permission.</exception>
    public string? Write(string path, ReadOnlySpan<byte> bytes)
    {
        string target = AtomicFile.Target(path);
        var wanted = FileStamp.Of(bytes);
        string? copy = null;
        if (FileKinds.Of(target) == FileKind.Regular)
        {
            var now = FileStamp.OfFile(target);
            if (now == wanted)
                return null;
            if (_written.GetValueOrDefault(target) != now)
                copy = Copied(target, now);
        }

        AtomicFile.Write(target, bytes);
        _written[target] = wanted;
        if (copy is not null)
            _copies[target] = copy;
        return copy;
    }

    private string Copied(string target, FileStamp now)
    {
        for (int number = 0; number < MostCopies; number++)
        {
            // All end alike: so a knowledge folder passes them over.
            string copy = number == 0 ? $"{target}.bak" : $"{target}.{number}.bak";
            FileKind kind = FileKinds.Of(copy);
            bool isLink = new FileInfo(copy).LinkTarget is not null;
            FileStamp? held = kind == FileKind.Regular && !isLink ? FileStamp.OfFile(copy) : null;
            if (held == now)
                return copy;
            bool isFree = kind == FileKind.Missing && !isLink;
            if (!isFree && (held is null || !ledger.MayReplace(copy, held)))
                continue;
            AtomicFile.Copy(target, copy, overwrite: !isFree);
            ledger.Note(copy, now);
            return copy;
        }

        throw new IOException($"There are {MostCopies} copies of it already.");
    }
}

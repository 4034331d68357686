using System.Text;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>
/// Writes a file so that, whenever the machine stops, either the old or the new content is there, whole. The copy that
/// was there before is kept beside it as <c>NAME.bak</c>.
/// </summary>
public static class AtomicFile
{
    private static readonly UTF8Encoding s_utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>
    /// Writes the text as UTF-8: to a new file in the same folder, forced to the disk, then renamed over the old one.
    /// The old file's permissions are kept. A symbolic link is followed, so that the link stays and its target changes.
    /// </summary>
    /// <param name="path">The file to write.</param>
    /// <param name="text">Its new content.</param>
    /// <exception cref="IOException">The file can't be written; what was there before is untouched.</exception>
    /// <exception cref="UnauthorizedAccessException">The same, for want of permission.</exception>
    public static void Write(string path, string text)
    {
        string target = Target(path);
        string folder = Path.GetDirectoryName(target)
            ?? throw new IOException($"'{path}' is not the path of a file.");
        string temporary = Path.Combine(folder, $".{Path.GetFileName(target)}.{Path.GetRandomFileName()}.tmp");
        try
        {
            WriteThrough(temporary, s_utf8.GetBytes(text));
            if (File.Exists(target))
                Replace(temporary, target);
            else
                File.Move(temporary, target, overwrite: true);
        }
        catch
        {
            // Without its folder the file was never made, and deleting it would hide why.
            if (File.Exists(temporary))
                File.Delete(temporary);
            throw;
        }
    }

    private static string Target(string path)
    {
        var file = new FileInfo(path);
        return file.LinkTarget is null ? file.FullName : file.ResolveLinkTarget(returnFinalTarget: true)!.FullName;
    }

    private static void WriteThrough(string path, byte[] bytes)
    {
        using var stream = new FileStream(path, FileMode.CreateNew, FileAccess.Write, FileShare.None);
        stream.Write(bytes);
        stream.Flush(flushToDisk: true);
    }

    // On Unix this links the old file as the backup and renames the new one over it; at no time is there no file.
    private static void Replace(string temporary, string target)
    {
        if (!OperatingSystem.IsWindows())
            File.SetUnixFileMode(temporary, File.GetUnixFileMode(target));
        File.Replace(temporary, target, target + ".bak", ignoreMetadataErrors: true);
    }
}

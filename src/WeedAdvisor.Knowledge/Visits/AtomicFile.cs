using System.Text;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>
/// Writes a file so that, whenever the machine stops, either the old or the new content is there, whole.
/// </summary>
public static class AtomicFile
{
    private static readonly UTF8Encoding s_utf8 = new(encoderShouldEmitUTF8Identifier: false);

    /// <summary>Writes the text as UTF-8.</summary>
    /// <inheritdoc cref="Write(string, ReadOnlySpan{byte})"/>
    public static void Write(string path, string text) => Write(path, s_utf8.GetBytes(text));

    /// <summary>
    /// Writes to a new file in the same folder, forced to the disk, then renamed over the old one. The old file's
    /// permissions are kept. A symbolic link is followed, so that the link stays and its target changes. What is no
    /// file, such as a device or a pipe, is neither opened nor replaced.
    /// </summary>
    /// <param name="path">The file to write.</param>
    /// <param name="bytes">Its new content.</param>
    /// <exception cref="IOException">The file can't be written; what was there before is untouched.</exception>
    /// <exception cref="UnauthorizedAccessException">The same, for want of permission.</exception>
    public static void Write(string path, ReadOnlySpan<byte> bytes)
    {
        string target = Target(path);
        FileKind kind = FileKinds.Of(target);
        if (kind is not (FileKind.Missing or FileKind.Regular))
            throw new IOException($"It is {kind.Name()}, not a file.");
        string temporary = Beside(target);
        try
        {
            WriteThrough(temporary, bytes, kind == FileKind.Regular ? target : null);
            File.Move(temporary, target, overwrite: true);
        }
        catch
        {
            DeleteIfThere(temporary);
            throw;
        }
    }

    /// <summary>Copies a file with its permissions; the copy is there whole or not at all.</summary>
    /// <param name="path">The file.</param>
    /// <param name="copy">The path of the copy.</param>
    /// <param name="overwrite">Whether a file that is there already may be replaced.</param>
    /// <exception cref="IOException">It can't be copied.</exception>
    /// <exception cref="UnauthorizedAccessException">The same, for want of permission.</exception>
    public static void Copy(string path, string copy, bool overwrite)
    {
        string temporary = Beside(copy);
        try
        {
            File.Copy(path, temporary);
            File.Move(temporary, copy, overwrite);
        }
        catch
        {
            DeleteIfThere(temporary);
            throw;
        }
    }

    /// <summary>
    /// The file that is meant by a path: the last target of a link, else the path itself, made absolute.
    /// </summary>
    public static string Target(string path)
    {
        var file = new FileInfo(path);
        return file.LinkTarget is null ? file.FullName : file.ResolveLinkTarget(returnFinalTarget: true)!.FullName;
    }

    private static string Beside(string target)
    {
        string folder = Path.GetDirectoryName(target)
            ?? throw new IOException($"'{target}' is not the path of a file.");
        return Path.Combine(folder, $".{Path.GetFileName(target)}.{Path.GetRandomFileName()}.tmp");
    }

    private static void WriteThrough(string path, ReadOnlySpan<byte> bytes, string? likeness)
    {
        var options = new FileStreamOptions
        {
            Mode = FileMode.CreateNew,
            Access = FileAccess.Write,
            Share = FileShare.None,
        };
        UnixFileMode? mode = likeness is null || OperatingSystem.IsWindows() ? null : File.GetUnixFileMode(likeness);

        // Never, not even for a moment, readable for more than the old one was.
        if (!OperatingSystem.IsWindows() && mode is { } narrow)
            options.UnixCreateMode = narrow & (UnixFileMode.UserRead | UnixFileMode.UserWrite);
        using var stream = new FileStream(path, options);
        stream.Write(bytes);
        stream.Flush(flushToDisk: true);
        if (!OperatingSystem.IsWindows() && mode is { } whole)
            File.SetUnixFileMode(stream.SafeFileHandle, whole);
    }

    // Without its folder the file was never made, and deleting it would hide why.
    private static void DeleteIfThere(string path)
    {
        if (File.Exists(path))
            File.Delete(path);
    }
}

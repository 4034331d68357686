using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>Reads files, never more of them than allowed; what the system refuses becomes a problem.</summary>
internal static class FileBytes
{
    private const int BufferSize = 4096;

    /// <summary>The bytes of the file, or a problem and null.</summary>
    /// <param name="path">The path to open.</param>
    /// <param name="shown">The name to show in a problem.</param>
    /// <param name="limit">The most bytes to accept.</param>
    /// <param name="problem">What went wrong.</param>
    public static byte[]? Read(string path, string shown, int limit, out Problem? problem)
    {
        problem = null;
        try
        {
            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
            byte[] bytes = ReadUpTo(stream, limit + 1);
            if (bytes.Length <= limit)
                return bytes;
            problem = SourceText.TooLarge(shown, limit);
        }
        catch (UnauthorizedAccessException) when (Directory.Exists(path))
        {
            problem = new Problem(Place.Whole(shown), "a folder", "a file");
        }
        catch (Exception e) when (e is FileNotFoundException or DirectoryNotFoundException)
        {
            problem = new Problem(Place.Whole(shown), "no such file", "a file that exists");
        }
        catch (Exception e)
            when (e is IOException or UnauthorizedAccessException or ArgumentException or NotSupportedException)
        {
            problem = new Problem(Place.Whole(shown), $"a file that cannot be read ({e.Message})", "a readable file");
        }

        return null;
    }

    // The length that the system gives is only a hint: a pipe or device has none, and a file may grow meanwhile. Where
    // it is right, as it nearly always is, nothing is copied.
    private static byte[] ReadUpTo(FileStream stream, int most)
    {
        byte[] buffer = new byte[(int)Math.Clamp(stream.CanSeek ? stream.Length : 0, 0, most)];
        int filled = stream.ReadAtLeast(buffer, buffer.Length, throwOnEndOfStream: false);
        int next = filled == buffer.Length && filled < most ? stream.ReadByte() : -1;
        if (next < 0)
            return filled == buffer.Length ? buffer : buffer[..filled];
        Array.Resize(ref buffer, Math.Clamp(filled * 2, BufferSize, most));
        buffer[filled++] = (byte)next;
        while (true)
        {
            int read = stream.Read(buffer, filled, buffer.Length - filled);
            filled += read;
            if (read == 0 || filled == most)
                return buffer[..filled];
            if (filled == buffer.Length)
                Array.Resize(ref buffer, Math.Min(buffer.Length * 2, most));
        }
    }
}

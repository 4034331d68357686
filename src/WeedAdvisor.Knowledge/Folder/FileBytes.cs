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
            if (Directory.Exists(path))
            {
                problem = new Problem(Place.Whole(shown), "a folder", "a file");
                return null;
            }

            using var stream = new FileStream(path, FileMode.Open, FileAccess.Read, FileShare.ReadWrite, bufferSize: 0);
            byte[] bytes = ReadUpTo(stream, limit + 1);
            if (bytes.Length <= limit)
                return bytes;
            problem = SourceText.TooLarge(shown, limit);
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

    // The length that the system gives is only a hint: a pipe or device has none, and a file may grow meanwhile.
    private static byte[] ReadUpTo(FileStream stream, int most)
    {
        long hint = stream.CanSeek ? stream.Length : 0;
        byte[] buffer = new byte[(int)Math.Clamp(hint + 1, BufferSize, most)];
        int filled = 0;
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

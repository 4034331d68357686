namespace WeedAdvisor.Interview.Files;

/// <summary>
/// Lock files that tell whether a window is alive: the system lets them go when the process ends, however it ends.
/// </summary>
internal static class WindowLock
{
    /// <summary>
    /// Holds a lock until the stream is closed, which deletes it too. Its folder is made when it is missing.
    /// </summary>
    /// <exception cref="IOException">Another window holds it, or it can't be made.</exception>
    /// <exception cref="UnauthorizedAccessException">It can't be made, for want of permission.</exception>
    public static FileStream Hold(string path)
    {
        MakeFolder(Path.GetDirectoryName(path)!);
        return new FileStream(
            path,
            FileMode.OpenOrCreate,
            FileAccess.ReadWrite,
            FileShare.None,
            bufferSize: 1,
            FileOptions.DeleteOnClose
        );
    }

    /// <summary>The same; null when it can't be held.</summary>
    public static FileStream? TryHold(string path)
    {
        try
        {
            return Hold(path);
        }
        catch (Exception e) when (e is IOException or UnauthorizedAccessException)
        {
            return null;
        }
    }

    /// <summary>A name that no other window has.</summary>
    public static string NewId() => Path.GetRandomFileName().Replace(".", "", StringComparison.Ordinal);

    // What is under way is nobody else's business.
    private static void MakeFolder(string folder)
    {
        if (OperatingSystem.IsWindows())
            Directory.CreateDirectory(folder);
        else
            Directory.CreateDirectory(
                folder,
                UnixFileMode.UserRead | UnixFileMode.UserWrite | UnixFileMode.UserExecute
            );
    }
}

using System.Runtime.InteropServices;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>What stands under a path.</summary>
public enum FileKind
{
    /// <summary>Nothing, or a link to nothing.</summary>
    Missing,

    /// <summary>A file.</summary>
    Regular,

    /// <summary>A folder.</summary>
    Folder,

    /// <summary>A device, such as a terminal or a disk.</summary>
    Device,

    /// <summary>A pipe.</summary>
    Pipe,

    /// <summary>A socket.</summary>
    Socket,
}

/// <summary>
/// Tells what stands under a path without opening it: opening a pipe waits for its other end, and opening a device may
/// do something.
/// </summary>
public static class FileKinds
{
    private const int KindMask = 0xF000,
        Pipe = 0x1000,
        CharacterDevice = 0x2000;
    private const int Folder = 0x4000,
        BlockDevice = 0x6000,
        Socket = 0xC000;

    // More than the runtime's own record of a file has; its first two fields are flags and mode.
    private const int StatusSize = 1024;

    /// <summary>What stands there; links are followed.</summary>
    public static FileKind Of(string path)
    {
        if (OperatingSystem.IsWindows())
            return OfWindows(path);
        int mode = Mode(path);
        return (mode & KindMask) switch
        {
            _ when mode < 0 => File.Exists(path) ? FileKind.Regular : FileKind.Missing,
            Folder => FileKind.Folder,
            CharacterDevice or BlockDevice => FileKind.Device,
            Pipe => FileKind.Pipe,
            Socket => FileKind.Socket,
            _ => FileKind.Regular,
        };
    }

    /// <summary>What a kind is called: <c>a pipe</c>.</summary>
    public static string Name(this FileKind kind) =>
        kind switch
        {
            FileKind.Missing => "nothing",
            FileKind.Regular => "a file",
            _ => "a " + kind.ToString().ToLowerInvariant(),
        };

    private static FileKind OfWindows(string path)
    {
        if (path.StartsWith(@"\\.\", StringComparison.Ordinal))
            return FileKind.Device;
        return Directory.Exists(path) ? FileKind.Folder
            : File.Exists(path) ? FileKind.Regular
            : FileKind.Missing;
    }

    private static int Mode(string path)
    {
        try
        {
            byte[] status = new byte[StatusSize];
            return Stat(path, status) == 0 ? BitConverter.ToInt32(status, sizeof(int)) : -1;
        }
        catch (Exception e) when (e is DllNotFoundException or EntryPointNotFoundException)
        {
            return -1;
        }
    }

    // The library has no question for this that does not open the file; the runtime asks the system through this.
    [DllImport("libSystem.Native", EntryPoint = "SystemNative_Stat")]
    [DefaultDllImportSearchPaths(DllImportSearchPath.SafeDirectories)]
    private static extern int Stat([MarshalAs(UnmanagedType.LPUTF8Str)] string path, [Out] byte[] status);
}

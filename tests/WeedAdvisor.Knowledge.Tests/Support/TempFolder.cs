using System.Text;

namespace WeedAdvisor.Knowledge.Tests.Support;

/// <summary>A folder of its own for one test; gone when the test is.</summary>
internal sealed class TempFolder : IDisposable
{
    private readonly DirectoryInfo _folder = Directory.CreateTempSubdirectory("weedadvisor-");

    public string Path => _folder.FullName;

    public string At(string name) => System.IO.Path.Combine(Path, name);

    public string Write(string name, string text) => Write(name, Encoding.UTF8.GetBytes(text));

    public string Write(string name, ReadOnlySpan<byte> bytes)
    {
        string path = At(name);
        Directory.CreateDirectory(System.IO.Path.GetDirectoryName(path)!);
        using var stream = new FileStream(path, FileMode.Create);
        stream.Write(bytes);
        return path;
    }

    public void Dispose() => _folder.Delete(recursive: true);
}

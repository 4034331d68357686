using System.Text;

namespace WeedAdvisor.Tests.Commands;

/// <summary>A copy of the small knowledge that a test may spoil; gone when it is disposed.</summary>
internal sealed class RulesCopy : IDisposable
{
    public RulesCopy(bool backwards = false)
    {
        string[] files = Directory.GetFiles(CommandRun.SmallRules, "*.yaml", SearchOption.AllDirectories);
        Array.Sort(files, StringComparer.Ordinal);
        if (backwards)
            Array.Reverse(files);
        foreach (string file in files)
        {
            string copy = Path.Combine(Folder, Path.GetRelativePath(CommandRun.SmallRules, file));
            Directory.CreateDirectory(Path.GetDirectoryName(copy)!);
            File.Copy(file, copy);
        }
    }

    public string Folder { get; } = Directory.CreateTempSubdirectory("weedadvisor-").FullName;

    public void Replace(string file, string old, string now)
    {
        string path = Path.Combine(Folder, file);
        string text = File.ReadAllText(path);
        Assert.Contains(old, text, StringComparison.Ordinal);
        using var stream = new FileStream(path, FileMode.Create);
        stream.Write(Encoding.UTF8.GetBytes(text.Replace(old, now, StringComparison.Ordinal)));
    }

    public void Dispose() => Directory.Delete(Folder, recursive: true);
}

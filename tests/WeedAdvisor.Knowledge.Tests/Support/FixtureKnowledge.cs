using System.Text;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Tests.Support;

/// <summary>
/// A small valid knowledge folder, held in memory, to be changed in one place and loaded. Its facts are made up for
/// the tests; they say nothing of real weeds or chemicals.
/// </summary>
internal sealed class FixtureKnowledge
{
    private readonly SortedDictionary<string, byte[]> _files = new(StringComparer.Ordinal);

    public FixtureKnowledge()
    {
        foreach ((string path, string text) in FixtureFiles.All)
            _files[path] = Encoding.UTF8.GetBytes(text);
    }

    public IEnumerable<string> Paths => _files.Keys;

    public static KnowledgeBase Good { get; } =
        new FixtureKnowledge().Load().Value
        ?? throw new InvalidOperationException(
            "the fixture must be valid: " + new FixtureKnowledge().Load().Refusals[0]
        );

    public byte[] this[string path] => _files[path];

    public string Text(string path) => Encoding.UTF8.GetString(_files[path]);

    public FixtureKnowledge With(string path, string text) => With(path, Encoding.UTF8.GetBytes(text));

    public FixtureKnowledge With(string path, byte[] bytes)
    {
        _files[path] = bytes;
        return this;
    }

    public FixtureKnowledge Without(string path)
    {
        Assert.True(_files.Remove(path), path);
        return this;
    }

    public FixtureKnowledge Change(string path, string old, string changed)
    {
        string text = Text(path);
        Assert.Contains(old, text);
        int at = text.IndexOf(old, StringComparison.Ordinal);
        return With(path, text[..at] + changed + text[(at + old.Length)..]);
    }

    public void WriteTo(TempFolder folder, IEnumerable<string>? order = null)
    {
        foreach (string path in order ?? Paths)
            folder.Write(path, _files[path]);
    }

    public Outcome<KnowledgeBase, Problem> Load(KnowledgeScope scope = KnowledgeScope.Whole)
    {
        using var folder = new TempFolder();
        WriteTo(folder);
        return KnowledgeFolder.Load(folder.Path, scope);
    }
}

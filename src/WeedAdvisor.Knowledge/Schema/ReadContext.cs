using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>What the readers of one file share: its name, the valid words, and the problems found so far.</summary>
internal sealed class ReadContext(string file, Lexicon lexicon)
{
    // No person reads further, and a hostile file could otherwise fill the memory with messages.
    private const int MostProblems = 500;
    private const int MostNamed = 6;

    private readonly List<Problem> _problems = [];

    /// <summary>The file's name, as problems show it.</summary>
    public string File { get; } = file;

    /// <summary>The valid words.</summary>
    public Lexicon Lexicon { get; } = lexicon;

    /// <summary>The problems found so far.</summary>
    public IReadOnlyList<Problem> Problems => _problems;

    /// <summary>The place of a node.</summary>
    public Place At(Node node) => new(File, node.Line, node.Column);

    /// <summary>Notes a problem and lets the reader go on, so that all problems come out in one go.</summary>
    public void Report(Node where, string found, string expected, string? nearest = null)
    {
        if (_problems.Count < MostProblems)
            _problems.Add(new Problem(At(where), found, expected, nearest));
        else if (_problems.Count == MostProblems)
            _problems.Add(new Problem(At(where), "more problems than are listed", "the others put right first"));
    }

    /// <summary>Checks a word against a list of valid ones.</summary>
    public void CheckWord(Node where, string word, ValidWords? valid)
    {
        if (valid is null || valid.Contains(word))
            return;
        IReadOnlyList<string> meant = valid.MeantBy(word);
        if (meant.Count > 1)
            Report(where, $"'{word}', which may be {Listed(meant)}", "the one of them that is meant");
        else if ((meant.Count == 1 ? meant[0] : valid.Nearest(word)) is { } near)
            Report(where, $"'{word}'", valid.Expected, near);
        else
            Report(where, $"'{word}'", valid.ExpectedOfStranger);
    }

    private static string Listed(IReadOnlyList<string> words) =>
        words.Count <= MostNamed
            ? string.Join(" or ", words)
            : $"{string.Join(", ", words.Take(MostNamed))} or one of {words.Count - MostNamed} more";
}

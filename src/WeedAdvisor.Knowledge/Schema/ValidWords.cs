using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>The words that are valid in one place, and what to call them.</summary>
internal sealed class ValidWords
{
    // More than this is a catalogue; naming it says more than listing it.
    private const int MostListed = 14;

    private static readonly Dictionary<string, IEnumerable<string>> s_noNames = [];

    private readonly HashSet<string> _words;
    private readonly string _name;
    private string? _expected;

    /// <summary>Words under a name such as <c>a word of list 'weed-kind'</c>.</summary>
    public ValidWords(string name, IEnumerable<string> words)
    {
        _name = name;
        _words = new HashSet<string>(words, StringComparer.Ordinal);
    }

    /// <summary>Other names of the words, by which people may call them.</summary>
    public IReadOnlyDictionary<string, IEnumerable<string>> Names { get; init; } = s_noNames;

    /// <summary>The catalogue that lists the words; null when none does.</summary>
    public string? Catalogue { get; init; }

    /// <summary>The words, in no order.</summary>
    public IEnumerable<string> All => _words;

    /// <summary>What was expected, for a problem's text.</summary>
    // Handed to every reader of such a word, whether or not anything is wrong with it.
    public string Expected =>
        _expected ??= _words.Count is 0 or > MostListed
            ? _name
            : $"{_name}: {string.Join(", ", _words.Order(StringComparer.Ordinal))}";

    /// <summary>The same for a word that is near to none: where all of them can be read.</summary>
    public string ExpectedOfStranger =>
        Catalogue is null || _words.Count <= MostListed
            ? Expected
            : $"{_name}; 'weedadvisor knowledge list {Catalogue}' names them";

    /// <summary>Whether the word is valid.</summary>
    public bool Contains(string word) => _words.Contains(word);

    /// <summary>The nearest valid word, or null.</summary>
    public string? Nearest(string word) => NearestWord.Of(word, _words);

    /// <summary>
    /// The words that a name may mean: those that are called just so, else those whose names hold it.
    /// </summary>
    public IReadOnlyList<string> MeantBy(string name)
    {
        string folded = FoldedWords.Of(name);
        if (folded.Length == 0)
            return [];
        string[] whole = Called(called => called == folded);
        return whole.Length > 0 ? whole : Called(called => FoldedWords.Has(called, folded));

        string[] Called(Func<string, bool> fits) =>
            [
                .. Names
                    .Where(one => one.Value.Select(FoldedWords.Of).Any(fits))
                    .Select(one => one.Key)
                    .Order(StringComparer.Ordinal),
            ];
    }
}

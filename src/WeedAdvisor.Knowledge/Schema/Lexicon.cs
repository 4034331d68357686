using System.Collections.Concurrent;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>
/// Every word that one part of the knowledge may use because another part declares it. Asked by the notation of
/// <see cref="AttributeDefinition.Words"/>, and by the notations of <see cref="LexiconBuilder"/>. No check is skipped
/// unless what declares its words is broken or was left out: that is told elsewhere. Safe to share between threads.
/// </summary>
internal sealed class Lexicon
{
    private const string FixedWords = "words:";
    private readonly IReadOnlyDictionary<string, ValidWords> _declared;
    private readonly IReadOnlySet<string> _open;
    private readonly bool _isOfFiles;
    private readonly ConcurrentDictionary<string, ValidWords> _fixed = new(StringComparer.Ordinal);
    private readonly ConcurrentDictionary<string, ValidWords> _undeclared = new(StringComparer.Ordinal);

    /// <summary>A lexicon of the given words.</summary>
    /// <param name="declared">The words, by notation.</param>
    /// <param name="open">
    /// The notations whose words are not known, because what declares them is broken or was not read; one that ends in
    /// a colon stands for all that begin with it.
    /// </param>
    /// <param name="isOfFiles">Whether whoever reads the files tells what is <see cref="Undeclared"/>.</param>
    public Lexicon(IReadOnlyDictionary<string, ValidWords> declared, IReadOnlySet<string> open, bool isOfFiles)
    {
        _isOfFiles = isOfFiles;
        _declared = declared;
        _open = open;
    }

    /// <summary>The notations that were asked for though nothing declares them, in ordinal order.</summary>
    public IEnumerable<string> Undeclared => _undeclared.Keys.Order(StringComparer.Ordinal);

    /// <summary>
    /// The valid words: none at all where nothing declares them, so that every word is refused. Null when what declares
    /// them is broken, missing or was not read: that is a problem of its own, and a hundred problems that follow from
    /// it would only hide it.
    /// </summary>
    public ValidWords? Of(string notation)
    {
        if (notation.StartsWith(FixedWords, StringComparison.Ordinal))
            return _fixed.GetOrAdd(notation, static key => new ValidWords(
                "one of",
                key[FixedWords.Length..].Split('|')
            ));
        if (_declared.TryGetValue(notation, out ValidWords? words))
            return words;
        if (IsOpen(notation))
            return null;
        ValidWords none = _undeclared.GetOrAdd(notation, LexiconBuilder.NoWords);
        return _isOfFiles ? null : none;
    }

    private bool IsOpen(string notation) =>
        _open.Contains(notation) || _open.Contains(notation[..(notation.IndexOf(':', StringComparison.Ordinal) + 1)]);
}

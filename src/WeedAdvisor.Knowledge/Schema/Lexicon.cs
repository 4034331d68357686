using System.Collections.Concurrent;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>
/// Every word that one part of the knowledge may use because another part declares it. Asked by the notation of
/// <see cref="AttributeDefinition.Words"/>, and by <c>regions</c>, <c>findings</c>, <c>sources</c>, <c>judgements</c>,
/// <c>prices</c>, <c>questions</c>, <c>grades</c>, and <c>targets</c> and <c>targets-or-all</c> (what a rating or
/// effect can be on). Safe to share between threads.
/// </summary>
internal sealed class Lexicon
{
    private const string FixedWords = "words:";
    private readonly IReadOnlyDictionary<string, ValidWords> _declared;
    private readonly ConcurrentDictionary<string, ValidWords> _fixed = new(StringComparer.Ordinal);

    /// <summary>A lexicon of the given words.</summary>
    public Lexicon(IReadOnlyDictionary<string, ValidWords> declared) => _declared = declared;

    /// <summary>
    /// The valid words, or null when the file that declares them is broken or missing: that is a problem of its own,
    /// and a hundred problems that follow from it would only hide it.
    /// </summary>
    public ValidWords? Of(string notation)
    {
        if (!notation.StartsWith(FixedWords, StringComparison.Ordinal))
            return _declared.GetValueOrDefault(notation);
        return _fixed.GetOrAdd(notation, static key => new ValidWords("one of", key[FixedWords.Length..].Split('|')));
    }
}

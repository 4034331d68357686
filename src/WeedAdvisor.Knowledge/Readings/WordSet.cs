using System.Collections;
using System.Collections.Immutable;
using System.Runtime.InteropServices;

namespace WeedAdvisor.Knowledge.Readings;

/// <summary>
/// An immutable set of words in ordinal order. Two sets with the same words are equal, so rule nodes can be shared.
/// </summary>
public sealed class WordSet : IEquatable<WordSet>, IReadOnlyCollection<string>
{
    private readonly ImmutableArray<string> _words;

    private WordSet(ImmutableArray<string> words) => _words = words;

    /// <summary>The set without words.</summary>
    public static WordSet Empty { get; } = new([]);

    /// <inheritdoc/>
    public int Count => _words.Length;

    /// <summary>A set of the given words; order and repetition do not matter.</summary>
    public static WordSet Of(params IEnumerable<string> words)
    {
        string[] sorted = [.. words];
        if (sorted.Length == 0)
            return Empty;
        // Most come in order and each once, from a catalogue or from a careful writer.
        if (!IsAscending(sorted))
        {
            Array.Sort(sorted, StringComparer.Ordinal);
            sorted = Once(sorted);
        }

        return new WordSet(ImmutableCollectionsMarshal.AsImmutableArray(sorted));
    }

    private static bool IsAscending(string[] words)
    {
        for (int i = 1; i < words.Length; i++)
        {
            if (string.CompareOrdinal(words[i - 1], words[i]) >= 0)
                return false;
        }

        return true;
    }

    private static string[] Once(string[] sorted)
    {
        int kept = 0;
        foreach (string word in sorted)
        {
            if (kept == 0 || sorted[kept - 1] != word)
                sorted[kept++] = word;
        }

        return sorted[..kept];
    }

    /// <summary>A set of one word.</summary>
    public static WordSet OfOne(string word) => new([word]);

    /// <summary>Whether the word is in the set.</summary>
    public bool Contains(string word) => _words.BinarySearch(word, StringComparer.Ordinal) >= 0;

    /// <summary>Whether the two sets share a word.</summary>
    public bool Overlaps(WordSet other)
    {
        int i = 0,
            j = 0;
        while (i < _words.Length && j < other._words.Length)
        {
            int order = string.CompareOrdinal(_words[i], other._words[j]);
            if (order == 0)
                return true;
            if (order < 0)
                i++;
            else
                j++;
        }

        return false;
    }

    /// <summary>Whether every word of this set is in the other.</summary>
    public bool IsWithin(WordSet other) => _words.All(other.Contains);

    /// <inheritdoc/>
    public bool Equals(WordSet? other) =>
        other is not null && _words.AsSpan().SequenceEqual(other._words.AsSpan(), StringComparer.Ordinal);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as WordSet);

    /// <inheritdoc/>
    public override int GetHashCode()
    {
        var hash = new HashCode();
        foreach (string word in _words)
            hash.Add(word, StringComparer.Ordinal);
        return hash.ToHashCode();
    }

    /// <inheritdoc/>
    public IEnumerator<string> GetEnumerator() => ((IEnumerable<string>)_words).GetEnumerator();

    IEnumerator IEnumerable.GetEnumerator() => GetEnumerator();

    /// <summary>The words, separated by commas.</summary>
    public override string ToString() => string.Join(", ", _words);
}

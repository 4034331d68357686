namespace WeedAdvisor.Frozen.Drawn;

/// <summary>
/// Numbers drawn from a seed, the same on every machine and for ever: SplitMix64 (Steele, Lea, Flood, "Fast splittable
/// pseudorandom number generators", OOPSLA 2014; constants from memory).
/// </summary>
/// <param name="seed">The seed.</param>
internal sealed class Tape(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A number from 0 to below the bound.</summary>
    public int Below(int bound)
    {
        unchecked
        {
            ulong mixed = _state += 0x9E3779B97F4A7C15;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EB;
            return (int)((mixed ^ (mixed >> 31)) % (ulong)bound);
        }
    }

    /// <summary>None to some of the words, each once, in the order of the list.</summary>
    public string[] Some(string[] words, int most)
    {
        var picked = new SortedSet<int>();
        for (int times = Below(most + 1); times > 0 && words.Length > 0; times--)
            picked.Add(Below(words.Length));
        return [.. picked.Select(at => words[at])];
    }

    /// <summary>One of the words.</summary>
    public T Of<T>(IReadOnlyList<T> words) => words[Below(words.Count)];

    /// <summary>Whether it comes to it, once in so many times.</summary>
    public bool OnceIn(int times) => Below(times) == 0;
}

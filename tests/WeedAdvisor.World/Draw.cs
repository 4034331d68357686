namespace WeedAdvisor.World;

/// <summary>
/// Choices that look random and are the same for the same seed everywhere (SplitMix64, public domain: S. Vigna 2015).
/// </summary>
public sealed class Draw(ulong seed)
{
    private ulong _state = seed;

    /// <summary>A whole number from 0 up to, but not, the limit.</summary>
    public int Below(int limit) => (int)(Next() % (ulong)limit);

    /// <summary>A whole number from low to high, both included.</summary>
    public int Between(int low, int high) => low + Below(high - low + 1);

    /// <summary>A number from 0 up to 1.</summary>
    public double Share() => (Next() >> 11) * (1.0 / (1UL << 53));

    /// <summary>True in so many of a hundred cases.</summary>
    public bool Chance(int percent) => Between(1, 100) <= percent;

    /// <summary>One of several.</summary>
    public T From<T>(IReadOnlyList<T> items) => items[Below(items.Count)];

    /// <summary>One of several.</summary>
    public T Of<T>(params T[] all) => From(all);

    /// <summary>Some of several, at the most so many.</summary>
    public T[] Some<T>(IReadOnlyList<T> items, int most)
    {
        int count = Below(most + 1);
        return Enumerable.Range(0, count).Select(_ => From(items)).Distinct().ToArray();
    }

    private ulong Next()
    {
        unchecked
        {
            ulong mixed = _state += 0x9E3779B97F4A7C15UL;
            mixed = (mixed ^ (mixed >> 30)) * 0xBF58476D1CE4E5B9UL;
            mixed = (mixed ^ (mixed >> 27)) * 0x94D049BB133111EBUL;
            return mixed ^ (mixed >> 31);
        }
    }
}

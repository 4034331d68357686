namespace WeedAdvisor.Planning.Weeding;

/// <summary>
/// A small generator of random numbers that gives the same row for the same seed everywhere: SplitMix64 (Steele, Lea,
/// Flood 2014).
/// </summary>
/// <param name="seed">Any number.</param>
internal sealed class DrawnNumbers(ulong seed)
{
    private const double Unit = 1.0 / (1UL << 53);

    private ulong _state = seed;

    /// <summary>The next number, from 0 up to but not including 1.</summary>
    public double Next()
    {
        unchecked
        {
            _state += 0x9E3779B97F4A7C15UL;
            ulong z = _state;
            z = (z ^ (z >> 30)) * 0xBF58476D1CE4E5B9UL;
            z = (z ^ (z >> 27)) * 0x94D049BB133111EBUL;
            return ((z ^ (z >> 31)) >> 11) * Unit;
        }
    }

    /// <summary>
    /// The next number round a usual value: as often below it as above, nearest it most often, out to either end. So a
    /// range that reaches farther up than down does not lift what is drawn. Takes one step of the generator.
    /// </summary>
    public double About(double low, double usual, double high)
    {
        double u = (2 * Next()) - 1;
        return u < 0
            ? usual - ((usual - low) * (1 - Math.Sqrt(1 + u)))
            : usual + ((high - usual) * (1 - Math.Sqrt(1 - u)));
    }
}

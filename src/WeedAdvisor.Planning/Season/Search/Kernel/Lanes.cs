using System.Numerics;
using System.Runtime.CompilerServices;

namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// The three sums over cells (a weed in a week) that the search spends its time in, several cells at a time.
/// </summary>
internal static class Lanes
{
    /// <summary>Raises each cell to the other's where that is greater; returns the sum of the rises.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static long Raise(Span<long> cells, ReadOnlySpan<long> others)
    {
        Vector<long> sum = Vector<long>.Zero;
        int at = 0;
        for (; at <= others.Length - Vector<long>.Count; at += Vector<long>.Count)
        {
            var cell = new Vector<long>(cells[at..]);
            Vector<long> raised = Vector.Max(cell, new Vector<long>(others[at..]));
            sum += raised - cell;
            raised.CopyTo(cells[at..]);
        }
        long total = Vector.Sum(sum);
        for (; at < others.Length; at++)
        {
            long raised = Math.Max(cells[at], others[at]);
            total += raised - cells[at];
            cells[at] = raised;
        }
        return total;
    }

    /// <summary>The sum of the cells.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static long Sum(ReadOnlySpan<long> cells)
    {
        Vector<long> sum = Vector<long>.Zero;
        int at = 0;
        for (; at <= cells.Length - Vector<long>.Count; at += Vector<long>.Count)
            sum += new Vector<long>(cells[at..]);
        long total = Vector.Sum(sum);
        for (; at < cells.Length; at++)
            total += cells[at];
        return total;
    }

    /// <summary>The sum of the lesser of each pair.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static long SumOfLesser(ReadOnlySpan<long> ones, ReadOnlySpan<long> others)
    {
        Vector<long> sum = Vector<long>.Zero;
        int at = 0;
        for (; at <= ones.Length - Vector<long>.Count; at += Vector<long>.Count)
            sum += Vector.Min(new Vector<long>(ones[at..]), new Vector<long>(others[at..]));
        long total = Vector.Sum(sum);
        for (; at < ones.Length; at++)
            total += Math.Min(ones[at], others[at]);
        return total;
    }

    /// <summary>The sum of what the first has more than the second, cell by cell.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static long Excess(ReadOnlySpan<long> ones, ReadOnlySpan<long> others)
    {
        Vector<long> sum = Vector<long>.Zero;
        int at = 0;
        for (; at <= ones.Length - Vector<long>.Count; at += Vector<long>.Count)
            sum += Vector.Max(new Vector<long>(ones[at..]) - new Vector<long>(others[at..]), Vector<long>.Zero);
        long total = Vector.Sum(sum);
        for (; at < ones.Length; at++)
            total += Math.Max(0, ones[at] - others[at]);
        return total;
    }

    /// <summary>Whether the sum of what the first has more than the second, cell by cell, is at most a limit.</summary>
    [MethodImpl(MethodImplOptions.AggressiveOptimization)]
    public static bool ExcessWithin(ReadOnlySpan<long> ones, ReadOnlySpan<long> others, long limit)
    {
        long total = 0;
        int at = 0;
        while (at <= ones.Length - Vector<long>.Count)
        {
            Vector<long> sum = Vector<long>.Zero;
            int stop = Math.Min(ones.Length - Vector<long>.Count, at + (8 * Vector<long>.Count) - 1);
            for (; at <= stop; at += Vector<long>.Count)
                sum += Vector.Max(new Vector<long>(ones[at..]) - new Vector<long>(others[at..]), Vector<long>.Zero);
            total += Vector.Sum(sum);
            if (total > limit)
                return false;
        }
        for (; at < ones.Length; at++)
            total += Math.Max(0, ones[at] - others[at]);
        return total <= limit;
    }
}

using System.Collections.Immutable;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>
/// Which items of a list are still there after it was edited: the longest run of them that kept its order.
/// </summary>
internal static class Kept
{
    private const long MostCells = 16_000_000;

    /// <summary>
    /// For every item now, the number of the old one that it is, or null for a new one; null when the lists are too
    /// long to tell.
    /// </summary>
    public static ImmutableArray<int?>? Of<T>(ImmutableArray<T> old, ImmutableArray<T> now)
        where T : class
    {
        int head = 0,
            tail = 0;
        while (head < old.Length && head < now.Length && old[head].Equals(now[head]))
            head++;
        while (tail < old.Length - head && tail < now.Length - head && old[^(tail + 1)].Equals(now[^(tail + 1)]))
            tail++;
        int rows = old.Length - head - tail,
            columns = now.Length - head - tail;
        if ((long)rows * columns > MostCells)
            return null;
        int?[] kept = new int?[now.Length];
        for (int i = 0; i < head; i++)
            kept[i] = i;
        for (int i = 1; i <= tail; i++)
            kept[^i] = old.Length - i;
        Middle(old.AsSpan(head, rows), now.AsSpan(head, columns), head, kept);
        return [.. kept];
    }

    private static void Middle<T>(ReadOnlySpan<T> old, ReadOnlySpan<T> now, int offset, int?[] kept)
        where T : class
    {
        int[,] longest = new int[old.Length + 1, now.Length + 1];
        for (int i = old.Length - 1; i >= 0; i--)
        {
            for (int j = now.Length - 1; j >= 0; j--)
            {
                longest[i, j] = old[i].Equals(now[j])
                    ? longest[i + 1, j + 1] + 1
                    : Math.Max(longest[i + 1, j], longest[i, j + 1]);
            }
        }

        int row = 0,
            column = 0;
        while (row < old.Length && column < now.Length)
        {
            if (old[row].Equals(now[column]))
                kept[offset + column++] = offset + row++;
            else if (longest[row + 1, column] >= longest[row, column + 1])
                row++;
            else
                column++;
        }
    }
}

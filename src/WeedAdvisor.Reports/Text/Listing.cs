using System.Globalization;

namespace WeedAdvisor.Reports.Text;

/// <summary>Lists that stop in time.</summary>
internal static class Listing
{
    /// <summary>The first few and how many more there are; never "and 1 more", which takes no less room.</summary>
    public static string Some(IReadOnlyList<string> items, int most) =>
        items.Count <= most + 1
            ? string.Join("; ", items)
            : string.Create(
                CultureInfo.InvariantCulture,
                $"{string.Join("; ", items.Take(most))}; and {items.Count - most} more"
            );

    /// <summary>Items with commas and an "and".</summary>
    public static string And(IReadOnlyList<string> items) =>
        items switch
        {
            [] => "",
            [var only] => only,
            _ => $"{string.Join(", ", items.SkipLast(1))} and {items[^1]}",
        };

    /// <summary>Items with commas and an "or".</summary>
    public static string Or(IReadOnlyList<string> items) =>
        items switch
        {
            [] => "",
            [var only] => only,
            _ => $"{string.Join(", ", items.SkipLast(1))} or {items[^1]}",
        };
}

using System.Collections.Immutable;
using System.Globalization;

namespace WeedAdvisor.Reports.Documents;

/// <summary>Items one below the other.</summary>
/// <param name="Items">The items.</param>
public sealed record ItemList(ImmutableArray<Item> Items) : Block
{
    /// <summary>Items with a dash each.</summary>
    public static ItemList Dashes(IEnumerable<Line> lines) => new([.. lines.Select(line => new Item(Item.Dash, line))]);

    /// <summary>One item.</summary>
    public static ItemList One(string mark, Line text) => new([new Item(mark, text)]);
}

/// <summary>One item of a list.</summary>
/// <param name="Mark">What stands before it, such as a dash, a rank or <c>[yes] </c>.</param>
/// <param name="Text">What it says.</param>
public sealed record Item(string Mark, Line Text)
{
    /// <summary>The mark of an item that is one of several alike.</summary>
    public const string Dash = "- ";

    /// <summary>The mark of an item that is not known yet.</summary>
    public const string Open = "? ";

    /// <summary>What is said below it; its indents count from the list.</summary>
    public ImmutableArray<Block> Below { get; init; } = [];

    /// <summary>The mark of a rank.</summary>
    public static string Rank(int rank) => $" {rank.ToString(CultureInfo.InvariantCulture).PadLeft(3)}. ";
}

using System.Collections.Immutable;
using System.Globalization;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>A trade name that stands for a number, such as a container class for a width.</summary>
/// <param name="Name">The name as it is printed: <c>#3</c>, <c>2 litre</c>.</param>
/// <param name="Value">The number, in the unit of the question.</param>
public sealed record NamedSize(string Name, decimal Value)
{
    private static readonly string[] s_litre = ["l", "litre", "litres", "liter", "liters", "lt", "ltr"];
    private static readonly string[] s_class = ["gal", "gallon", "gallons", "class"];

    /// <summary>The size that was typed; null when none of these is meant.</summary>
    /// <param name="sizes">The sizes that are known.</param>
    /// <param name="typed">What was typed, such as <c># 3</c>, <c>3 gal</c> or <c>2 L</c>.</param>
    public static NamedSize? Find(ImmutableArray<NamedSize> sizes, string typed) =>
        Plain(typed) is { } plain ? sizes.FirstOrDefault(size => Plain(size.Name) == plain) : null;

    /// <summary>One spelling for all that mean the same; null for what names neither a class nor a volume.</summary>
    public static string? Plain(string text)
    {
        string word = text.Trim().ToLowerInvariant().Replace(" ", "", StringComparison.Ordinal);
        if (word.StartsWith('#'))
            return Figure(word[1..]) is { } hashed ? $"#{hashed}" : null;
        string figure = new([.. word.TakeWhile(c => char.IsAsciiDigit(c) || c == '.')]);
        string unit = word[figure.Length..].Trim('-', '.');
        return Figure(figure) switch
        {
            { } value when s_litre.Contains(unit) => $"{value}l",
            // In the trade a pot called by gallons is of that class: it holds about three quarters of them.
            { } value when s_class.Contains(unit) => $"#{value}",
            _ => null,
        };
    }

    private static string? Figure(string text) =>
        decimal.TryParse(text, NumberStyles.AllowDecimalPoint, CultureInfo.InvariantCulture, out decimal value)
            ? value.ToString("0.####", CultureInfo.InvariantCulture)
            : null;
}

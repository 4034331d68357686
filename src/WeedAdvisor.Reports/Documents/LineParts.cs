using System.Collections.Immutable;
using System.Globalization;
using System.Runtime.CompilerServices;

namespace WeedAdvisor.Reports.Documents;

/// <summary>Takes a text with holes apart: literals become words, amounts and names stay what they are.</summary>
[InterpolatedStringHandler]
public readonly struct LineParts
{
    private readonly ImmutableArray<TextPart>.Builder _parts;

    /// <param name="literalLength">Letters between the holes.</param>
    /// <param name="formattedCount">How many holes there are.</param>
    public LineParts(int literalLength, int formattedCount)
    {
        _ = literalLength;
        _parts = ImmutableArray.CreateBuilder<TextPart>((2 * formattedCount) + 1);
    }

    /// <summary>Words between holes.</summary>
    public void AppendLiteral(string text) => _parts.Add(new Words(text));

    /// <summary>An amount or a name.</summary>
    public void AppendFormatted(TextPart part) => _parts.Add(part);

    /// <summary>A line within the line.</summary>
    public void AppendFormatted(Line line) => _parts.AddRange(line.Parts);

    /// <summary>Words.</summary>
    public void AppendFormatted(string? text)
    {
        if (!string.IsNullOrEmpty(text))
            _parts.Add(new Words(text));
    }

    /// <summary>A whole number.</summary>
    public void AppendFormatted(int number) => AppendFormatted(number.ToString(CultureInfo.InvariantCulture));

    internal ImmutableArray<TextPart> ToParts() => _parts.ToImmutable();
}

using System.Collections.Immutable;

namespace WeedAdvisor.Reports.Documents;

/// <summary>What stands in one line, before it is wrapped.</summary>
/// <param name="Parts">Words, amounts and names in their order.</param>
public sealed record Line(ImmutableArray<TextPart> Parts)
{
    /// <summary>Nothing.</summary>
    public static Line Empty { get; } = new([]);

    /// <summary>How it is meant.</summary>
    public Tone Tone { get; init; }

    /// <summary>The action it is about, by id; null when it is about none.</summary>
    public string? Action { get; init; }

    /// <summary>The line in plain letters.</summary>
    public string Text => Parts is [var only] ? only.Text : string.Concat(Parts.Select(part => part.Text));

    /// <summary>Whether nothing stands in it.</summary>
    public bool IsEmpty => Parts.All(part => part.Text.Length == 0);

    /// <summary>A line written as a text with holes: amounts and names keep what they are.</summary>
    public static Line Of(LineParts parts) => new(parts.ToParts());

    /// <summary>A line of words.</summary>
    public static implicit operator Line(string text) => FromString(text);

    /// <summary>A line of one part.</summary>
    public static implicit operator Line(TextPart part) => FromTextPart(part);

    /// <summary>A line of words.</summary>
    public static Line FromString(string text) => new([new Words(text)]);

    /// <summary>A line of one part.</summary>
    public static Line FromTextPart(TextPart part) => new([part]);

    /// <summary>The lines in one, with something between them.</summary>
    public static Line Join(string between, IEnumerable<Line> lines)
    {
        var parts = ImmutableArray.CreateBuilder<TextPart>();
        bool isFirst = true;
        foreach (Line line in lines)
        {
            if (!isFirst)
                parts.Add(new Words(between));
            parts.AddRange(line.Parts);
            isFirst = false;
        }

        return new Line(parts.ToImmutable());
    }

    /// <inheritdoc/>
    public override string ToString() => Text;
}

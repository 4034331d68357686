using System.Collections.Immutable;
using WeedAdvisor.Reports.Documents;
using Meant = WeedAdvisor.Reports.Documents.Tone;

namespace WeedAdvisor.Interview.Pages;

/// <summary>How a line of the advice is meant.</summary>
public enum LineTone
{
    /// <summary>Plain text.</summary>
    Plain,

    /// <summary>A heading.</summary>
    Heading,

    /// <summary>Something the grower must not overlook.</summary>
    Warning,

    /// <summary>Detail for those who look closer.</summary>
    Quiet,
}

/// <summary>A line of text that is ready to be shown.</summary>
/// <param name="Text">The text.</param>
/// <param name="Tone">How it is meant.</param>
/// <param name="Action">The action that can be opened from this line; null when there is none.</param>
public sealed record AdviceLine(string Text, LineTone Tone = LineTone.Plain, string? Action = null)
{
    /// <summary>The lines of a document.</summary>
    public static ImmutableArray<AdviceLine> Of(ImmutableArray<PageLine> lines) =>
        [.. lines.Select(line => new AdviceLine(line.Text, ToneOf(line.Tone), line.Action))];

    private static LineTone ToneOf(Meant tone) =>
        tone switch
        {
            Meant.Strong => LineTone.Heading,
            Meant.Warning => LineTone.Warning,
            Meant.Muted => LineTone.Quiet,
            _ => LineTone.Plain,
        };
}

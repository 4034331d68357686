using System.Net;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Documents;

/// <summary>The one place where a text becomes HTML: nothing reaches a page but through here.</summary>
internal static class HtmlLetters
{
    /// <summary>A text that stands between elements or in an attribute.</summary>
    public static string Of(string text) =>
        WebUtility
            .HtmlEncode(Page.Clean(text))
            .Replace("\uFFFE", "", StringComparison.Ordinal)
            .Replace("\uFFFF", "", StringComparison.Ordinal);

    /// <summary>A line: amounts are never broken, and what it is meant for can be read by a style.</summary>
    public static string Of(Line line)
    {
        string inner = string.Concat(line.Parts.Select(Of));
        string tone = line.Tone switch
        {
            Tone.Warning => " class=\"warning\"",
            Tone.Muted => " class=\"muted\"",
            Tone.Strong => " class=\"strong\"",
            _ => "",
        };
        string action = line.Action is { } id ? $" data-action=\"{Of(id)}\"" : "";
        return tone.Length + action.Length == 0 ? inner : $"<span{tone}{action}>{inner}</span>";
    }

    private static string Of(TextPart part) =>
        part switch
        {
            Amount amount => Unbroken(amount.Text),
            Measured measured => measured.Written(Unbroken),
            _ => Of(part.Text),
        };

    private static string Unbroken(string figure) => $"<span class=\"amount\">{Of(figure)}</span>";
}

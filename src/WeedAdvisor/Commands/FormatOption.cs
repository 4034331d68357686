using System.CommandLine;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Commands;

/// <summary>The option that chooses the medium: the same words on every command.</summary>
internal static class FormatOption
{
    /// <summary>Plain text, which is written when nothing else is asked for.</summary>
    public const string Text = "text";

    /// <summary>What asks for JSON.</summary>
    public const string Json = "json";

    private const string Markdown = "md",
        Html = "html";

    /// <summary>The option.</summary>
    /// <param name="description">What is written.</param>
    /// <param name="more">Words that only this command takes.</param>
    public static Option<string> Of(string description, params string[] more) =>
        LayoutOptions.OneOf("--format", description, [Text, Markdown, Html, Json, .. more]);

    /// <summary>Whether the medium is a page that is kept: it tells everything, since nobody asks it again.</summary>
    public static bool IsWhole(string? format) => format is Markdown or Html;

    /// <summary>A document in the medium asked for.</summary>
    /// <param name="format">The word given.</param>
    /// <param name="document">The document.</param>
    /// <param name="width">Columns of the text.</param>
    /// <param name="colour">Whether drawings in text are coloured.</param>
    public static string Written(string? format, Document document, int width, bool colour = false) =>
        format switch
        {
            Markdown => DocumentMarkdown.Of(document),
            Html => DocumentHtml.Of(document),
            Text or null => DocumentText.Of(document, width, colour),
            _ => throw new InvalidOperationException($"no writer for the medium '{format}'"),
        };
}

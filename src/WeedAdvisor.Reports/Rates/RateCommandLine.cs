using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Forms;

namespace WeedAdvisor.Reports.Rates;

/// <summary>A rate sum as it is written in a shell.</summary>
public static class RateCommandLine
{
    private const string Program = "weedadvisor";
    private const string Indent = "    ";

    /// <summary>The command in one line, its values quoted where a shell needs it.</summary>
    /// <param name="form">The form.</param>
    /// <param name="entries">Field ids and what is typed.</param>
    public static string Of(RateForm form, IEnumerable<KeyValuePair<string, string>> entries) =>
        string.Join(' ', Parts(form, entries));

    /// <summary>The example of a form as lines that can be pasted: a long command goes on after a backslash.</summary>
    /// <param name="form">The form.</param>
    /// <param name="width">Columns of the text.</param>
    public static ImmutableArray<string> Example(RateForm form, int width) => Broken(Parts(form, form.Example), width);

    private static IEnumerable<string> Parts(RateForm form, IEnumerable<KeyValuePair<string, string>> entries) =>
        entries
            .Select(entry => $"--{entry.Key} {Quoted(entry.Value)}")
            .Prepend($"{Program} rate {form.Group} {form.Id}");

    private static ImmutableArray<string> Broken(IEnumerable<string> parts, int width)
    {
        var lines = ImmutableArray.CreateBuilder<string>();
        string line = "";
        foreach (string part in parts)
        {
            // Two columns are kept for the backslash.
            if (line.Trim().Length > 0 && line.Length + 1 + part.Length + 2 > width)
            {
                lines.Add(line + " \\");
                line = Indent + part;
            }
            else
            {
                line = line.Length == 0 ? part : $"{line} {part}";
            }
        }

        lines.Add(line);
        return lines.ToImmutable();
    }

    private static string Quoted(string value) =>
        value.Length > 0 && value.All(c => char.IsAsciiLetterOrDigit(c) || c is '.' or '-' or '/' or ',' or '%')
            ? value
            : $"\"{Escaped(value)}\"";

    private static string Escaped(string value) =>
        value.Replace("\\", "\\\\", StringComparison.Ordinal).Replace("\"", "\\\"", StringComparison.Ordinal);
}

using System.Text;

namespace WeedAdvisor.Reports.Season;

/// <summary>
/// Colours a row of a strip with the control sequences of ECMA-48 (SGR). The characters stay, so that nothing is lost
/// where colours cannot be told apart.
/// </summary>
internal static class StripColour
{
    private const char Escape = '\u001b';

    /// <summary>The row of one weed, coloured.</summary>
    /// <param name="line">The row.</param>
    /// <param name="nameColumns">Columns of the name, which keeps its colour.</param>
    public static string Of(string line, int nameColumns)
    {
        var painted = new StringBuilder(line[..nameColumns]);
        char before = ' ';
        foreach (char mark in line[nameColumns..])
        {
            if (mark != before)
                painted.Append(Escape).Append('[').Append(Code(mark)).Append('m');
            painted.Append(mark);
            before = mark;
        }

        return painted.Append(Escape).Append("[0m").ToString();
    }

    // Green, yellow, red, grey.
    private static string Code(char mark) =>
        mark switch
        {
            '#' => "32",
            '+' => "33",
            'o' => "31",
            _ => "90",
        };
}

using System.Text;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Season;

/// <summary>
/// The strip in plain characters, 52 columns beside the names. Each grade has its own character as well as its own
/// colour, so that the strip can be read without colour and on paper.
/// </summary>
public static class StripText
{
    /// <summary>Columns of the names.</summary>
    public const int NameColumns = 22;

    /// <summary>How many lines stand above the weeds.</summary>
    public const int HeadRows = 2;

    /// <summary>What stands between two characters and their meanings.</summary>
    public const string Between = "   ";

    /// <summary>What the characters mean.</summary>
    public const string Key =
        "# held   + partly held   o comes up and is not held   . does not come up   - nothing may go on";

    private const string RoundsKey = "| weeding round";

    /// <summary>What the characters of a strip mean.</summary>
    public static string KeyOf(Strip strip) => strip.Rounds.IsEmpty ? Key : Key + Between + RoundsKey;

    /// <summary>How many lines of a strip stand above the weeds.</summary>
    public static int HeadRowsOf(Strip strip) => strip.Rounds.IsEmpty ? HeadRows : HeadRows + 1;

    /// <summary>The lines of the whole year, all of one width.</summary>
    public static IEnumerable<string> Lines(Strip strip) => Lines(strip, 0, SeasonYear.Weeks, NameColumns);

    /// <summary>The lines of a part of the year.</summary>
    /// <param name="strip">The year.</param>
    /// <param name="from">The first week.</param>
    /// <param name="count">How many weeks; fewer where the year ends.</param>
    /// <param name="nameColumns">Columns of the names.</param>
    public static IEnumerable<string> Lines(Strip strip, int from, int count, int nameColumns)
    {
        yield return Name("", nameColumns) + Months(strip, from, Math.Min(from + count, SeasonYear.Weeks));
        yield return Name("goes on", nameColumns)
            + string.Concat(
                strip.Marks.Select((mark, week) => mark ?? (strip.Shut[week] ? '-' : ' ')).Skip(from).Take(count)
            );
        if (!strip.Rounds.IsEmpty)
            yield return Name("rounds", nameColumns)
                + string.Concat(strip.Rounds.Skip(from).Take(count).Select(isWalked => isWalked ? '|' : ' '));
        foreach (StripRow row in strip.Rows)
            yield return Name(row.Name, nameColumns)
                + string.Concat(row.Weeks.Skip(from).Take(count).Select(Character));
    }

    /// <summary>The character of a grade.</summary>
    public static char Character(Cover cover) =>
        cover switch
        {
            Cover.Held => '#',
            Cover.Partly => '+',
            Cover.Open => 'o',
            _ => '.',
        };

    /// <summary>
    /// The names of the months over 52 columns; one with too few columns before the next goes without its name.
    /// </summary>
    public static string Months(Strip strip) => Months(strip, 0, SeasonYear.Weeks);

    private static string Months(Strip strip, int from, int end)
    {
        var line = new StringBuilder(new string(' ', end - from));
        for (int i = 0; i < strip.Months.Length; i++)
        {
            (int week, string name) = strip.Months[i];
            // The last name of the year may stand up to its edge.
            int next = Math.Min(i + 1 < strip.Months.Length ? strip.Months[i + 1].Week : SeasonYear.Weeks + 1, end + 1);
            if (week >= from && week < end && week + name.Length < next)
                line.Remove(week - from, name.Length).Insert(week - from, name);
        }

        return line.ToString();
    }

    private static string Name(string name, int columns) =>
        ColumnWidth.PadRight(
            ColumnWidth.Of(name) >= columns ? name[..ColumnWidth.Fitting(name, columns - 1)] : name,
            columns
        );
}

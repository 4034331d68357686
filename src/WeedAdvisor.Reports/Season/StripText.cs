using System.Text;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Reports.Season;

/// <summary>
/// The strip in plain characters, 52 columns beside the names. Each grade has its own character as well as its own colour,
/// so that the strip can be read without colour and on paper.
/// </summary>
public static class StripText
{
    /// <summary>Columns of the names.</summary>
    public const int NameColumns = 22;

    /// <summary>How many lines stand above the weeds.</summary>
    public const int HeadRows = 2;

    /// <summary>What the characters mean.</summary>
    public const string Key = "# held   + partly held   o comes up and is not held   . does not come up   - nothing may go on";

    /// <summary>The lines, all of one width.</summary>
    public static IEnumerable<string> Lines(Strip strip)
    {
        yield return Name("") + Months(strip);
        yield return Name("goes on") + string.Concat(
            strip.Marks.Select((mark, week) => mark ?? (strip.Shut[week] ? '-' : ' ')));
        foreach (StripRow row in strip.Rows)
            yield return Name(row.Name) + string.Concat(row.Weeks.Select(Character));
    }

    /// <summary>The character of a grade.</summary>
    public static char Character(Cover cover) => cover switch
    {
        Cover.Held => '#',
        Cover.Partly => '+',
        Cover.Open => 'o',
        _ => '.',
    };

    /// <summary>The names of the months over 52 columns; one with too few columns before the next goes without its name.</summary>
    public static string Months(Strip strip)
    {
        var line = new StringBuilder(new string(' ', SeasonYear.Weeks));
        for (int i = 0; i < strip.Months.Length; i++)
        {
            (int week, string name) = strip.Months[i];
            int end = i + 1 < strip.Months.Length ? strip.Months[i + 1].Week : SeasonYear.Weeks + 1;
            if (week + name.Length < end)
                line.Remove(week, name.Length).Insert(week, name);
        }

        return line.ToString();
    }

    private static string Name(string name) =>
        name.Length >= NameColumns ? name[..(NameColumns - 1)] + " " : name.PadRight(NameColumns);
}

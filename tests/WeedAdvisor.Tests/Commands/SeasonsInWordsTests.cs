using System.Text.RegularExpressions;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>
/// Half of the countries' seasons are turned. What the rules say to a grower names seasons, for a month would be half a
/// year off; a year, a trial's table and a named place may keep theirs.
/// </summary>
public sealed partial class SeasonsInWordsTests
{
    private static readonly string[] s_folders = ["weeds", "practices", "treatments", "judgements"];

    [Fact]
    public void No_advice_names_a_month()
    {
        IEnumerable<string> named =
            from folder in s_folders
            from file in Directory.EnumerateFiles(Path.Combine(Repository.Rules, folder), "*.yaml")
            from line in File.ReadLines(file)
            where Month().IsMatch(line) && !Kept().IsMatch(line)
            select $"{Path.GetFileName(file)}: {line.Trim()}";
        Assert.Empty(named);
    }

    [GeneratedRegex(
        "\\b(January|February|March|April|June|July|August|September|October|November|December"
            + "|(in|by|before|from|until|to|of|and|or|mid|late|early) May)\\b"
    )]
    private static partial Regex Month();

    // A date with its year, the words of a printed table, a comment, and what holds for the place it names.
    [GeneratedRegex("^ *#|\\braw: |(January|March|July|August|December) \\d{4}|in North Carolina")]
    private static partial Regex Kept();
}

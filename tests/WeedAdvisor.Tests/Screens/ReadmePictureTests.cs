using WeedAdvisor.Golden;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Tests.Interview;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Screens;

public sealed class ReadmePictureTests
{
    private const string Margin = "     ";

    [Fact]
    public void The_picture_in_the_readme_is_what_the_screen_shows()
    {
        string file = Path.Combine(Repository.Folder, "README.md");
        string[] lines = File.ReadAllText(file).Split('\n');
        int first = Array.FindIndex(lines, IsOfPicture);
        int last = Array.FindIndex(lines, first, line => !IsOfPicture(line));
        ExpectedText.MatchesFile(string.Join('\n', [.. lines[..first], .. Picture(), .. lines[last..]]), file);
    }

    private static bool IsOfPicture(string line) => line.StartsWith(Margin, StringComparison.Ordinal);

    private static IEnumerable<string> Picture()
    {
        var session = new InterviewSession(
            ShippedRules.Knowledge,
            new LiveAdviceSource(ShippedRules.Advisor),
            ShippedRules.Visit("container-yard-with-spurge"),
            new FakeKeeper()
        );
        using var bench = new Bench(session: session);
        return bench.Picture.TrimEnd('\n').Split('\n').Select(line => (Margin[..^1] + line).TrimEnd());
    }
}

using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Tests.Interview;

namespace WeedAdvisor.Tests.Earlier;

/// <summary>Visit files as they were written before files told their format. They are never changed: they are read for ever.</summary>
public sealed class FormerFilesTests
{
    private static readonly string s_folder =
        Path.Combine(ExpectedText.RepositoryFolder(), "tests", "WeedAdvisor.Tests", "FormerVisits");

    [Fact]
    public void Files_of_the_first_format_are_read_and_written_in_the_present_one()
    {
        string[] files = [.. Directory.GetFiles(s_folder, "*.yaml").Order(StringComparer.Ordinal)];
        Assert.Equal(4, files.Length);
        string[] written = [.. files.Select(file =>
        {
            Assert.DoesNotContain("format:", File.ReadAllText(file), StringComparison.Ordinal);
            return VisitText.Of(VisitFile.Read(file, ShippedTrade.Knowledge).Value!);
        })];
        ExpectedText.Matches(string.Join("\n", written));
    }
}

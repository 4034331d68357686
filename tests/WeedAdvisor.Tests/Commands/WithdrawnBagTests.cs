using WeedAdvisor.Interview.Words;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Commands;

/// <summary>
/// A grower finds an old bag of chlorthal-dimethyl (DCPA) in the store. Suspended on 2024-08-07: 89 FR 64445, no sale
/// and no use of stocks.
/// </summary>
public sealed class WithdrawnBagTests
{
    private static readonly string s_visit = Path.Combine(Repository.Rules, "visits", "what-lies-in-the-store.yaml");

    [Theory]
    [InlineData("DCPA")]
    [InlineData("chlorthal-dimethyl")]
    [InlineData("chlorthal-dimethyl-withdrawn")]
    public void Show_says_where_since_when_and_what_becomes_of_it(string named)
    {
        CommandRun run = CommandRun.Of("knowledge", "show", named, "--knowledge", Repository.Rules);
        Assert.Equal(0, run.Code);
        string text = Flat(run.Out);
        Assert.Contains("In the United States since 2024-08-07", text, StringComparison.Ordinal);
        Assert.Contains("no use of stocks", text, StringComparison.Ordinal);
        Assert.Contains("89 FR 64445-64458", text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("DCPA")]
    [InlineData("chlorthal-dimethyl-withdrawn")]
    public void Why_says_it_in_one_line(string named)
    {
        CommandRun run = CommandRun.Of("why", s_visit, named, "--knowledge", Repository.Rules);
        Assert.Equal(2, run.Code);
        Assert.Contains("chlorthal-dimethyl (DCPA) may not be used any more", run.Error, StringComparison.Ordinal);
        Assert.Single(run.Error.Split('\n', StringSplitOptions.RemoveEmptyEntries));
    }

    [Fact]
    public void Advice_on_an_area_where_it_was_used_warns_of_it()
    {
        CommandRun run = CommandRun.Of("advise", s_visit, "--area", "yard", "--full", "--knowledge", Repository.Rules);
        Assert.Contains("is not allowed any more in this country", Flat(run.Out), StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("dcpa")]
    [InlineData("chlorthal")]
    [InlineData("chlorthal-dimethyl")]
    public void A_use_of_it_can_be_told(string typed)
    {
        Assert.Contains(NameSearch.UsedBefore(ShippedRules.Knowledge, typed), hit => hit.Id == "chlorthal-dimethyl");
        Assert.Empty(NameSearch.Treatments(ShippedRules.Knowledge, typed));
    }

    private static string Flat(string text) =>
        string.Join(' ', text.Split([' ', '\n'], StringSplitOptions.RemoveEmptyEntries));
}

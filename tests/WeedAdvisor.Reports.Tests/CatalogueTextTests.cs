using WeedAdvisor.Golden;
using WeedAdvisor.Reports.Catalogue;
using WeedAdvisor.Reports.Tests.Samples;

namespace WeedAdvisor.Reports.Tests;

public sealed class CatalogueTextTests
{
    private static readonly DateOnly s_today = new(2026, 11, 28);

    [Theory]
    [InlineData("surface-wash")]
    [InlineData("mulch-pots")]
    [InlineData("liverwort")]
    [InlineData("cover")]
    [InlineData("wet-surfaces-stay-wet")]
    [InlineData("surface-stays-wet")]
    [InlineData("mild-coast")]
    [InlineData("paper-two")]
    public void Record(string id) =>
        ExpectedText.Matches(
            CatalogueText.Show(KnowledgeCatalogue.Find(SampleKnowledge.Small, id, s_today), 80),
            $"Record_{id}"
        );

    [Fact]
    public void Every_catalogue_is_listed_with_every_record()
    {
        foreach (string kind in KnowledgeCatalogue.Kinds)
        {
            var entries = KnowledgeCatalogue.Of(SampleKnowledge.Small, kind, s_today);
            string list = CatalogueText.List(entries, 80);
            Assert.All(entries, entry => Assert.Contains(entry.Id, list, StringComparison.Ordinal));
            Assert.All(list.Split('\n'), line => Assert.True(line.Length <= 80, line));
        }
    }

    [Fact]
    public void A_treatment_is_never_shown_without_the_safety_lines()
    {
        string text = CatalogueText.Show(KnowledgeCatalogue.Find(SampleKnowledge.Small, "granule-01", s_today), 240);
        Assert.All(Safety.StandingLines, line => Assert.Contains(line, text, StringComparison.Ordinal));
    }

    [Fact]
    public void Counts_of_the_knowledge() => ExpectedText.Matches(CatalogueText.Counts(SampleKnowledge.Small, s_today));

    [Fact]
    public void An_unknown_catalogue_is_refused() =>
        Assert.Throws<ArgumentOutOfRangeException>(() =>
            KnowledgeCatalogue.Of(SampleKnowledge.Small, "tools", s_today)
        );
}

using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Tests;

public sealed class CitationTests
{
    [Theory]
    [InlineData("2001", "A. Author. 2001. A book. A press")]
    [InlineData("n.d.", "A. Author. n.d. A book. A press")]
    [InlineData(null, "A. Author. A book. A press")]
    public void A_source_is_cited_with_one_full_stop_between_its_parts(string? year, string expected) =>
        Assert.Equal(expected, new Source("one", "A. Author", "A book", year, "A press", null, null).Citation);
}

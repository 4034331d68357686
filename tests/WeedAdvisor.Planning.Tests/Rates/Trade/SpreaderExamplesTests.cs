using WeedAdvisor.Planning.Rates.Answers;

namespace WeedAdvisor.Planning.Tests.Rates.Trade;

/// <summary>Worked examples on granules printed by extension services, typed into the forms.</summary>
public sealed class SpreaderExamplesTests
{
    // Id, source, form, what is typed, figure, unit, printed. None of these sources rounded.
    public static TheoryData<string, string, string, string, string, string, decimal> Examples =>
        new()
        {
            { "g02", "ncsu-onslow", "course", "swath=8 ft", "course", "ft", 125m },
            { "g04", "consumer-drop", "tarp", "caught=0.5 lb|length=25 ft|width=2 ft", "rate", "lb/100ft2", 1m },
            { "g04", "consumer-drop", "tarp", "caught=0.5 lb|length=25 ft|width=2 ft", "rate", "lb/1000ft2", 10m },
            { "g05", "lsu-rotary", "course", "swath=10 ft", "course", "ft", 100m },
            {
                "tarp of 10 ft x 10 ft",
                "ncsu-onslow",
                "tarp",
                "caught=0.35 lb|length=10 ft|width=10 ft",
                "rate",
                "lb/1000ft2",
                3.5m
            },
        };

    [Theory]
    [MemberData(nameof(Examples))]
    public void A_printed_example_comes_out_of_the_form_as_printed(
        string id,
        string source,
        string form,
        string typed,
        string figure,
        string unit,
        decimal printed
    )
    {
        decimal found = Sums.Answer("spreader", form, Sums.Typed(typed))[figure].Value.In(unit);
        Assert.True(Math.Abs(found - printed) <= Sums.Dust, $"{id} of {source}: {found} {unit}, printed {printed}");
    }

    [Fact]
    // ncsu-handcrank: 30 to 35 % on each side, 60 to 70 % in all.
    public void The_overlap_advised_for_hand_cranked_spreaders_gives_its_swath()
    {
        RateAnswer answer = Sums.Answer("spreader", "swath", ("throw", "10 ft"));
        Assert.Equal(7m, answer["swath-at-30"].Value.In("ft"));
        Assert.Equal(6.5m, answer["swath-at-35"].Value.In("ft"));
        foreach ((string id, decimal whole) in new[] { ("swath-at-30", 0.6m), ("swath-at-35", 0.7m) })
            Assert.Equal(whole, 2 * (10 - answer[id].Value.In("ft")) / 10);
    }

    [Fact]
    public void Pans_are_held_against_the_published_variation_from_pot_to_pot() // ncsu-handcrank: up to 250 %
    {
        RateAnswer answer = Sums.Answer("uniformity", "pans", ("caught", "1, 2, 3 g"));
        Assert.Contains(answer.Notes, note => note.Contains("250 %", StringComparison.Ordinal));
        Assert.Contains("ncsu-handcrank", answer.Sources);
    }
}

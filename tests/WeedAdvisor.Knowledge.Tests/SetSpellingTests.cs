using WeedAdvisor.Knowledge.Tests.Support;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>A test of words has one spelling; another one is refused, and the line says how it is written.</summary>
public sealed class SetSpellingTests
{
    [Theory]
    [InlineData("crop: { is-a: ", "hollies", "{ has: hollies }")]
    [InlineData("crop: { is-a: ", "[hollies]", "{ has: hollies }")]
    [InlineData("crop: { is-a: ", "[hollies, shrubs]", "{ has: [hollies, shrubs] }")]
    [InlineData("crop: { is-a: ", "{ not: hollies }", "{ lacks: hollies }")]
    [InlineData("crop: { is-a: ", "{ not: [hollies, shrubs] }", "{ lacks: [hollies, shrubs] }")]
    [InlineData("crop: { is-a: ", "{ has: hollies, not: shrubs }", "{ lacks: shrubs }")]
    [InlineData("site: { equipment: ", "spreader", "{ has: spreader }")]
    [InlineData("past: { groups: ", "\"14\"", "{ has: 14 }")]
    [InlineData("any: { weed: { spreads-by: ", "gemmae }", "{ has: gemmae }")]
    [InlineData("site: { place: ", "{ has: [house, yard] }", "place: [house, yard]")]
    [InlineData("site: { place: ", "{ lacks: house }", "{ not: house }")]
    [InlineData("weed: { up: ", "{ lacks: true }", "{ not: true }")]
    public void Another_spelling_is_refused_with_the_right_one(string before, string wrong, string right) =>
        Assert.Contains($"expected '{right}'", Refusal($"{before}{wrong} }}"), StringComparison.Ordinal);

    [Theory]
    [InlineData("crop: { is-a: { has: [hollies] } }", "hollies")]
    [InlineData("crop: { is-a: { lacks: [hollies] } }", "hollies")]
    [InlineData("site: { place: [house] }", "house")]
    [InlineData("site: { place: { not: [house] } }", "house")]
    public void One_word_is_no_list(string pattern, string word) =>
        Assert.Contains(
            $"found a list of one word; expected '{word}' alone",
            Refusal(pattern),
            StringComparison.Ordinal
        );

    [Fact]
    public void A_variable_bound_before_stands_under_has_where_the_attribute_is_a_set() =>
        Assert.Contains(
            "found '$cover'; expected '{ has: $cover }': 'allowed-under' is a set",
            Refusal("site: { cover: $cover }", "treatment: { allowed-under: $cover }"),
            StringComparison.Ordinal
        );

    [Fact]
    public void What_the_line_says_is_read() =>
        Assert.Empty(
            Rule.Load(
                "caution: Beware.\n  because: x",
                "site: { cover: $cover, place: { not: house }, equipment: { has: spreader } }",
                "crop: { is-a: { has: [hollies, shrubs] } }",
                "any: { weed: { spreads-by: { lacks: gemmae } } }",
                "treatment: { allowed-under: { has: $cover } }"
            ).Refusals
        );

    private static string Refusal(params string[] patterns) =>
        Assert.Single(Rule.Load("caution: Beware.\n  because: x", patterns).Refusals).ToString();
}

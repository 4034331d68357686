using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Prices;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Knowledge.Tests;

public class PriceFileTests
{
    private static readonly KnowledgeBase s_shipped = KnowledgeFolder.Load(Repository.Rules).Value!;

    [Fact]
    public void Own_prices_are_read_in_their_order()
    {
        Outcome<ImmutableList<Price>, Problem> prices = Parse(
            Price("rice-hulls", "88.5", "usd-per-m3") + Price("prodiamine-granule", "7", "usd-per-1000-pots")
        );
        Assert.Equal(
            [("rice-hulls", 88.5m), ("prodiamine-granule", 7m)],
            prices.Value!.Select(price => (price.Id, price.Value))
        );
    }

    [Fact]
    public void The_shipped_prices_are_valid_price_files() =>
        Assert.Equal(
            s_shipped.Prices.Count,
            new[] { "prices.yaml", "product-prices.yaml" }.Sum(file =>
                PriceFile.Read(Path.Combine(Repository.Rules, file), s_shipped).Value!.Count
            )
        );

    [Theory]
    [InlineData(
        "rice-hull",
        "70",
        "usd-per-m3",
        "own.yaml:1:3: found the price 'rice-hull'; expected the id of a shipped price or of an action; did you mean "
            + "'rice-hulls'?"
    )]
    [InlineData("rice-hulls", "-5", "usd-per-m3", "own.yaml:3:10: found -5; expected a number from 0 to 1000000")]
    [InlineData(
        "rice-hulls",
        "70",
        "usd-per-ton",
        "own.yaml:1:3: found the unit 'usd-per-ton' of 'rice-hulls'; expected 'usd-per-m3'"
    )]
    [InlineData(
        "rice-hulls",
        "lots",
        "usd-per-m3",
        "own.yaml:3:10: found 'lots'; expected a number such as 12, 0.5 or -3"
    )]
    [InlineData(
        "bark-mulch",
        "70",
        "usd-per-m3",
        "own.yaml:1:3: found the unit 'usd-per-m3' of 'bark-mulch'; expected 'usd-per-1000-pots'"
    )]
    public void What_is_wrong_is_said_in_one_line(string id, string value, string unit, string expected) =>
        Assert.Equal(expected, Assert.Single(Parse(Price(id, value, unit)).Refusals).ToString());

    [Fact]
    public void A_price_stands_only_once() =>
        Assert.Equal(
            "own.yaml:6:3: found the price 'propane' a second time; expected each price once",
            Assert
                .Single(Parse(Price("propane", "1", "usd-per-kg") + Price("propane", "2", "usd-per-kg")).Refusals)
                .ToString()
        );

    [Theory]
    [InlineData("")]
    [InlineData("labour-rate: 5\n")]
    [InlineData("- &a { id: propane }\n")]
    [InlineData("- { id: propane, value: 1, unit: usd-per-kg, from: { all: invented }, hurry: yes }\n")]
    public void What_is_no_list_of_prices_is_refused(string text) => Assert.NotEmpty(Parse(text).Refusals);

    [Fact]
    public void A_missing_file_is_a_problem() =>
        Assert.Equal("nowhere.yaml", Assert.Single(PriceFile.Read("nowhere.yaml", s_shipped).Refusals).Where.File);

    // A record of the knowledge that follows a price names one that exists, and the price is above 0: amounts are read
    // off it.
    [Fact]
    public void Every_price_that_an_action_follows_is_above_nothing()
    {
        string[] followed =
        [
            .. s_shipped
                .Practices.Values.Cast<CatalogueAction>()
                .Concat(s_shipped.Treatments.Values)
                .Select(action => action.Cost?.Price)
                .OfType<string>(),
        ];
        Assert.NotEmpty(followed);
        Assert.All(followed, id => Assert.True(s_shipped.Prices[id].Value > 0));
    }

    private static Outcome<ImmutableList<Price>, Problem> Parse(string text) =>
        PriceFile.Parse(text, "own.yaml", s_shipped);

    private static string Price(string id, string value, string unit) =>
        $"- id: {id}\n  name: Mine\n  value: {value}\n  unit: {unit}\n  from: {{ all: own-books }}\n";
}

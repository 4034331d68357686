using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Money;

/// <summary>Areas of the shipped demo visit, under the shipped knowledge, with their answers changed at will.</summary>
internal static class Yards
{
    public static VisitArea Area(string id) => ShippedRules.Demo.Areas.Single(area => area.Id == id);

    public static Outcome<MoneyCase, string> Case(
        VisitArea area,
        decimal? wage = null,
        int? pots = null,
        IEnumerable<Price>? own = null,
        KnowledgeBase? knowledge = null
    ) =>
        MoneyCase.Of(
            ShippedRules.Advisor.Advise(ShippedRules.Demo with { Areas = [area] }).Areas[0],
            ShippedRules.Demo.Date,
            knowledge ?? ShippedRules.Knowledge,
            PriceBook.Of(knowledge ?? ShippedRules.Knowledge, own),
            new YearTerms(wage, pots)
        );

    /// <summary>The case with its year changed.</summary>
    public static MoneyCase In(this MoneyCase money, Func<YearCase, YearCase> change) =>
        money with
        {
            Year = change(money.Year),
        };

    public static WaysCompared Compare(
        VisitArea area,
        decimal? wage = null,
        int? pots = null,
        IEnumerable<Price>? own = null
    )
    {
        Outcome<MoneyCase, string> money = Case(area, wage, pots, own);
        Assert.Empty(money.Refusals);
        Outcome<WaysCompared, string> compared = WaysCompared.Of(money.Value!);
        Assert.Empty(compared.Refusals);
        return compared.Value!;
    }

    public static Way Way(this WaysCompared compared, string id) => compared.Ways.Single(way => way.Plan.Id == id);

    public static Price Price(string id, decimal value, string unit) =>
        new()
        {
            Id = id,
            Name = id,
            Value = value,
            Unit = unit,
            Sources = ["own-books"],
            Where = default,
            Memory = [],
        };
}

using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.Tests.Weeding;

namespace WeedAdvisor.Planning.Tests.Money;

/// <summary>Areas of the shipped demo visit, under the shipped knowledge, with their answers changed at will.</summary>
internal static class Yards
{
    private static readonly Advisor s_advisor = Advisor.Of(Knowledge);
    private static readonly Visit s_visit = Knowledge
        .WorkedVisits.Single(worked => worked.Visit.Id == "demo-spring")
        .Visit;

    public static KnowledgeBase Knowledge => Yard.Knowledge;

    public static VisitArea Area(string id) => s_visit.Areas.Single(area => area.Id == id);

    public static VisitArea With(this VisitArea area, string question, params string[] words) =>
        area with { Answers = area.Answers.SetItem(question, new Answer.Words(WordSet.Of(words))) };

    public static VisitArea With(this VisitArea area, string question, decimal number) =>
        area with { Answers = area.Answers.SetItem(question, new Answer.Number(number)) };

    public static VisitArea Without(this VisitArea area, string question) =>
        area with { Answers = area.Answers.Remove(question) };

    public static VisitArea Expecting(this VisitArea area, params string[] weeds) =>
        area with { Weeds = [.. weeds.Select(weed => new WeedSeen(weed, "expected", null))] };

    public static Outcome<MoneyCase, string> Case(
        VisitArea area,
        decimal? wage = null,
        int? pots = null,
        IEnumerable<Price>? own = null,
        KnowledgeBase? knowledge = null
    ) =>
        MoneyCase.Of(
            s_advisor.Advise(s_visit with { Areas = [area] }).Areas[0],
            s_visit.Date,
            knowledge ?? Knowledge,
            PriceBook.Of(knowledge ?? Knowledge, own),
            new MoneyTerms(wage, pots));

    public static WaysCompared Compare(
        VisitArea area, decimal? wage = null, int? pots = null, IEnumerable<Price>? own = null)
    {
        Outcome<MoneyCase, string> money = Case(area, wage, pots, own);
        Assert.Empty(money.Refusals);
        Outcome<WaysCompared, string> compared = WaysCompared.Of(money.Value!);
        Assert.Empty(compared.Refusals);
        return compared.Value!;
    }

    public static Way Way(this WaysCompared compared, string id) => compared.Ways.Single(way => way.Plan.Id == id);

    public static Price Price(string id, decimal value, string unit) => new()
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

using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;

namespace WeedAdvisor.Reports.Money;

/// <summary>What the ways through an area's year cost, or why that cannot be said.</summary>
/// <param name="Area">The area.</param>
/// <param name="Compared">The ways; null when they cannot be reckoned.</param>
/// <param name="Against">One way held against today's; null when none was asked for.</param>
/// <param name="Refusals">Why they cannot be reckoned; empty when they can.</param>
public sealed record AreaMoney(
    VisitArea Area,
    WaysCompared? Compared,
    WayAgainst? Against,
    ImmutableArray<string> Refusals
);

/// <summary>What the ways of a visit cost, for any format.</summary>
/// <param name="Visit">The visit.</param>
/// <param name="Knowledge">The knowledge.</param>
/// <param name="Prices">The prices.</param>
/// <param name="Areas">Area by area, in the order of the visit.</param>
public sealed record MoneyReport(
    Visit Visit,
    KnowledgeBase Knowledge,
    PriceBook Prices,
    ImmutableArray<AreaMoney> Areas
);

using System.Collections.Immutable;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Season.Programme;

/// <summary>Years of the shipped worked visits.</summary>
internal static class Years
{
    // A year of advice is costly to make and to hold.
    private static readonly Lazy<ImmutableArray<SeasonCase>> s_all = new(() =>
        [
            .. WorkedAreas
                .Where((_, place) => place % Sizes.Of(12, 1) == 0)
                .Select(area => SeasonCase.Of(ShippedRules.Advisor, area, new SeasonRequest()).Value)
                .OfType<SeasonCase>(),
        ]
    );

    public static DateOnly DemoDay => ShippedRules.Demo.Date;

    /// <summary>
    /// The container yard of the demo visit: spurge, eclipta and crabgrass, film in November, two uses last year.
    /// </summary>
    public static VisitArea DemoYard => ShippedRules.Demo.Areas.Single(area => area.Id == "container-yard");

    /// <summary>The yard's year with no more asked of it than usual.</summary>
    public static SeasonCase DemoCase { get; } = Of(DemoYard, DemoDay, new SeasonRequest());

    private static readonly Lazy<YearPlan> s_demoQuick = new(() => Quick(DemoCase));
    private static readonly Lazy<YearPlan> s_demoFull = new(() => Full(DemoCase));

    /// <summary>Its best plan.</summary>
    public static YearPlan DemoQuick => s_demoQuick.Value;

    /// <summary>Its plan with what each rule costs and the next best.</summary>
    public static YearPlan DemoFull => s_demoFull.Value;

    /// <summary>Every area of the worked visits, on its day; not all of them can be planned.</summary>
    public static ImmutableArray<AreaCase> WorkedAreas { get; } =
    [
        .. ShippedRules.Knowledge.WorkedVisits.SelectMany(
            worked => worked.Visit.Areas,
            (worked, area) => AreaCase.Alone(worked.Visit.Date, area)
        ),
    ];

    public static SeasonCase Of(VisitArea area, DateOnly day, SeasonRequest request)
    {
        Outcome<SeasonCase, string> season = SeasonCase.Of(ShippedRules.Advisor, AreaCase.Alone(day, area), request);
        Assert.True(season.IsGood, string.Join(' ', season.Refusals));
        return season.Value;
    }

    public static string Refusal(VisitArea area, SeasonRequest request) =>
        string.Join(' ', SeasonCase.Of(ShippedRules.Advisor, AreaCase.Alone(DemoDay, area), request).Refusals);

    /// <summary>
    /// Areas of the worked visits that can be planned, with their cases: each twelfth, in the long run every one.
    /// </summary>
    public static ImmutableArray<SeasonCase> All => s_all.Value;

    /// <summary>The best plan of a case; fails the test when there is none.</summary>
    public static SeasonPlan Best(SeasonCase season) =>
        SeasonSearch.Prepare(season.Problem).Solve(stop: TestContext.Current.CancellationToken).Plan
        ?? throw new InvalidOperationException("there is no plan");

    public static YearPlan Quick(SeasonCase season) =>
        SeasonPlanner.Quick(
            season,
            ShippedRules.Knowledge,
            SeasonSearch.Prepare(season.Problem),
            TestContext.Current.CancellationToken
        );

    public static YearPlan Full(SeasonCase season) =>
        SeasonPlanner.Full(season, ShippedRules.Knowledge, TestContext.Current.CancellationToken);
}

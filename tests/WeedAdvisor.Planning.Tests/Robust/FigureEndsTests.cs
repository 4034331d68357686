using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Robust;
using WeedAdvisor.Planning.Tests.Plan;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Robust;

/// <summary>
/// The ends of the ranges held against years read anew from knowledge in which the one figure was changed by hand: the
/// oracle shares nothing with what moves figures.
/// </summary>
public sealed class FigureEndsTests
{
    private static readonly AreaPlan s_plan = PlanSearch.Of(
        PlanCase.Of(ShippedRules.Advisor, AreaCase.Alone(Years.DemoDay, Years.DemoYard), new PlanRequest()).Value!,
        FewerRounds.Effort with
        {
            MostSearched = 5,
        }
    );

    private static readonly ImmutableArray<MovedFigure> s_figures = RobustSearch.FiguresOf(s_plan);

    private static KnowledgeBase Shipped => ShippedRules.Knowledge;

    [Theory]
    [InlineData("weeding missed-percent")]
    [InlineData("weeding pull-seconds-over-20-cm")]
    [InlineData("weeding seedlings-per-1000-pots-per-year-wind")]
    [InlineData("weeding diameter-cm-at-first-seed")]
    [InlineData("weeding walking-percent-by-ground")]
    public void Of_a_number_of_the_weeding_model(string figure) =>
        Holds(figure, value =>
            Read(
                Shipped with
                {
                    Weeding = Shipped.Weeding.SetItem(
                        Last(figure),
                        Shipped.Weeding[Last(figure)] with
                        {
                            Value = value,
                        }
                    ),
                }
            )
        );

    [Theory]
    [InlineData("price finished-pot")]
    [InlineData("price unsaleable-share-overgrown")]
    [InlineData("price pine-bark-mini-nuggets")]
    [InlineData("price oryzalin-in-sprays")]
    public void Of_a_price(string figure) =>
        Holds(figure, value =>
            Read(Shipped, prices: PriceBook.Of(Shipped, [Shipped.Prices[Last(figure)] with { Value = value }]))
        );

    [Fact]
    public void Of_the_wage() => Holds("wage", value => Read(Shipped, wage: value));

    [Theory]
    [InlineData("usual plants-hurt-per-10000-each-application")]
    [InlineData("usual control-left-percent-at-end-of-residual")]
    [InlineData("usual seed-blown-in-percent-of-base")]
    public void Of_a_usual_number(string figure) =>
        Holds(figure, value =>
            Read(
                Shipped with
                {
                    Usual = new UsualNumbers(
                        Shipped.Usual.Records.SetItem(
                            Last(figure),
                            Shipped.Usual.Records[Last(figure)] with
                            {
                                Value = value,
                            }
                        )
                    ),
                }
            )
        );

    [Theory]
    [InlineData("time calibration-minutes-a-use")]
    [InlineData("time hand-spreader-acres-an-hour")]
    [InlineData("time spray-litres-a-hectare")]
    public void Of_a_working_time(string figure) =>
        Holds(figure, value =>
            Read(
                Shipped with
                {
                    WorkingTimes = Shipped.WorkingTimes.SetItem(
                        Last(figure),
                        Shipped.WorkingTimes[Last(figure)] with
                        {
                            Value = new Span(value, value),
                        }
                    ),
                }
            )
        );

    [Fact]
    public void Of_a_weed()
    {
        string weed = s_plan.Case.Year.Weeds.Counted[0].Weed.Id;
        Holds($"weed {weed} first seed", value =>
            Read(
                Shipped with
                {
                    Weeds = Shipped.Weeds.SetItem(
                        weed,
                        Shipped.Weeds[weed] with
                        {
                            WeeksToFirstSeed = new Span(value, value),
                        }
                    ),
                }
            )
        );
    }

    [Fact]
    public void Of_how_long_a_product_holds()
    {
        string use = s_plan.Best!.Uses[0].Treatment;
        Holds($"action {use} weeks", value =>
            Read(
                Shipped with
                {
                    Treatments = Shipped.Treatments.SetItem(
                        use,
                        Shipped.Treatments[use] with
                        {
                            ResidualWeeks = new Span(value, value),
                        }
                    ),
                }
            )
        );
    }

    // All products together: a grade of the scale stands for one range in all of them.
    [Theory]
    [InlineData(false)]
    [InlineData(true)]
    public void Of_what_products_stop(bool isHigh)
    {
        MovedFigure[] strengths =
        [
            .. s_figures
                .Where(figure => figure.Id.EndsWith(" strength", StringComparison.Ordinal))
                .Where(figure => Shipped.Treatments.ContainsKey(figure.Id.Split(' ')[1])),
        ];
        Assert.NotEmpty(strengths);
        YearCase year = Read(
            Shipped with
            {
                Scale = Shipped.Scale.ToImmutableSortedDictionary(
                    step => step.Key,
                    step => step.Value with { ReductionPercent = EndOf(step.Value.ReductionPercent) },
                    StringComparer.Ordinal
                ),
            }
        );
        Equal(year, strengths.Select(figure => (figure, isHigh ? figure.High : figure.Low)));

        Span EndOf(Span range) => isHigh ? new Span(range.High, range.High) : new Span(range.Low, range.Low);
    }

    [Fact]
    public void A_late_year_is_one_whose_weeds_come_up_later()
    {
        MovedFigure late = Figure("usual weeks-that-the-year-is-late");
        ImmutableArray<decimal> usual = RobustSearch.Prices(s_plan, []),
            later = RobustSearch.Prices(s_plan, [(late, late.High)]),
            earlier = RobustSearch.Prices(s_plan, [(late, late.Low)]);
        Assert.NotEqual(usual, later);
        Assert.NotEqual(usual, earlier);
        // Less than half a week is none.
        Assert.Equal(usual, RobustSearch.Prices(s_plan, [(late, 0.4m)]));
    }

    private static void Holds(string figure, Func<decimal, YearCase> year)
    {
        MovedFigure moved = Figure(figure);
        foreach (decimal end in new[] { moved.Low, moved.High })
            Equal(year(end), [(moved, end)]);
    }

    private static void Equal(YearCase year, IEnumerable<(MovedFigure Figure, decimal Value)> moved)
    {
        PlanRobustness any = RobustSearch.Of(s_plan, [], 1, draws: 1);
        Assert.Equal(
            any.Ways.Select(way => Math.Round(WayCosting.Of(year, Renewed(way.Way.Plan, year)).Value!.Usd, 6)),
            RobustSearch.Prices(s_plan, moved).Select(usd => Math.Round(usd, 6))
        );
    }

    private static MovedFigure Figure(string id) => s_figures.Single(figure => figure.Id == id);

    private static string Last(string figure) => figure.Split(' ')[^1];

    private static WayPlan Renewed(WayPlan plan, YearCase year) =>
        plan with
        {
            Parts = [.. plan.Parts.Select(part => part with { Action = year.Knowledge.ActionOf(part.Action.Id)! })],
        };

    private static YearCase Read(KnowledgeBase knowledge, PriceBook? prices = null, decimal? wage = null) =>
        YearCase
            .Of(
                AreaReading.Of(Years.DemoYard, Years.DemoDay, knowledge),
                Years.DemoDay,
                knowledge,
                prices ?? PriceBook.Of(knowledge),
                new YearTerms(wage)
            )
            .Value!;
}

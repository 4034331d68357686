using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Robust;
using WeedAdvisor.Planning.Tests.Plan;
using WeedAdvisor.Planning.Tests.Season.Programme;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Robust;

/// <summary>Whether a plan stands when its figures move, on the demo yard.</summary>
public sealed class RobustSearchTests
{
    private const int Draws = 60;

    private static readonly AreaPlan s_plan = PlanSearch.Of(
        PlanCase
            .Of(ShippedRules.Advisor, AreaCase.Alone(Years.DemoDay, Years.DemoYard), new PlanRequest { Pots = 10_000 })
            .Value!,
        FewerRounds.Effort with
        {
            MostSearched = 5,
        }
    );

    private static readonly ImmutableArray<MovedFigure> s_figures = RobustSearch.FiguresOf(s_plan);

    private static readonly PlanRobustness s_robust = RobustSearch.Of(s_plan, seed: 7, Draws);

    private static CancellationToken Stop => TestContext.Current.CancellationToken;

    [Fact]
    public void Ranges_without_width_leave_the_plan_the_cheapest_in_every_draw()
    {
        PlanRobustness certain = RobustSearch.Of(s_plan, s_figures.Select(figure => figure.Certain()), 7, Draws, Stop);
        Assert.Equal(Draws, certain.Stays);
        Assert.Null(certain.Loses);
        Assert.Empty(certain.Figures);
        Assert.Empty(certain.Swings);
        Assert.Empty(certain.Turns);
        Assert.Equal((double)certain.SavesUsd, certain.Saves.Low);
        Assert.Equal((double)certain.SavesUsd, certain.Saves.High);
    }

    // A range beside a figure that does not hold it tells the grower that one of the two is wrong.
    [Fact]
    public void What_is_saved_at_the_usual_figures_lies_within_what_is_drawn() =>
        Assert.InRange((double)s_robust.SavesUsd, s_robust.Saves.Low, s_robust.Saves.High);

    [Fact]
    public void What_is_drawn_lies_within_its_range_as_often_below_the_usual_value_as_above() =>
        Gen.Select(Gen.ULong, Gen.Double[0.1, 5], Gen.Double[0.1, 5])
            .Sample(
                (seed, down, up) =>
                {
                    const int draws = 2000;
                    var numbers = new DrawnNumbers(seed);
                    double[] drawn = [.. Enumerable.Range(0, draws).Select(_ => numbers.About(10 - down, 10, 10 + up))];
                    Assert.All(drawn, one => Assert.InRange(one, 10 - down, 10 + up));
                    // Six standard errors of a share of one half.
                    Assert.InRange(drawn.Count(one => one < 10) / (double)draws, 0.43, 0.57);
                    // Of what falls so linearly to either side, three quarters lie in the nearer half.
                    Assert.InRange(
                        drawn.Count(one => one > 10 - (down / 2) && one < 10 + (up / 2)) / (double)draws,
                        0.69,
                        0.81
                    );
                },
                iter: Sizes.Of(few: 50, many: 2000)
            );

    [Fact]
    public void The_seed_decides_and_nothing_else()
    {
        PlanRobustness again = RobustSearch.Of(s_plan, [.. s_figures.Reverse()], seed: 7, Draws, Stop);
        Assert.Equal(s_robust.Ways, again.Ways);
        Assert.Equal(s_robust.Swings.Select(swing => (swing.Figure.Id, swing.Size)), Sizes(again));
        Assert.Equal(s_robust.Saves, again.Saves);
        Assert.Equal(s_robust.Loses, again.Loses);
        Assert.Equal(s_robust.Turns.Select(turn => turn.Past), again.Turns.Select(turn => turn.Past));
        PlanRobustness other = RobustSearch.Of(s_plan, seed: 8, Draws, Stop);
        Assert.NotEqual(s_robust.Saves, other.Saves);
        Assert.Equal(Sizes(s_robust), Sizes(other));

        static IEnumerable<(string Id, decimal Size)> Sizes(PlanRobustness robust) =>
            robust.Swings.Select(swing => (swing.Figure.Id, swing.Size));
    }

    [Fact]
    public void The_order_in_which_figures_are_moved_does_not_matter()
    {
        Gen.Select(
                Gen.Double[0, 1].Array[s_figures.Length],
                Gen.Shuffle(Enumerable.Range(0, s_figures.Length).ToArray())
            )
            .Sample(
                (places, order) =>
                {
                    (MovedFigure Figure, decimal Value)[] moved =
                    [
                        .. s_figures.Select(
                            (figure, i) => (figure, figure.Low + ((decimal)places[i] * (figure.High - figure.Low)))
                        ),
                    ];
                    Assert.Equal(
                        RobustSearch.Prices(s_plan, moved),
                        RobustSearch.Prices(s_plan, order.Select(i => moved[i]))
                    );
                },
                iter: Sizes.Of(few: 5, many: 500),
                threads: 1
            );
    }

    // What is moved by a hair must not jump: a figure put in another unit or place than it is read in would.
    [Fact]
    public void A_figure_moved_by_a_hair_moves_prices_by_a_hair()
    {
        ImmutableArray<decimal> usual = RobustSearch.Prices(s_plan, []);
        Assert.Equal(s_plan.Best!.Way.Usd, usual[0]);
        int every = Sizes.Of(few: 4, many: 1);
        foreach (MovedFigure figure in s_figures.Where((_, i) => i % every == 0))
        {
            // A product holds whole weeks: a hair may be one.
            decimal most = figure.Kind == FigureKind.Duration ? 0.05m : 0.005m;
            foreach (decimal side in new[] { -1m, 1m })
            {
                decimal hair = Math.Clamp(
                    figure.Usual + (side * 0.0001m * (figure.High - figure.Low)),
                    figure.Low,
                    figure.High
                );
                Assert.All(RobustSearch.Prices(s_plan, [(figure, hair)]).Zip(usual), usd =>
                    Assert.True(Math.Abs(usd.First - usd.Second) <= most * usd.Second, figure.Id)
                );
            }
        }
    }

    [Fact]
    public void Every_figure_stands_in_its_range_and_names_its_source()
    {
        Assert.True(s_figures.Length > 60);
        Assert.All(s_figures, figure =>
        {
            Assert.True(figure.Low <= figure.Usual && figure.Usual <= figure.High, figure.Id);
            Assert.NotEmpty(figure.Name);
            Assert.NotEmpty(figure.Sources);
        });
        Assert.Equal(s_figures.Length, s_figures.Select(figure => figure.Id).Distinct().Count());
        foreach (FigureKind kind in Enum.GetValues<FigureKind>())
            Assert.Contains(s_figures, figure => figure.Kind == kind);
    }

    [Fact]
    public void Every_draw_has_one_cheapest_way_and_the_plan_is_one_of_them()
    {
        Assert.Equal(Draws, s_robust.Ways.Sum(way => way.Cheapest));
        Assert.Same(s_plan.Best!.Way, s_robust.Ways[0].Way);
        Assert.All(s_robust.Ways, way => Assert.True(way.Way.Usd >= s_plan.Best.Way.Usd));
        Assert.Equal(s_robust.Stays < Draws, s_robust.Loses is not null);
        Assert.Equal(s_robust.Swings.OrderByDescending(swing => swing.Size), s_robust.Swings);
    }

    [Fact]
    public void A_figure_turns_the_choice_past_the_value_told_and_not_before()
    {
        Assert.NotEmpty(s_robust.Turns);
        foreach (TurningPoint turn in s_robust.Turns)
        {
            Assert.True(CheapestAt(turn.Past) != 0, turn.Figure.Id);
            decimal before = turn.Past + ((turn.Figure.Usual - turn.Past) * 0.001m);
            // Weeks are whole, so there the choice turns in a step.
            if (turn.Figure.Kind != FigureKind.Season)
                Assert.Equal(0, CheapestAt(before));

            int CheapestAt(decimal value)
            {
                ImmutableArray<decimal> usd = RobustSearch.Prices(s_plan, [(turn.Figure, value)]);
                return usd.IndexOf(usd.Min());
            }
        }
    }

    [Fact]
    public void A_way_that_is_cheaper_from_the_start_is_not_held_against_the_plan()
    {
        AreaPlan turned = s_plan with { Today = s_plan.Best!.Way, Best = s_plan.Best with { Way = s_plan.Today } };
        PlanRobustness robust = RobustSearch.Of(turned, 7, draws: 3, Stop);
        Assert.Contains("today's way", robust.NotOpen);
        Assert.Equal(s_plan.Best.Way.Usd - s_plan.Today.Usd, robust.SavesUsd);
    }

    [Theory]
    [InlineData(0)]
    [InlineData(RobustSearch.MostDraws + 1)]
    public void Too_few_or_too_many_draws_are_refused(int draws) =>
        Assert.Throws<ArgumentOutOfRangeException>(() => RobustSearch.Of(s_plan, 7, draws, Stop));
}

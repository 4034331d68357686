using System.Collections.Immutable;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Rounds;

namespace WeedAdvisor.Planning.Robust;

/// <summary>One of the ways that a plan is held against while figures move.</summary>
/// <param name="Kind">What kind of way it is, in plain words.</param>
/// <param name="Way">The way at the usual figures.</param>
/// <param name="Cheapest">In how many draws it was the cheapest; of equal ones the first.</param>
/// <param name="BadLossUsd">
/// What it is dearer than the cheapest by in one draw of ten or by more, US dollars for 1000 pots.
/// </param>
public sealed record RivalWay(string Kind, Way Way, int Cheapest, decimal BadLossUsd);

/// <summary>What a plan saves against today's way with one figure at either end, US dollars for 1000 pots.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="SavesAtLow">With the figure at its low end; below 0 where the plan is dearer.</param>
/// <param name="SavesAtHigh">With the figure at its high end.</param>
public sealed record FigureSwing(MovedFigure Figure, decimal SavesAtLow, decimal SavesAtHigh)
{
    /// <summary>How far the figure moves what is saved.</summary>
    public decimal Size => Math.Abs(SavesAtHigh - SavesAtLow);

    /// <summary>As one of the bars of a drawing, for all pots.</summary>
    /// <param name="scale">What a figure for 1000 pots is multiplied with.</param>
    public Swing As(decimal scale) =>
        new(
            new UncertainInput(Figure.Name, Figure.Unit, Figure.Low, Figure.Usual, Figure.High),
            SavesAtLow * scale,
            SavesAtHigh * scale
        );
}

/// <summary>A figure that alone makes another way cheaper than the plan.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="Past">The value past which it does, towards <paramref name="IsAbove"/>.</param>
/// <param name="IsAbove">Whether it does above that value; else below.</param>
/// <param name="Kind">What kind of way is the cheapest at that end.</param>
/// <param name="LosesUsd">By how much the plan is dearer at that end, US dollars for 1000 pots.</param>
public sealed record TurningPoint(MovedFigure Figure, decimal Past, bool IsAbove, string Kind, decimal LosesUsd);

/// <summary>A figure that stands elsewhere in the draws in which the plan loses.</summary>
/// <param name="Figure">The figure.</param>
/// <param name="MeanLost">Its mean in the draws in which the plan loses.</param>
/// <param name="MeanKept">Its mean in the others.</param>
/// <param name="Errors">The difference in standard errors, positive when it is higher where the plan loses.</param>
public sealed record LeaningFigure(MovedFigure Figure, decimal MeanLost, decimal MeanKept, double Errors);

/// <summary>
/// Whether a plan stays the cheapest of the ways that were looked at when the figures behind the prices move within
/// their ranges. The ways stay as they were planned; every price is that of <see cref="WayCosting"/>. Money is US
/// dollars for 1000 pots.
/// </summary>
public sealed record PlanRobustness
{
    /// <summary>The plan.</summary>
    public required AreaPlan Plan { get; init; }

    /// <summary>The seed of the draws.</summary>
    public required ulong Seed { get; init; }

    /// <summary>How many times all figures were drawn.</summary>
    public required int Draws { get; init; }

    /// <summary>The figures that move the price of any of the ways.</summary>
    public required ImmutableArray<MovedFigure> Figures { get; init; }

    /// <summary>The plan itself, then the ways it is held against.</summary>
    public required ImmutableArray<RivalWay> Ways { get; init; }

    /// <summary>
    /// Ways that cost less than the plan from the start, and so are not open to the grower: they are not held against
    /// it.
    /// </summary>
    public required ImmutableArray<string> NotOpen { get; init; }

    /// <summary>By how much the plan is dearer where it is not the cheapest; null when it always is.</summary>
    public required DrawnBand? Loses { get; init; }

    /// <summary>What the plan saves against today's way over all draws.</summary>
    public required DrawnBand Saves { get; init; }

    /// <summary>What the plan saves against today's way at the usual figures.</summary>
    public required decimal SavesUsd { get; init; }

    /// <summary>
    /// What it saves with one figure at either end, the figure that moves it farthest first; figures that move both
    /// ways alike are left out.
    /// </summary>
    public required ImmutableArray<FigureSwing> Swings { get; init; }

    /// <summary>Figures that alone turn the choice, dearest mistake first.</summary>
    public required ImmutableArray<TurningPoint> Turns { get; init; }

    /// <summary>Figures that stand elsewhere where the plan loses, the farthest first.</summary>
    public required ImmutableArray<LeaningFigure> Leans { get; init; }

    /// <summary>The way that loses least in the bad draws: the one to take where nothing can be found out.</summary>
    public RivalWay Safest => Ways.OrderBy(way => way.BadLossUsd).First();

    /// <summary>In how many draws the plan stays the cheapest.</summary>
    public int Stays => Ways[0].Cheapest;

    /// <summary>The same as a share, 0 to 1.</summary>
    public double StaysShare => Stays / (double)Draws;

    /// <summary>How many of the figures have ranges that nobody has published.</summary>
    public int Assumed => Figures.Count(figure => figure.IsAssumed);
}

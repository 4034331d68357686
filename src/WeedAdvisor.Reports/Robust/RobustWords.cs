using System.Globalization;
using WeedAdvisor.Planning.Robust;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Robust;

/// <summary>What the figures say to a grower, and what he can do about them.</summary>
public static class RobustWords
{
    private const double Stands = 0.99,
        NearlyStands = 0.9;

    private const int MostToFindOut = 2;

    /// <summary>The answer in a sentence or two.</summary>
    public static Line Verdict(PlanRobustness robust)
    {
        if (robust.Ways.Length == 1)
            return "There is no way of another kind to hold the plan against.";
        string hangsOn = Text.Listing.And([.. ToFindOut(robust).Select(figure => Topic(figure.Kind)).Distinct()]);
        RivalWay most = robust.Ways.MaxBy(way => way.Cheapest)!;
        return robust.StaysShare >= Stands && robust.Turns.IsEmpty
                ? "This choice stands whatever the figures. Nothing need be found out first."
            : robust.StaysShare >= NearlyStands
                ? $"This choice stands for nearly all figures.{If(hangsOn, " What could turn it is ")}"
            : most.Kind == robust.Ways[0].Kind ? $"The plan is the best bet, but it is not sure.{HangsOn(hangsOn)}"
            : $"Too close to call: {most.Kind}, is the cheapest more often than the plan.{HangsOn(hangsOn)}";
    }

    /// <summary>The figures that matter most for the choice, each once.</summary>
    public static IReadOnlyList<MovedFigure> ToFindOut(PlanRobustness robust) =>
        [
            .. robust
                .Turns.Select(turn => turn.Figure)
                .Concat(robust.Leans.Select(lean => lean.Figure))
                .DistinctBy(figure => figure.Id)
                .Take(MostToFindOut),
        ];

    /// <summary>How a grower finds a figure out.</summary>
    public static string HowToFindOut(FigureKind kind) =>
        kind switch
        {
            FigureKind.Wage => "reckon what an hour costs you with everything on it, and give it with --wage",
            FigureKind.Price => "ask for the price and put it into a file of your own (--prices)",
            FigureKind.Loss =>
                "count at the next sale what weeds left you with, and put it with the price of a pot into a file of "
                    + "your own (--prices)",
            FigureKind.Harm => "treat a few plants of each crop first, wait, and count what is hurt",
            FigureKind.Work => "time your own crew over one block",
            FigureKind.Emergence =>
                "pull a hundred pots clean, leave them untreated, and count what is up in four weeks",
            FigureKind.Season => "write down when the first seedlings stand, year by year",
            FigureKind.Growth =>
                "leave ten pots alone and write down week by week how large the weeds are and when they seed",
            FigureKind.Strength => "leave ten pots without it beside ten with it, and count both after six weeks",
            FigureKind.Duration => "write down in which week after the use weeds come up again",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "a kind of figure without a way to find it"),
        };

    /// <summary>A way with what is done in it besides the rounds.</summary>
    public static string Named(RivalWay way) =>
        way.Way.Plan.Parts.IsEmpty
            ? way.Kind
            : $"{way.Kind}: {string.Join("; ", way.Way.Plan.Parts.Select(part => part.Action.Name))}";

    /// <summary>A seed.</summary>
    public static string Seed(ulong seed) => seed.ToString(CultureInfo.InvariantCulture);

    /// <summary>A value of a figure with its unit.</summary>
    public static string Value(MovedFigure figure, decimal value) =>
        string.Create(CultureInfo.InvariantCulture, $"{Rounded(value):#,0.##} {figure.Unit}").TrimEnd();

    /// <summary>The range of a figure with its unit.</summary>
    public static string Range(MovedFigure figure) =>
        string.Create(
                CultureInfo.InvariantCulture,
                $"{Rounded(figure.Low):#,0.##} to {Rounded(figure.High):#,0.##} {figure.Unit}"
            )
            .TrimEnd();

    // Three figures are more than anybody knows.
    private static decimal Rounded(decimal value)
    {
        decimal step = 1;
        while (Math.Abs(value) / step >= 1000)
            step *= 10;
        return Math.Round(value / step, step == 1 ? 2 : 0) * step;
    }

    private static string HangsOn(string topics) => If(topics, " It hangs on ");

    private static string If(string topics, string before) => topics.Length == 0 ? "" : $"{before}{topics}.";

    private static string Topic(FigureKind kind) =>
        kind switch
        {
            FigureKind.Wage => "the wage",
            FigureKind.Price => "what you pay for things",
            FigureKind.Loss => "how many plants weeds cost you and what they bring",
            FigureKind.Harm => "how many plants a product hurts",
            FigureKind.Work => "how fast and how thoroughly your crew weeds",
            FigureKind.Emergence => "how many weeds come up",
            FigureKind.Season => "when weeds come up",
            FigureKind.Growth => "how fast weeds grow and seed",
            FigureKind.Strength => "how well the measures work",
            FigureKind.Duration => "how long products hold",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "a kind of figure without a name"),
        };
}

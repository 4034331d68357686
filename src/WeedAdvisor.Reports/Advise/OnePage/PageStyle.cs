using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>What every part of an area's page needs.</summary>
/// <param name="Names">Where names come from.</param>
/// <param name="Day">The day of the visit.</param>
/// <param name="Area">The area.</param>
/// <param name="Cite">Whether sources are named.</param>
/// <param name="Bars">Why the chemicals that are barred must not be used: the reasons that bar most first.</param>
internal sealed record PageStyle(Names Names, DateOnly Day, VisitArea Area, bool Cite, ImmutableArray<BarGroup> Bars)
{
    /// <summary>
    /// What the page of an area needs; what is grouped here is grouped once, however often the page is tried for fit.
    /// </summary>
    public static PageStyle Of(Names names, DateOnly day, AreaAdvice area, bool cite) =>
        new(
            names,
            day,
            area.Area,
            cite,
            [
                .. BarGroups
                    .Of(names, [.. area.Barred.Where(one => names.IsTreatment(one.Action))], day)
                    .OrderByDescending(group => group.Actions.Length),
            ]
        );

    /// <summary>Keys of sources when they are wanted.</summary>
    public string Keys(ImmutableArray<string> sources) => Cite ? Figures.Keys(sources) : "";
}

/// <summary>How much a page tells: steps from generous to sparse, so that it fits.</summary>
/// <param name="Lines">How many lines of work stand before "more".</param>
/// <param name="Told">How many of them are told with what to do and why.</param>
/// <param name="WithReason">How many more are told with why.</param>
/// <param name="Cautions">How many cautions an action told has at most.</param>
/// <param name="Mind">How many cautions for the whole area.</param>
/// <param name="Waiting">How many lines on what waits.</param>
/// <param name="Barred">How many reasons of what must not be used.</param>
internal sealed record PageDetail(int Lines, int Told, int WithReason, int Cautions, int Mind, int Waiting, int Barred)
{
    private const int LinesWithDates = 5,
        LinesAlone = 2;

    /// <summary>How many lines on what becomes possible, and when: kept longer than most.</summary>
    public int Later =>
        Lines >= LinesWithDates ? 2
        : Lines > LinesAlone ? 1
        : 0;

    /// <summary>How many notes on weeds are told: as many as there is room for.</summary>
    public int Notes { get; init; }

    /// <summary>The steps, the most generous first: each tells no more of anything than the one before.</summary>
    public static ImmutableArray<PageDetail> Steps { get; } =
    [
        new(10, 10, 0, 3, 4, 3, 3),
        new(10, 6, 4, 2, 4, 2, 2),
        new(10, 5, 5, 2, 3, 2, 2),
        new(9, 5, 4, 1, 3, 2, 1),
        new(8, 5, 3, 1, 2, 2, 1),
        new(7, 4, 3, 1, 2, 2, 1),
        new(7, 4, 2, 1, 1, 2, 1),
        new(6, 3, 3, 1, 1, 2, 1),
        new(6, 3, 2, 1, 1, 1, 1),
        new(5, 3, 2, 1, 1, 1, 1),
        new(5, 3, 2, 0, 0, 1, 1),
        new(5, 2, 2, 0, 0, 1, 1),
        new(4, 2, 2, 0, 0, 1, 0),
        new(4, 2, 1, 0, 0, 1, 0),
        new(3, 2, 1, 0, 0, 0, 0),
        new(3, 1, 1, 0, 0, 0, 0),
        new(2, 1, 0, 0, 0, 0, 0),
        new(2, 0, 1, 0, 0, 0, 0),
        new(1, 0, 1, 0, 0, 0, 0),
        new(1, 0, 0, 0, 0, 0, 0),
    ];
}

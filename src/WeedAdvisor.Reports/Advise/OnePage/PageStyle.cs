using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Advise.InHand;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>What every part of an area's page needs.</summary>
/// <param name="Names">Where names come from.</param>
/// <param name="Day">The day of the visit.</param>
/// <param name="Area">The area.</param>
/// <param name="Cite">Whether sources are named.</param>
/// <param name="Chemicals">How it stands with the chemicals.</param>
/// <param name="Work">The lines of work, habits left out.</param>
internal sealed record PageStyle(
    Names Names,
    DateOnly Day,
    VisitArea Area,
    bool Cite,
    AreaChemicals Chemicals,
    ImmutableArray<WorkLine> Work
)
{
    /// <summary>The clear actions.</summary>
    public required ImmutableArray<ClearAction> Clear { get; init; }

    /// <summary>The answers on the chemicals that the grower has, asks about or used last.</summary>
    public required ImmutableArray<HeldAnswer> Held { get; init; }

    /// <summary>Why other chemicals may not be used here.</summary>
    public required ImmutableArray<BarredLine> Barred { get; init; }

    /// <summary>How many are barred, in a sentence.</summary>
    public required string BarredInAll { get; init; }

    /// <summary>
    /// What the page of an area needs; what is worked out here is worked out once, however often the page is tried for
    /// fit.
    /// </summary>
    public static PageStyle Of(Names names, DateOnly day, AreaAdvice area, bool cite)
    {
        var chemicals = AreaChemicals.Of(names, day, area);
        ImmutableArray<HeldAnswer> held = HeldAnswers.Of(names, area, day);
        return new(
            names,
            day,
            area.Area,
            cite,
            chemicals,
            [.. WorkLine.Of(area.Clear).Where(line => line.Best.Horizon != Horizon.Habit)]
        )
        {
            Clear = area.Clear,
            Held = held,
            Barred = BarredLines.Of(names, area, held, chemicals.Later.SelectMany(line => line.Chemicals).ToHashSet()),
            BarredInAll = BarredLines.Count(names, area),
        };
    }

    /// <summary>Keys of sources when they are wanted.</summary>
    public string Keys(ImmutableArray<string> sources) => Cite ? Figures.Keys(sources) : "";
}

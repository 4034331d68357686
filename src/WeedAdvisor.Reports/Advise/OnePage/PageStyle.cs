using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Advise.InHand;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>What every part of an area's page needs.</summary>
/// <param name="Names">Where names come from.</param>
/// <param name="Day">The day of the visit.</param>
/// <param name="Area">The area.</param>
/// <param name="Reading">The same, as read.</param>
/// <param name="Cite">Whether sources are named.</param>
/// <param name="Chemicals">How it stands with the chemicals.</param>
/// <param name="Work">The lines of work, habits left out.</param>
internal sealed record PageStyle(
    Names Names,
    DateOnly Day,
    VisitArea Area,
    AreaReading Reading,
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
        var style = new PageStyle(
            names,
            day,
            area.Area,
            area.Reading,
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
        return style with { PreventBy = style.FirstPreventBy() };
    }

    /// <summary>Whether no weed is up, and some are to come.</summary>
    public bool IsClean =>
        Area.Weeds is { } weeds && weeds.All(seen => seen.IsUp == false) && !Reading.Coming.Weeds.IsEmpty;

    /// <summary>
    /// By when what stops seed must lie here, and why: of the first choice; empty where nothing presses.
    /// </summary>
    public string PreventBy { get; private init; } = "";

    private string FirstPreventBy() =>
        Work.SelectMany(line => line.Others.Prepend(line.Best))
            .Where(one => one.WorksOn == WorksOn.Coming)
            .Select(one => one.Action)
            .Concat(Chemicals.Waiting.SelectMany(group => group.Actions))
            .Where(Names.IsTreatment)
            .Select(PressingOn)
            .FirstOrDefault(text => text.Length > 0, "");

    /// <summary>By when a chemical must lie here, and why; empty where nothing presses.</summary>
    public string PressingOn(string action) =>
        DateLines.Pressing(Names.Dates(action, Reading, Day), Day, isToday: false)?.ToString() ?? "";

    /// <summary>Keys of sources when they are wanted.</summary>
    public string Keys(ImmutableArray<string> sources) => Cite ? Figures.Keys(sources) : "";
}

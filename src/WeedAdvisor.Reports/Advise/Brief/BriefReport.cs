using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.Brief;

/// <summary>
/// The advice on a few pages: the best actions of each group, what is said of several once, the rest counted. What it
/// leaves out it says so, and where to find it.
/// </summary>
internal static class BriefReport
{
    private const int MostNames = 4;

    /// <summary>The page of one area.</summary>
    /// <param name="style">How it is written.</param>
    /// <param name="area">The advice.</param>
    /// <param name="told">What is told of each action that is told in full.</param>
    public static IEnumerable<Block> OfArea(
        BriefStyle style,
        AreaAdvice area,
        IReadOnlyDictionary<string, ToldAction> told
    )
    {
        (Names names, DateOnly day) = (style.Names, style.Day);
        return
        [
            AreaHead.Of(names, area.Area),
            .. KeepOutSection.Of(names, area, day),
            .. QuestionSection.Of(area),
            .. BriefActions.Of(style, area, told),
            .. BriefFindings.Cautions(style, area),
            .. BriefFindings.Of(area),
            .. BriefWaiting.Of(names, area),
            .. PossibleSection.Of(names, area, day, MostNames),
            .. BriefBarred.Of(style, area),
            .. NotAdvisedSection.Of(names, area, MostNames),
            .. BriefFindings.Conflicts(style, area),
            .. FindingSection.Gaps(area),
        ];
    }

    /// <summary>How to read it.</summary>
    public static IEnumerable<Block> Key(SeenInAreas seen) =>
        [Heading.Section("How to read this"), ItemList.Dashes(Lines(seen)).At(2)];

    private static IEnumerable<Line> Lines(SeenInAreas seen)
    {
        if (seen.HasClear)
            yield return "In brackets behind an action: its merit, from 0 to 1. It ranks them, best first; "
                + "what wants a clean surface stands after the cleaning.";
        if (seen.HasInventedCosts)
            yield return "Costs rest on invented figures. Put your own in their place.";
        yield return "Everything: 'weedadvisor advise VISIT --full'.";
        yield return "All of one action: 'weedadvisor why VISIT ACTION'.";
        if (seen.HasClearTreatment)
            yield return "A chemical that is only named here: read all of it there before you use it.";
    }
}

/// <summary>What every part of an area's page needs.</summary>
/// <param name="Names">Where names come from.</param>
/// <param name="Day">The day of the visit.</param>
/// <param name="Area">The area.</param>
/// <param name="IsForPots">Whether the place holds pots; null when the place is not told.</param>
/// <param name="Cite">Whether sources are named.</param>
internal sealed record BriefStyle(Names Names, DateOnly Day, VisitArea Area, bool? IsForPots, bool Cite)
{
    /// <summary>What the page of an area needs.</summary>
    public static BriefStyle Of(Names names, DateOnly day, AreaAdvice area, bool cite) =>
        new(names, day, area.Area, area.Reading.IsForPots, cite);

    /// <summary>Keys of sources when they are wanted.</summary>
    public string Keys(ImmutableArray<string> sources) => Cite ? Figures.Keys(sources) : "";
}

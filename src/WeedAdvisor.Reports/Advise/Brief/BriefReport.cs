using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
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

    public static IEnumerable<Block> Of(Names names, KnowledgeBase knowledge, VisitAdvice advice, bool cite)
    {
        var told = new Told();
        return
        [
            .. advice.Areas.Any(area => Safety.NamesTreatment(area, knowledge)) ? SafetyBlocks.Standing() : [],
            .. advice.Areas.SelectMany(area => OfArea(names, advice.Visit.Date, area, cite, told)),
            Heading.Section("How to read this"),
            ItemList.Dashes(Key(names, advice)).At(2),
        ];
    }

    private static IEnumerable<Block> OfArea(Names names, DateOnly day, AreaAdvice area, bool cite, Told told)
    {
        var style = new BriefStyle(names, day, area.Area, area.Reading.IsForPots, cite);
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

    private static IEnumerable<Line> Key(Names names, VisitAdvice advice)
    {
        ClearAction[] clear = [.. advice.Areas.SelectMany(area => area.Clear)];
        if (clear.Length > 0)
            yield return "In brackets behind an action: its merit, from 0 to 1. It ranks them, best first.";
        if (clear.Any(action => Costs.IsInvented(names.Record(action.Action))))
            yield return "Costs rest on invented figures. Put your own in their place.";
        yield return "Everything: 'weedadvisor advise VISIT --full'.";
        yield return "All of one action: 'weedadvisor why VISIT ACTION'.";
        if (clear.Any(action => names.IsTreatment(action.Action)))
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
    /// <summary>Keys of sources when they are wanted.</summary>
    public string Keys(ImmutableArray<string> sources) => Cite ? Figures.Keys(sources) : "";
}

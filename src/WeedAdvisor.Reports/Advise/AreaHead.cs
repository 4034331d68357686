using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>The head of an area: its name, the weeds seen there, and those that are to be expected.</summary>
internal static class AreaHead
{
    public static Heading Of(Names names, AreaAdvice area) =>
        new(HeadingLevel.Area, new Named(area.Area.Name))
        {
            Below =
            [
                WeedsSeen(names, area.Area),
                .. ComingWords.Of(area.Reading.Coming, names.Weed) is { } coming ? (Line[])[coming] : [],
            ],
            IsBoxed = true,
        };

    private static string WeedsSeen(Names names, VisitArea area)
    {
        if (area.Weeds is not { } weeds)
            return "Weeds: not known";
        if (weeds.IsEmpty)
            return "Weeds: none seen";
        return "Weeds: " + string.Join("; ", weeds.Select(weed => OneWeed(names, weed)));
    }

    private static string OneWeed(Names names, WeedSeen seen)
    {
        string stage = seen.Stage is { } word ? names.StageInBrief(seen.Weed, word) : "stage not known";
        if (seen is { IsUp: false, CoverPercent: null })
            return $"{names.Weed(seen.Weed)} ({stage})";
        string cover = seen.CoverPercent is { } percent ? $"{Figures.Plain(percent)} % cover" : "cover not known";
        if (seen.PotsPercent is { } pots)
            cover += $" of {Figures.Plain(pots)} % of the pots";
        string where = seen.Stands switch
        {
            WeedSeen.InPots => ", in the pots",
            WeedSeen.InGround => ", in the ground beside the pots",
            _ => "",
        };
        return $"{names.Weed(seen.Weed)} ({stage}, {cover}{where})";
    }
}

using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Reports.Text;

/// <summary>The head of an area: its name and the weeds seen there.</summary>
internal static class AreaHead
{
    public static void Write(Page page, Names names, VisitArea area)
    {
        page.Gap();
        page.Rule('=');
        page.Write(0, area.Name);
        page.Write(0, WeedsSeen(names, area));
        page.Rule('=');
    }

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
        string stage = seen.Stage is { } word ? names.Word("stage", word) : "stage not known";
        string cover = seen.CoverPercent is { } percent ? $"{Figures.Plain(percent)} % cover" : "cover not known";
        return $"{names.Weed(seen.Weed)} ({stage}, {cover})";
    }
}

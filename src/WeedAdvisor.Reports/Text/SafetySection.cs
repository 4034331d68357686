namespace WeedAdvisor.Reports.Text;

/// <summary>The standing lines of safety under their heading.</summary>
internal static class SafetySection
{
    public static void Write(Page page)
    {
        page.Heading("Before any chemical");
        foreach (string line in Safety.StandingLines)
            page.Write(2, "- ", line);
    }
}

using WeedAdvisor.Planning.Rates;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Rates;

/// <summary>The rate sums there are, as text.</summary>
public static class RateListText
{
    /// <summary>Every group with its sums.</summary>
    public static string Of(IEnumerable<RateGroup> groups, int width)
    {
        var page = new Page(width);
        page.Write(0, "What can be worked out:");
        foreach (RateGroup group in groups)
        {
            page.Gap();
            page.Write(0, $"{group.Id}: {group.Title}");
            int column = group.Forms.Max(form => form.Id.Length) + 2;
            foreach (RateForm form in group.Forms)
                page.Write(2, form.Id.PadRight(column), form.Title);
        }

        page.Gap();
        page.Write(0, "'weedadvisor rate GROUP' shows an example of each sum, '--help' after a sum all that it takes.");
        return page.ToString();
    }

    /// <summary>The sums of one group, each with an example that can be pasted.</summary>
    public static string Of(RateGroup group, int width)
    {
        var page = new Page(width);
        page.Write(0, group.Title);
        foreach (RateForm form in group.Forms)
        {
            page.Gap();
            page.Write(0, $"{form.Id}: {form.Title}");
            page.Write(2, form.About);
            foreach (string line in RateCommandLine.Example(form, width - 4))
                page.Drawn(4, line);
        }

        return page.ToString();
    }
}

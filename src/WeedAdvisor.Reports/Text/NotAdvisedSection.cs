using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Text.Brief;

namespace WeedAdvisor.Reports.Text;

/// <summary>What is not advised: what more speaks against than for by name, what nothing speaks for by number.</summary>
internal static class NotAdvisedSection
{
    public static void Write(Page page, Names names, AreaAdvice area, int most = int.MaxValue - 1)
    {
        string[] outweighed = [.. area.NotAdvised.Where(one => !one.For.IsEmpty).Select(one => one.Action)];
        string[] idle = [.. area.NotAdvised.Where(one => one.For.IsEmpty).Select(one => one.Action)];
        if (area.NotAdvised.IsEmpty)
            return;
        page.Heading($"What is not advised: {names.CountActions([.. area.NotAdvised.Select(one => one.Action)])}");
        if (outweighed.Length > 0)
        {
            string actions = Listing.Some(names.ActionsInOrder(outweighed), most);
            page.Write(2, "- ", $"what speaks against it weighs more: {actions}");
        }

        if (idle.Length > 0)
            page.Write(2, "- ", $"nothing speaks for it here: {names.CountActions(idle)}");
    }
}

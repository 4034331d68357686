using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// What is not advised: what more speaks against than for by name, what nothing speaks for by number.
/// </summary>
internal static class NotAdvisedSection
{
    public static IEnumerable<Block> Of(Names names, AreaAdvice area, int most = int.MaxValue - 1)
    {
        string[] outweighed = [.. area.NotAdvised.Where(one => !one.For.IsEmpty).Select(one => one.Action)];
        string[] idle = [.. area.NotAdvised.Where(one => one.For.IsEmpty).Select(one => one.Action)];
        if (area.NotAdvised.IsEmpty)
            yield break;
        yield return Heading.Section(
            $"What is not advised: {names.CountActions([.. area.NotAdvised.Select(one => one.Action)])}"
        );
        yield return ItemList
            .Dashes([
                .. outweighed.Length > 0
                    ? [$"what speaks against it weighs more: {Listing.Some(names.ActionsInOrder(outweighed), most)}"]
                    : (Line[])[],
                .. idle.Length > 0 ? [$"nothing speaks for it here: {names.CountActions(idle)}"] : (Line[])[],
            ])
            .At(2);
    }
}

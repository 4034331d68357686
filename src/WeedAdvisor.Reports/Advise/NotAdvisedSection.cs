using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// What is not advised: by name what more speaks against than for and what could be done but is not called for, by
/// number what does not belong here.
/// </summary>
internal static class NotAdvisedSection
{
    public static IEnumerable<Block> Of(Names names, AreaAdvice area, int most = int.MaxValue - 1)
    {
        string[] outweighed = [.. area.NotAdvised.Where(one => !one.For.IsEmpty).Select(one => one.Action)];
        ILookup<bool, string> idle = area
            .NotAdvised.Where(one => one.For.IsEmpty)
            .ToLookup(one => Fits(names, area, one.Action), one => one.Action);
        if (area.NotAdvised.IsEmpty)
            yield break;
        string possible = Listing.Some(names.ActionsInOrder(idle[true]), most);
        yield return Heading.Section(
            $"What is not advised: {names.CountActions([.. area.NotAdvised.Select(one => one.Action)])}"
        );
        yield return ItemList
            .Dashes([
                .. outweighed.Length > 0
                    ? [$"what speaks against it weighs more: {Listing.Some(names.ActionsInOrder(outweighed), most)}"]
                    : (Line[])[],
                .. idle[true].Any() ? [$"it could be done here, but nothing calls for it: {possible}"] : (Line[])[],
                .. idle[false].Any()
                    ? [$"nothing speaks for it here: {names.CountActions([.. idle[false]])}"]
                    : (Line[])[],
            ])
            .At(2);
    }

    // What waited for an answer and is not called for after it must still be found by its name. A chemical that does
    // not belong here is barred, and not among these.
    private static bool Fits(Names names, AreaAdvice area, string action) =>
        names.IsTreatment(action) || (names.Record(action) is { } record && IsOfHere(record, area));

    private static bool IsOfHere(CatalogueAction record, AreaAdvice area) =>
        (area.Reading.Place is not { } place || record.Places.Contains(place))
        // What is for an empty place waits for that and is barred by no stock.
        && (
            area.Reading.Stock is not { } stock
            || record.StockStages.Contains(stock)
            || record is Practice { Possible: "when-empty" }
        );
}

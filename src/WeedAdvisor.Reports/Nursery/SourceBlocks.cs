using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Nursery;

/// <summary>What cleaning the places without pots is worth in the pots.</summary>
internal static class SourceBlocks
{
    public static IEnumerable<Block> Of(NurseryPlan plan)
    {
        if (plan.Sources.IsEmpty)
            yield break;
        yield return Heading.Section("Weeds that come from near by");
        yield return ItemList.Dashes(plan.Sources.Select(OfSource)).At(2);
        yield return new Paragraph(
            Line.Of(
                $"Assumed: {new Amount(plan.Knowledge.Usual[UsualIds.FromNearBy], "%", "0")} of a weed's seedlings in "
                    + $"pots come from such places, from each an equal part. What stands next to what is not told, so "
                    + $"all pots count as near. Cleaning pays where it costs less than it saves."
            )
        ).At(2);
    }

    private static Line OfSource(SourceWorth source) =>
        Line.Of(
            $"{new Named(source.Place.Name)} ({Listing.And(source.Weeds)}): kept clean it saves "
                + $"{Amounts.Dollars(source.Usd)} a year"
                + $", {(source.Worth.Length == 1 ? "all" : "most")} of it in {new Named(source.Worth[0].Area.Name)}."
        );
}

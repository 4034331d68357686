using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>Says what the knowledge has no answer to, so that silence is never taken for safety.</summary>
internal static class Gaps
{
    /// <summary>The gaps of an area's advice, general ones first, then weed by weed in ordinal order.</summary>
    public static ImmutableArray<Gap> In(AreaCase looked, ImmutableArray<ClearAction> clear, KnowledgeBase knowledge)
    {
        VisitArea area = looked.Area;
        var gaps = ImmutableArray.CreateBuilder<Gap>();
        if (StockAndCrops.IsEmptyWithCrops(area))
        {
            gaps.Add(
                new Gap(
                    GapKind.Contradiction,
                    null,
                    "Crops are named, and it is said that no stock stands here. Until that is settled neither counts."
                )
            );
        }

        if (StockAndCrops.IsStockWithoutCrops(area))
            gaps.Add(
                new Gap(GapKind.Contradiction, null, "Stock stands here, but the list of crops is empty. Name them.")
            );
        if (DeniedUse.In(looked, knowledge))
        {
            gaps.Add(
                new Gap(
                    GapKind.Contradiction,
                    null,
                    "It is said that nothing was put on here in the last week (in a house: anywhere in it), and a "
                        + "use of these days is told. The use counts; put the answer right."
                )
            );
        }

        if (clear.IsEmpty)
            gaps.Add(new Gap(GapKind.Nothing, null, "Nothing at all is clear yet."));
        if (!clear.Any(action => knowledge.Treatments.ContainsKey(action.Action)))
            gaps.Add(new Gap(GapKind.NoTreatment, null, "No chemical treatment is clear here."));
        foreach (
            string seen in (area.Weeds ?? [])
                .Select(weed => weed.Weed)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
        )
            gaps.AddRange(Of(knowledge.Weeds[seen], clear, knowledge));
        return gaps.ToImmutable();
    }

    private static IEnumerable<Gap> Of(Weed weed, ImmutableArray<ClearAction> clear, KnowledgeBase knowledge)
    {
        if (weed.IsUnnamed)
        {
            yield return new Gap(
                GapKind.WeedWithoutAnswer,
                weed.Id,
                $"Of {weed.Name} no figure and no rating counts until it has a name: nothing promises to hold it."
            );
            yield break;
        }

        if (!clear.Any(action => action.Effect.Parts.Any(part => part.Weed == weed.Id && part.HighPercent > 0)))
        {
            yield return new Gap(
                GapKind.WeedWithoutAnswer,
                weed.Id,
                $"No clear action has a published effect on {weed.Name}; what is advised against it rests on how it "
                    + $"lives."
            );
        }

        if (!knowledge.Treatments.Values.Any(treatment => WeedRatings.Of(treatment, weed).Count > 0))
        {
            yield return new Gap(
                GapKind.WeedWithoutRating,
                weed.Id,
                $"No published table rates any treatment on {weed.Name}."
            );
        }
    }
}

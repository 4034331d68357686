using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.Money;

/// <summary>
/// What the parts of a way stop, week by week: 1 - product of (1 - share). A mulch without a published figure for a
/// weed counts what the weeding model says of mulches; any other action counts nothing there. Where the grower has said
/// what all applications together stop, that counts in place of their records.
/// </summary>
internal static class WayControl
{
    /// <summary>
    /// Weeks of control of a treatment when its record has none: it then controls nothing that comes up later.
    /// </summary>
    public static readonly Span NoResidual = new(0, 0);

    /// <summary>Share of the seedlings of a weed that is stopped, for each week of the year from the visit.</summary>
    public static ImmutableArray<double> Of(MoneyCase money, WayPlan plan, WeedSeen weed, Variation variation)
    {
        double[] through = [.. Enumerable.Repeat(1 - (plan.StatedControl ?? 0), WeedTraits.WeeksInYear)];
        foreach (WayPart part in plan.Parts)
        {
            if (plan.StatedControl is not null && part.Action is Treatment)
                continue;
            double share = Share(money, part.Action, weed, variation);
            decimal residual = part.Action is Treatment treatment
                ? variation.At(treatment.Id, treatment.ResidualWeeks ?? NoResidual, moved => moved.Residual)
                : WeedTraits.WeeksInYear;
            for (int week = 0; week < through.Length; week++)
            {
                if (IsCovered(part, week, residual))
                    through[week] *= 1 - share;
            }
        }

        return [.. through.Select(share => 1 - share)];
    }

    /// <summary>The range of a published reduction; null when there is none.</summary>
    public static Span? Published(MoneyCase money, CatalogueAction action, WeedSeen weed)
    {
        // What works on weeds that stand already stops none from coming up.
        if (action is Practice { WorksOn: "standing-weeds" })
            return null;
        EffectPart part = ExpectedEffect
            .Of(action, [weed], money.Knowledge, EscapesOfArea.Of(money.Area.Past, money.Knowledge))
            .Parts[0];
        return part is { LowPercent: { } low, HighPercent: { } high } ? new Span(low, high) : null;
    }

    private static double Share(MoneyCase money, CatalogueAction action, WeedSeen weed, Variation variation)
    {
        if (Published(money, action, weed) is { } range)
            return (double)variation.At(action.Id, range, moved => moved.Effect) / 100;
        return Mulches.KindOf(action) is { } mulch
            ? MulchControl.Of(money.Knowledge.Weeds[weed.Weed], new PotMulch(mulch, DepthCm: null), money.Numbers)
            : 0;
    }

    // The year goes round: what went on last autumn goes on again next autumn.
    private static bool IsCovered(WayPart part, int week, decimal residual)
    {
        const int year = WeedTraits.WeeksInYear;
        return part.Weeks.IsEmpty || part.Weeks.Any(start => (((week - start) % year) + year) % year < residual);
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// What the parts of a way stop, week by week. Of preventives, those of the year before among them, the best that still
/// acts counts: published ratings are for one product alone. Everything else comes on top: together
/// 1 - (1 - preventive) x product of (1 - share). A mulch without a published figure for a weed counts what the weeding
/// model says of mulches; any other action counts nothing there. Where the grower has said what all applications
/// together stop, that counts in place of their records.
/// </summary>
internal static class WayControl
{
    /// <summary>Share of the seedlings of a weed that is stopped, for each week of the year.</summary>
    public static ImmutableArray<double> Of(YearCase year, WayPlan plan, YearWeed weed, Variation variation)
    {
        double[] through = Through(year, plan, weed, variation);
        return [.. Held(year, plan, weed, variation).Select((share, week) => 1 - ((1 - share) * through[week]))];
    }

    /// <summary>Share that gets through all that is no preventive, for each week of the year.</summary>
    public static double[] Through(YearCase year, WayPlan plan, YearWeed weed, Variation variation)
    {
        double[] through = new double[year.Weeks];
        Array.Fill(through, Through(year, plan, weed, variation, _ => true));
        if (plan.FirstRoundWeek > 0)
            Array.Fill(through, Through(year, plan, weed, variation, IsThere), 0, plan.FirstRoundWeek);
        return through;

        static bool IsThere(WayPart part) => !part.FollowsFirstRound;
    }

    private static double Through(
        YearCase year,
        WayPlan plan,
        YearWeed weed,
        Variation variation,
        Func<WayPart, bool> counts
    ) =>
        plan
            .Parts.Where(part => part.Action is Practice && counts(part))
            .Aggregate(1 - MulchControl.Of(weed.Weed, plan.LiesAlready, year.Numbers), (left, part) =>
                left * (1 - Share(year, part, weed, variation))
            );

    /// <summary>Share that preventives hold back, for each week of the year.</summary>
    public static double[] Held(YearCase year, WayPlan plan, YearWeed weed, Variation variation)
    {
        double[] held = new double[year.Weeks];
        if (plan.StatedControl is { } stated)
        {
            Array.Fill(held, stated);
            return held;
        }

        PastControl.Of(weed.Weed, year.Acting, year.Escapes, year.Weeks, year.Knowledge).CopyTo(held);
        foreach (WayPart part in plan.Parts)
        {
            if (part.Action is Treatment treatment)
                Hold(held, year, treatment, part.Weeks, weed, variation);
        }

        return held;
    }

    /// <summary>
    /// Control of a treatment by weeks since it went on, 0 to 1; empty when it does nothing to the weed.
    /// </summary>
    public static ImmutableArray<double> Course(YearCase year, Treatment treatment, YearWeed weed, Variation variation)
    {
        if (
            treatment.ResidualWeeks is not { } residual
            || TreatmentControl.PercentOf(treatment, weed.Weed, year.Knowledge, year.Escapes) is not { } percent
        )
            return [];
        double full = (double)variation.At(treatment.Id, percent, moved => moved.Effect) / 100;
        if (variation.Action == treatment.Id && variation.Residual != 0.5m)
        {
            decimal weeks = variation.At(treatment.Id, residual, moved => moved.Residual);
            residual = new Span(weeks, weeks);
        }

        return ControlOverTime.Of(full, residual, (double)year.Usual[UsualIds.ControlLeft] / 100);
    }

    /// <summary>The range of a published reduction; null when there is none.</summary>
    public static Span? Published(YearCase year, CatalogueAction action, Weed weed)
    {
        switch (action)
        {
            case Treatment treatment:
                return TreatmentControl.PercentOf(treatment, weed, year.Knowledge, year.Escapes);
            // What works on weeds that stand already stops none from coming up.
            case Practice { WorksOn: "standing-weeds" }:
                return null;
            default:
                EffectPart part = ExpectedEffect
                    .Of(action, [new WeedSeen(weed.Id, null, null)], year.Knowledge, year.Escapes)
                    .Parts[0];
                return part is { LowPercent: { } low, HighPercent: { } high } ? new Span(low, high) : null;
        }
    }

    private static void Hold(
        double[] held,
        YearCase year,
        Treatment treatment,
        ImmutableArray<int> weeks,
        YearWeed weed,
        Variation variation
    )
    {
        ImmutableArray<double> course = Course(year, treatment, weed, variation);
        foreach (int start in weeks)
        {
            for (int age = 0; age < course.Length && start + age < held.Length; age++)
                held[start + age] = Math.Max(held[start + age], course[age]);
        }
    }

    private static double Share(YearCase year, WayPart part, YearWeed weed, Variation variation)
    {
        PotMulch? mulch = Mulches.KindOf(part.Action) is { } kind ? new PotMulch(kind, part.DepthCm) : null;
        if (Published(year, part.Action, weed.Weed) is not { } range)
            return MulchControl.Of(weed.Weed, mulch, year.Numbers);
        double share = (double)variation.At(part.Action.Id, range, moved => moved.Effect) / 100;
        return mulch is null ? share : share * MulchControl.LeftBy(mulch, year.Numbers);
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Limits;

/// <summary>
/// Holds one more use of a treatment against the limits of its actives, over all products that hold them: the one place where
/// that is decided, for the advice, the season plan and the rates.
/// </summary>
public static class LimitCheck
{
    /// <summary>
    /// Days for which an interval that nobody knows still holds a second use back, because only the label can tell: usual
    /// repeats are 8 to 10 weeks apart (altland-2019 of rules/sources.yaml, and common practice).
    /// </summary>
    public const int DaysOfUnknownInterval = 56;

    private const decimal Rounding = ActiveDoses.RoundingKgPerHa;

    /// <summary>Every limit that keeps the use out, or may do so.</summary>
    /// <param name="treatment">The treatment.</param>
    /// <param name="day">The day of the use.</param>
    /// <param name="past">Earlier uses; null when they are not known.</param>
    /// <param name="knowledge">The knowledge.</param>
    public static ImmutableArray<LimitVerdict> Of(
        Treatment treatment, DateOnly day, ImmutableArray<PastApplication>? past, KnowledgeBase knowledge)
    {
        string[] limited = [.. treatment.Actives.Select(active => active.Name).Where(name => !IsUnlimited(name, knowledge))];
        if (limited.Length == 0)
            return [];
        if (past is null)
        {
            return
            [
                new LimitVerdict(
                    LimitKind.Uses, null, Truth.NotKnown, [Need.Question("past")], null, "What was used here before counts against the limits of its actives"),
            ];
        }

        return [.. limited.SelectMany(name => OfActive(treatment, new UsesOfActive(name, day, past.Value, knowledge), knowledge))];
    }

    private static IEnumerable<LimitVerdict> OfActive(Treatment treatment, UsesOfActive uses, KnowledgeBase knowledge)
    {
        ActiveLimit[] limits = [.. knowledge.ActiveLimits.Values.Where(limit => limit.Active == uses.Active && limit.IsOn(treatment))];
        UsesOfActive own = uses.Of(treatment);
        foreach (ActiveLimit limit in limits)
        {
            if (limit.UsesPerYear is { } most && CountCheck.Of(uses.InYear(limit.IsCalendarYear), most, uses.Active) is { } count)
                yield return count;
            if (limit.KgAiHaPerYear is { } kg
                && AmountCheck.Of(treatment, uses.InYear(limit.IsCalendarYear).InForm(limit), kg + Rounding, uses.Active) is { } amount)
            {
                yield return amount;
            }
        }

        if (treatment.UsesPerYear is { } ownMost && CountCheck.Of(own.InYear(false), ownMost, null) is { } ownCount)
            yield return ownCount;
        if (treatment is { YearlyLimitKgAiHa: { } ownKg, Actives.Length: 1 }
            && AmountCheck.Of(treatment, own.InYear(false), ownKg + Rounding, null) is { } ownAmount)
        {
            yield return ownAmount;
        }

        bool isCounted = treatment.UsesPerYear is not null || treatment.YearlyLimitKgAiHa is not null
            || limits.Any(limit => limit.UsesPerYear is not null || limit.KgAiHaPerYear is not null);
        if (!isCounted && uses.InYear(false) is { IsEmpty: false } before)
            yield return AskTheLabel(treatment, before, "uses-per-year", LimitKind.Uses, $"No yearly limit of {uses.Active} is known here, and one full use was made");
        foreach (LimitVerdict interval in IntervalCheck.Of(treatment, limits, uses, knowledge))
            yield return interval;
    }

    /// <summary>What the year before a day has had that counts against a limit, reckoned as the most it may have been.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="day">The day.</param>
    /// <param name="past">Earlier uses.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <returns>Uses, and kilograms of active a hectare.</returns>
    public static (int Uses, decimal Kg) Before(
        ActiveLimit limit, DateOnly day, ImmutableArray<PastApplication> past, KnowledgeBase knowledge)
    {
        UsesOfActive uses = new UsesOfActive(limit.Active, day, past, knowledge).InYear(limit.IsCalendarYear);
        decimal kg = uses.InForm(limit).Uses.Sum(use =>
            use.Product.Record is { } record ? ActiveDoses.Of(use.Told, record, limit.Active).Most ?? 0 : 0);
        return (uses.MostDays, kg);
    }

    /// <summary>The longest interval that limits and record ask for between two uses of a treatment, days; null when none is known.</summary>
    public static decimal? IntervalDays(Treatment treatment, KnowledgeBase knowledge) => knowledge.ActiveLimits.Values
        .Where(limit => limit.IsOn(treatment))
        .Select(limit => limit.IntervalDays)
        .Append(treatment.RepeatAfterDays)
        .Max();

    /// <summary>Whether a figure is known for how often, or how much, a year may see of a treatment.</summary>
    public static bool IsLimitKnown(Treatment treatment, KnowledgeBase knowledge) =>
        treatment.UsesPerYear is not null
        || treatment.YearlyLimitKgAiHa is not null
        || knowledge.ActiveLimits.Values.Any(limit =>
            limit.IsOn(treatment) && (limit.IsUnlimited || limit.UsesPerYear is not null || limit.KgAiHaPerYear is not null));

    /// <summary>A use that only the label can allow.</summary>
    internal static LimitVerdict AskTheLabel(
        Treatment treatment, UsesOfActive uses, string field, LimitKind kind, string text) => new(
        kind,
        uses.Active,
        Truth.NotKnown,
        uses.AreAllSure ? [Need.Record(treatment.Id, field)] : [Need.Question("past"), Need.Record(treatment.Id, field)],
        null,
        text);

    private static bool IsUnlimited(string active, KnowledgeBase knowledge) =>
        knowledge.ActiveLimits.Values.Any(limit => limit.Active == active && limit.IsUnlimited);
}

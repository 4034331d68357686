using System.Collections.Immutable;
using System.Runtime.CompilerServices;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Limits;

/// <summary>
/// The figures of all limits: those of the actives from <c>limits.yaml</c>, those of the products from their records,
/// and what stands in where neither has one. Worked out once for a knowledge base. Safe to share between threads.
/// </summary>
public sealed class LimitTable
{
    private static readonly ConditionalWeakTable<KnowledgeBase, LimitTable> s_tables = [];

    private const int DaysInWeek = 7;

    private readonly ImmutableDictionary<string, ImmutableArray<ActiveLimit>> _limits;
    private readonly ImmutableDictionary<string, decimal> _fullUses;

    private LimitTable(KnowledgeBase knowledge)
    {
        DaysOfUnknownInterval = (int)decimal.Ceiling(knowledge.Usual[UsualIds.UnknownInterval] * DaysInWeek);
        _limits = knowledge
            .ActiveLimits.Values.GroupBy(limit => limit.Active, StringComparer.Ordinal)
            .ToImmutableDictionary(group => group.Key, group => group.ToImmutableArray(), StringComparer.Ordinal);
        _fullUses = knowledge
            .Treatments.Values.SelectMany(treatment => treatment.Actives, FullUse)
            .OfType<KeyValuePair<string, decimal>>()
            .GroupBy(use => use.Key, StringComparer.Ordinal)
            .ToImmutableDictionary(group => group.Key, group => group.Max(use => use.Value), StringComparer.Ordinal);
    }

    /// <summary>The table of a knowledge base.</summary>
    public static LimitTable Of(KnowledgeBase knowledge) => s_tables.GetValue(knowledge, one => new LimitTable(one));

    /// <summary>
    /// Days for which an interval that nobody knows still holds a second use back, because only the label can tell.
    /// </summary>
    public int DaysOfUnknownInterval { get; }

    /// <summary>Whether nothing limits the active.</summary>
    public bool IsFree(string active) => LimitsOf(active).Any(limit => limit.IsUnlimited);

    /// <summary>Whether anything limits the treatment: a figure, or one that nobody found.</summary>
    public bool IsLimited(Treatment treatment) =>
        treatment.UsesPerYear is not null
        || treatment.YearlyLimitKgAiHa is not null
        || treatment.RepeatAfterDays is not null
        || treatment.Actives.Any(active => !IsFree(active.Name));

    /// <summary>All that a year may see of the treatment: of each active, then of the product itself.</summary>
    public ImmutableArray<YearlyLimit> YearlyOf(Treatment treatment)
    {
        YearlyLimit[] ofActives = [.. treatment.Actives.SelectMany(active => YearlyOf(treatment, active.Name))];
        return [.. ofActives, .. OfProduct(treatment).Where(own => !IsKeptBy(ofActives, own, treatment))];
    }

    /// <summary>Days that must lie between two uses of an active in a form; null when nobody found them.</summary>
    public IntervalFigure? IntervalOf(string active, string form) =>
        LimitsOf(active)
            .Where(limit => (limit.Form is null || limit.Form == form) && limit.IntervalDays is not null)
            .Select(limit => new IntervalFigure(
                limit.IntervalDays!.Value,
                active,
                limit.Memory.Contains("interval-days")
            ))
            .Cast<IntervalFigure?>()
            .MaxBy(figure => figure!.Value.Days);

    /// <summary>
    /// The longest interval of a treatment: its own or that of one of its actives; null when nobody found one.
    /// </summary>
    public IntervalFigure? LongestIntervalOf(Treatment treatment) =>
        treatment
            .Actives.Select(active => IntervalOf(active.Name, treatment.Form))
            .Append(IntervalFigure.OfTreatment(treatment))
            .MaxBy(figure => figure?.Days);

    private ImmutableArray<ActiveLimit> LimitsOf(string active) => _limits.GetValueOrDefault(active, []);

    private IEnumerable<YearlyLimit> YearlyOf(Treatment treatment, string active)
    {
        bool isFound = IsFree(active) || IsToldByLabel(treatment);
        foreach (ActiveLimit limit in LimitsOf(active).Where(limit => limit.IsOn(treatment)))
        {
            if (limit.KgAiHaPerYear is { } kg)
                yield return Of(limit, LimitKind.Amount, kg, "yearly-limit-kg-ai-ha") with
                {
                    Form = limit.Form,
                };
            if (limit.UsesPerYear is { } uses)
                yield return Of(limit, LimitKind.Uses, uses, "uses-per-year");
            isFound |= limit.KgAiHaPerYear is not null || limit.UsesPerYear is not null;
        }

        if (!isFound)
        {
            yield return _fullUses.TryGetValue(active, out decimal full)
                ? new YearlyLimit(LimitKind.Amount, active, full, []) { IsStandIn = true }
                : new YearlyLimit(LimitKind.Uses, active, 1, []) { IsStandIn = true };
        }
    }

    private static YearlyLimit Of(ActiveLimit limit, LimitKind kind, decimal most, string field) =>
        new(kind, limit.Active, most, limit.Sources)
        {
            ByCalendarYear = limit.IsCalendarYear,
            IsFromMemory = limit.Memory.Contains(field),
        };

    private static IEnumerable<YearlyLimit> OfProduct(Treatment treatment)
    {
        if (treatment.UsesPerYear is { } uses)
        {
            yield return new YearlyLimit(LimitKind.Uses, null, uses, treatment.Sources)
            {
                IsFromMemory = treatment.Label is null && treatment.Memory.Contains("uses-per-year"),
            };
        }

        if (treatment.YearlyLimitKgAiHa is { } kg)
        {
            yield return new YearlyLimit(LimitKind.Amount, null, kg, treatment.Sources)
            {
                IsFromMemory = treatment.Label is null && treatment.Memory.Contains("yearly-limit-kg-ai-ha"),
            };
        }
    }

    // What an active allows no more of, over more products, keeps the product's own limit too. It is not said twice.
    private static bool IsKeptBy(YearlyLimit[] ofActives, YearlyLimit own, Treatment treatment) =>
        ofActives.Any(limit =>
            limit.Kind == own.Kind
            && limit.Most <= own.Most
            && limit is { IsStandIn: false, ByCalendarYear: false }
            && (own.Kind == LimitKind.Uses || treatment.Actives.Length == 1)
        );

    // The grower's own label tells what nobody else found.
    private static bool IsToldByLabel(Treatment treatment) =>
        treatment.Label is not null && (treatment.UsesPerYear is not null || treatment.YearlyLimitKgAiHa is not null);

    // Without shares all of a premix would count as one active: too much for a full use of it.
    private static KeyValuePair<string, decimal>? FullUse(Treatment treatment, Active active) =>
        (treatment.Actives.Length == 1 || active.Percent is not null)
        && ActiveAmounts.Published(treatment, active.Name)?.Most is { } most and > 0
            ? KeyValuePair.Create(active.Name, most)
            : null;
}

/// <summary>Days that must lie between two uses.</summary>
/// <param name="Days">The days.</param>
/// <param name="Of">What they are of: an active's or a treatment's name.</param>
/// <param name="IsFromMemory">Whether the figure is from memory and not confirmed.</param>
public readonly record struct IntervalFigure(decimal Days, string Of, bool IsFromMemory)
{
    /// <summary>The treatment's own; null when its record has none.</summary>
    internal static IntervalFigure? OfTreatment(Treatment treatment) =>
        treatment.RepeatAfterDays is { } days
            ? new IntervalFigure(
                days,
                treatment.Name,
                treatment.Label is null && treatment.Memory.Contains("repeat-after-days")
            )
            : null;
}

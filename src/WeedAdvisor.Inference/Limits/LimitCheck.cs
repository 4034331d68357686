using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Limits;

/// <summary>
/// What limits say of one more use of a treatment: the one place where that is worked out. Limits belong to the active,
/// over all products that hold it; a product's own count beside them, and the stricter counts.
/// </summary>
public static class LimitCheck
{
    private const string Untold = "What was used here before is not told, and counts against the limits of its actives";

    /// <summary>Every limit that keeps one more use out, or may do so.</summary>
    /// <param name="treatment">The treatment.</param>
    /// <param name="day">The day of the use. An earlier use on that day counts as before it.</param>
    /// <param name="past">Earlier uses in the area; null when they are not told.</param>
    /// <param name="knowledge">The knowledge.</param>
    public static ImmutableArray<LimitVerdict> Of(
        Treatment treatment,
        DateOnly day,
        ImmutableArray<PastApplication>? past,
        KnowledgeBase knowledge
    )
    {
        if (past is not null)
            return [.. All(treatment, day, past, knowledge).Where(verdict => verdict.Holds != Truth.No)];
        return LimitTable.Of(knowledge).IsLimited(treatment)
            ? [new LimitVerdict(LimitKind.Uses, null, Truth.NotKnown, [Need.Question(QuestionIds.Past)], null, Untold)]
            : [];
    }

    /// <summary>
    /// What every limit says of one more use, also those that it keeps: of the actives, of the product, the interval.
    /// </summary>
    /// <param name="treatment">The treatment.</param>
    /// <param name="day">The day of the use.</param>
    /// <param name="past">Earlier uses in the area; null when they are not told.</param>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="now">
    /// All active ingredient of this use, kilograms per hectare; null for the published range, of which the low end has
    /// to fit.
    /// </param>
    public static ImmutableArray<LimitVerdict> All(
        Treatment treatment,
        DateOnly day,
        ImmutableArray<PastApplication>? past,
        KnowledgeBase knowledge,
        decimal? now = null
    ) =>
        All(
            treatment,
            day,
            EarlierUses.Of(past ?? [], day, knowledge),
            past is not null,
            LimitTable.Of(knowledge),
            now
        );

    /// <summary>
    /// What holds, may hold or leaves room for the low rate alone, for every treatment that an earlier use can touch.
    /// </summary>
    internal static IEnumerable<(Treatment Treatment, LimitVerdict Verdict)> OfAll(
        DateOnly day,
        ImmutableArray<PastApplication> past,
        KnowledgeBase knowledge
    )
    {
        LimitTable table = LimitTable.Of(knowledge);
        ImmutableArray<EarlierUse> uses = EarlierUses.Of(past, day, knowledge);
        return knowledge
            .Treatments.Values.Where(treatment =>
                uses.Any(use => treatment.Actives.Any(active => use.Holds(active.Name) != Truth.No))
            )
            .SelectMany(
                treatment =>
                    All(treatment, day, uses, isPastTold: true, table, now: null)
                        .Where(verdict => verdict.Holds != Truth.No || verdict.IsTight),
                (treatment, verdict) => (treatment, verdict)
            );
    }

    /// <summary>
    /// The longest interval that actives and record ask for between two uses of a treatment, days; null when none is
    /// known.
    /// </summary>
    public static decimal? IntervalDays(Treatment treatment, KnowledgeBase knowledge) =>
        LimitTable.Of(knowledge).LongestIntervalOf(treatment)?.Days;

    /// <summary>
    /// The most that the year before a day may have seen of what a limit of an active counts; null when that cannot be
    /// told.
    /// </summary>
    public static decimal? MostBefore(
        YearlyLimit limit,
        ImmutableArray<PastApplication> past,
        DateOnly day,
        KnowledgeBase knowledge
    )
    {
        ImmutableArray<CountedUse> counted = EarlierUses
            .Of(past, day, knowledge)
            .Counting(limit with { ByCalendarYear = false }, day);
        return limit.Kind == LimitKind.Uses
                ? counted.Select(use => use.Date).OfType<DateOnly>().Distinct().Count()
                    + counted.Count(use => use.Date is null)
            : counted.Any(use => use.Amount.Most is null) ? null
            : counted.Sum(use => use.Amount.Most!.Value);
    }

    private static ImmutableArray<LimitVerdict> All(
        Treatment treatment,
        DateOnly day,
        ImmutableArray<EarlierUse> uses,
        bool isPastTold,
        LimitTable table,
        decimal? now
    )
    {
        ActiveAmount? brings = now is { } kg ? new ActiveAmount(kg, kg) : ActiveAmounts.Published(treatment);
        var verdicts = ImmutableArray.CreateBuilder<LimitVerdict>();
        foreach (YearlyLimit limit in table.YearlyOf(treatment))
        {
            ImmutableArray<CountedUse> counted = uses.Counting(limit, treatment, day);
            verdicts.Add(
                limit.Kind == LimitKind.Uses
                    ? UsesLimit.Of(limit, treatment, counted, isPastTold)
                    : AmountLimit.Of(
                        limit,
                        treatment,
                        counted,
                        Part(brings, limit, treatment),
                        now is not null,
                        isPastTold
                    )
            );
        }

        if (IntervalLimit.Of(treatment, uses, day, table, isPastTold) is { } interval)
            verdicts.Add(interval);
        return verdicts.ToImmutable();
    }

    private static ActiveAmount? Part(ActiveAmount? all, YearlyLimit limit, Treatment treatment)
    {
        if (all is not { } amount || limit.Active is not { } active)
            return all;
        decimal share = ActiveAmounts.Share(treatment, active);
        return new ActiveAmount(amount.Least * share, amount.Most * share);
    }
}

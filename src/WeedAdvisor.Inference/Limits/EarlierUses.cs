using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Limits;

/// <summary>An earlier use that counts, or may count, against a limit.</summary>
/// <param name="Date">Its day; null when not known.</param>
/// <param name="IsSure">Whether it counts for sure.</param>
/// <param name="Amount">The active ingredient that it brought.</param>
internal sealed record CountedUse(DateOnly? Date, bool IsSure, ActiveAmount Amount);

/// <summary>An earlier use with what is known of its product.</summary>
internal sealed record EarlierUse(PastApplication Use, PastProduct Product)
{
    private const string Granules = "granules",
        Granule = "granule",
        Spray = "spray";

    /// <summary>Its day; null when not known.</summary>
    public DateOnly? Date => Use.Date;

    /// <summary>Whether it held the active. A product told by group or kind alone may hold any.</summary>
    public Truth Holds(string active) =>
        Product.Actives is { } actives ? Truths.Of(actives.Contains(active)) : Truth.NotKnown;

    /// <summary>
    /// Whether it was that treatment. A product of another name may be, when it shares an active with it.
    /// </summary>
    public Truth IsOf(Treatment treatment) =>
        Product.Record is { } record ? Truths.Of(record.Id == treatment.Id)
        : Product.Actives is not { } actives || treatment.Actives.Any(active => actives.Contains(active.Name))
            ? Truth.NotKnown
        : Truth.No;

    /// <summary>Whether it went on in a form; any will do when none is named.</summary>
    public Truth WentOnAs(string? form) =>
        form is null ? Truth.Yes
        : Form is { } own ? Truths.Of(own == form)
        : Truth.NotKnown;

    /// <summary>The active ingredient that it brought: of one active, or of all together.</summary>
    public ActiveAmount Brought(string? active) =>
        Product.Record is not { } record ? ActiveAmount.NotKnown
        : active is null ? ActiveAmounts.Brought(record, Use)
        : record.Actives.Any(one => one.Name == active) ? ActiveAmounts.Brought(record, Use, active)
        : ActiveAmount.NotKnown;

    private string? Form =>
        Product.Record?.Form
        ?? (
            Use.Method is null ? null
            : Use.Method == Granules ? Granule
            : Spray
        );
}

/// <summary>What went on in an area up to a day.</summary>
internal static class EarlierUses
{
    /// <summary>The uses; one on the day itself counts as before it.</summary>
    public static ImmutableArray<EarlierUse> Of(
        ImmutableArray<PastApplication> past,
        DateOnly day,
        KnowledgeBase knowledge
    ) =>
        [
            .. past.Where(use => use.Date is null || use.Date <= day)
                .Select(use => new EarlierUse(use, PastProduct.Of(use, knowledge))),
        ];

    /// <summary>Those that count, or may count, against a limit of a treatment on a day.</summary>
    public static ImmutableArray<CountedUse> Counting(
        this ImmutableArray<EarlierUse> uses,
        YearlyLimit limit,
        Treatment treatment,
        DateOnly day
    ) => Counting(uses, limit, use => limit.Active is { } active ? use.Holds(active) : use.IsOf(treatment), day);

    /// <summary>Those that count, or may count, against a limit of an active on a day.</summary>
    public static ImmutableArray<CountedUse> Counting(
        this ImmutableArray<EarlierUse> uses,
        YearlyLimit limit,
        DateOnly day
    ) => Counting(uses, limit, use => use.Holds(limit.Active!), day);

    private static ImmutableArray<CountedUse> Counting(
        ImmutableArray<EarlierUse> uses,
        YearlyLimit limit,
        Func<EarlierUse, Truth> counts,
        DateOnly day
    )
    {
        var counted = ImmutableArray.CreateBuilder<CountedUse>();
        foreach (EarlierUse use in uses)
        {
            Truth does = Truths.And(counts(use), use.WentOnAs(limit.Form));
            if (does == Truth.No || (use.Date is { } date && !YearWindow.Counts(date, day, limit.ByCalendarYear)))
                continue;
            ActiveAmount amount = limit.Kind == LimitKind.Amount ? use.Brought(limit.Active) : default;
            counted.Add(new CountedUse(use.Date, does == Truth.Yes && use.Date is not null, amount));
        }

        return counted.ToImmutable();
    }
}

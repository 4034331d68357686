using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Limits;

/// <summary>
/// Holds one more use against the active ingredient that a year may see. Earlier uses count at the rate told with them;
/// where none is told, what fits at the lowest published rate and not at the highest waits for it.
/// </summary>
internal static class AmountLimit
{
    private const string RateField = "rates";

    /// <summary>The verdict.</summary>
    /// <param name="limit">The limit.</param>
    /// <param name="treatment">The treatment.</param>
    /// <param name="uses">The earlier uses that count or may count.</param>
    /// <param name="now">What this use brings; null when that cannot be told.</param>
    /// <param name="isGiven">Whether that is a rate chosen; else it is the published range.</param>
    /// <param name="isPastTold">Whether the past is told.</param>
    public static LimitVerdict Of(
        YearlyLimit limit,
        Treatment treatment,
        ImmutableArray<CountedUse> uses,
        ActiveAmount? now,
        bool isGiven,
        bool isPastTold
    )
    {
        CountedUse[] sure = [.. uses.Where(use => use.IsSure)];
        decimal least = sure.Sum(use => use.Amount.Least);
        decimal? most = uses.Any(use => use.Amount.Most is null) ? null : uses.Sum(use => use.Amount.Most!.Value);
        decimal? brings = now?.Least;
        bool isSpent = sure.Length > 0 && !Fits(limit, least, brings),
            isTooMuchAlone = brings > limit.Allowed;
        bool mayBeSpent =
            !isPastTold || (!uses.IsEmpty && (most is not { } all || brings is null || !Fits(limit, all, brings)));

        // Published figures that contradict each other are for the label to settle.
        bool asksLabel = limit.IsStandIn || (isTooMuchAlone && !isGiven);
        bool isSure = isSpent || isTooMuchAlone;
        Truth holds =
            isSure && !asksLabel ? Truth.Yes
            : isSure || mayBeSpent ? Truth.NotKnown
            : Truth.No;
        bool isTight = holds == Truth.No && !isGiven && most + now?.Most > limit.Allowed;
        return new LimitVerdict(
            LimitKind.Amount,
            limit.Active,
            holds,
            holds == Truth.NotKnown ? Needs(limit, treatment, !isSure, brings is null || isTooMuchAlone) : [],
            holds == Truth.Yes && !isTooMuchAlone ? Until(limit, sure, brings) : null,
            holds != Truth.No ? Says(limit, treatment, uses, (least, most, brings), isSure, isGiven, isPastTold)
                : isTight ? Tight(limit, treatment, most!.Value)
                : ""
        )
        {
            Yearly = limit,
            Used = new ActiveAmount(least, most),
            IsTight = isTight,
        };
    }

    private static bool Fits(YearlyLimit limit, decimal used, decimal? brings) =>
        brings is { } more ? used + more <= limit.Allowed : used < limit.Most - limit.Rounding;

    // The first day on which so much is twelve months old that this use has room.
    private static DateOnly? Until(YearlyLimit limit, CountedUse[] sure, decimal? brings)
    {
        (DateOnly Over, decimal Kg)[] left =
        [
            .. sure.Select(use => (YearWindow.Over(use.Date!.Value, limit.ByCalendarYear), use.Amount.Least)),
        ];
        return left.Select(use => use.Over)
            .Distinct()
            .Order()
            .First(day => Fits(limit, left.Where(use => use.Over > day).Sum(use => use.Kg), brings));
    }

    private static ImmutableArray<Need> Needs(YearlyLimit limit, Treatment treatment, bool past, bool rate) =>
        [
            .. LimitNeeds
                .Of(past, limit.IsStandIn ? treatment : null)
                .Concat(rate ? LimitNeeds.Of(false, treatment, RateField) : [])
                .Order(),
        ];

    private static string Says(
        YearlyLimit limit,
        Treatment treatment,
        ImmutableArray<CountedUse> uses,
        (decimal Least, decimal? Most, decimal? Brings) kg,
        bool isSure,
        bool isGiven,
        bool isPastTold
    )
    {
        string may = limit.IsStandIn
            ? $"No yearly limit of {limit.Active} is known here: one full use counts, {LimitWords.Kg(limit.Most)}"
            : $"{LimitWords.Kg(limit.Most)} of {Of(limit, treatment)} may go on {LimitWords.Year(limit)}"
                + LimitWords.Mark(limit.IsFromMemory);
        if (!isPastTold && !isSure)
            return $"{may}, and what went on here before is not told";
        string when = LimitWords.Days(uses.Select(use => use.Date));
        string did =
            uses.IsEmpty ? ""
            : isSure ? $"; {LimitWords.Kg(kg.Least)} at least did ({when})"
            : kg.Most is { } most && most > kg.Least
                ? $"; up to {LimitWords.Kg(most)} did ({when}), as not every rate and day is known"
            : kg.Most is { } all ? $"; {LimitWords.Kg(all)} did ({when})"
            : $"; how much did is not known ({when})";
        string brings =
            kg.Brings is not { } more ? ""
            : isGiven ? $", and this use brings {LimitWords.Kg(more)}"
            : $", and one more use brings {LimitWords.Kg(more)} at least";
        return may + did + brings;
    }

    private static string Tight(YearlyLimit limit, Treatment treatment, decimal used)
    {
        decimal left = Math.Max(0, limit.Most - used);
        string isLeft =
            $"{LimitWords.Kg(left)} ({LimitWords.Number(left / ActiveAmounts.KgPerHaInLbPerAcre)} lb/acre)"
            + $" of {Of(limit, treatment)} is left";
        return limit.IsStandIn
            ? $"No yearly limit of {limit.Active} is known here, so one full use counts, {LimitWords.Kg(limit.Most)}: "
                + $"{isLeft};"
                + " keep to the low end of the rate, or ask the label"
            : $"{isLeft} of the {LimitWords.Kg(limit.Most)} that may go on {LimitWords.Year(limit)}"
                + $"{LimitWords.Mark(limit.IsFromMemory)}: keep to the low end of the rate";
    }

    private static string Of(YearlyLimit limit, Treatment treatment) =>
        limit.Active is { } active ? active + Form(limit) : $"the actives of {treatment.Name} together";

    private static string Form(YearlyLimit limit) => limit.Form is { } form ? $" as {form}" : "";
}

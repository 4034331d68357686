using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Limits;

/// <summary>
/// Holds one more use against the days that must lie between it and earlier uses that share an active with it: the
/// longest that either product or the active asks for. Where nobody found one, the label is asked while the usual time
/// runs.
/// </summary>
internal static class IntervalLimit
{
    private const string Field = "repeat-after-days";

    /// <summary>The verdict: the interval that ends last, or one that may run; null when none does.</summary>
    public static LimitVerdict? Of(
        Treatment treatment,
        ImmutableArray<EarlierUse> uses,
        DateOnly day,
        LimitTable table,
        bool isPastTold
    )
    {
        LimitVerdict[] found = [.. uses.Select(use => Of(treatment, use, day, table)).OfType<LimitVerdict>()];
        LimitVerdict? last = found.Where(verdict => verdict.Holds == Truth.Yes).MaxBy(verdict => verdict.Until);
        if (last is not null)
            return last;
        if (found.Length > 0)
            return found[0] with { Needs = [.. found.SelectMany(verdict => verdict.Needs).Distinct().Order()] };
        return isPastTold || !table.IsLimited(treatment)
            ? null
            : Open(null, LimitNeeds.Of(past: true, null), $"When {NamesOf(treatment)} went on here last is not told");
    }

    private static LimitVerdict? Of(Treatment treatment, EarlierUse use, DateOnly day, LimitTable table)
    {
        string[] shared =
        [
            .. treatment.Actives.Select(active => active.Name).Where(name => use.Holds(name) != Truth.No),
        ];
        if (shared.Length == 0)
            return null;
        IntervalFigure? figure = shared
            .Select(active => table.IntervalOf(active, treatment.Form))
            .Append(IntervalFigure.OfTreatment(treatment))
            .Append(use.Product.Record is { } record ? IntervalFigure.OfTreatment(record) : null)
            .MaxBy(one => one?.Days);
        if (figure is null && shared.All(table.IsFree))
            return null;
        bool isSure = use.Date is not null && shared.Any(active => use.Holds(active) == Truth.Yes);
        DateOnly? over = use.Date is { } used
            ? YearWindow.After(used, figure?.Days ?? table.DaysOfUnknownInterval)
            : null;
        if (over <= day || figure is { Days: 0 })
            return null;
        string name = shared.FirstOrDefault(active => use.Holds(active) == Truth.Yes) ?? shared[0];
        string last = use.Date is { } on
            ? $"{(isSure ? "the last was" : "one that may have held it was")} on {LimitWords.Day(on)}"
            : "the day of the last is not known";
        return figure is not { } known
                ? Open(
                    name,
                    LimitNeeds.Of(!isSure, treatment, Field),
                    $"How many days must lie between two uses of {name} is not known here"
                        + $" ({LimitWords.Number(table.DaysOfUnknownInterval)} are usual); {last}"
                )
            : isSure ? new LimitVerdict(LimitKind.Interval, name, Truth.Yes, [], over, $"{Between(known)}; {last}")
            : Open(name, LimitNeeds.Of(past: true, null), $"{Between(known)}; {last}");
    }

    private static LimitVerdict Open(string? active, ImmutableArray<Need> needs, string says) =>
        new(LimitKind.Interval, active, Truth.NotKnown, needs, null, says);

    private static string Between(IntervalFigure figure) =>
        $"{LimitWords.Number(figure.Days)} days must lie between two uses of "
        + $"{figure.Of}{LimitWords.Mark(figure.IsFromMemory)}";

    private static string NamesOf(Treatment treatment) =>
        string.Join(" and ", treatment.Actives.Select(active => active.Name));
}

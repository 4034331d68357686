using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Limits;

/// <summary>
/// Adds up the active of a year. A use without a rate brings from the lowest to the highest published rate: what only the
/// highest makes too much waits for that rate. The use to come is taken at the lowest published rate.
/// </summary>
internal static class AmountCheck
{
    /// <summary>Whether one more use is too much; null when it is not.</summary>
    /// <param name="treatment">The treatment that is to go on.</param>
    /// <param name="uses">The uses that count in the year.</param>
    /// <param name="most">The most active, kilograms per hectare.</param>
    /// <param name="active">The active whose limit it is; null for the product's own.</param>
    public static LimitVerdict? Of(Treatment treatment, UsesOfActive uses, decimal most, string? active)
    {
        if (uses.IsEmpty)
            return null;
        string text = $"{(active is null ? "This product" : active)} may come to {Kg(most)} kg a hectare in "
            + $"{(uses.IsCalendarYear ? "a calendar year" : "any twelve months")}, and went on {uses.Days}";
        if (ActiveDoses.LeastKgPerHa(treatment, uses.Active) is not { } now)
            return LimitCheck.AskTheLabel(treatment, uses, "rates", LimitKind.Amount, text);
        (UseOfActive Use, decimal? Least, decimal? Most)[] amounts = [.. uses.Uses.Select(use => Amount(use, uses.Active))];
        decimal least = amounts.Where(one => one.Use.IsSure).Sum(one => one.Least ?? 0);
        if (least + now > most)
            return new LimitVerdict(LimitKind.Amount, active, Truth.Yes, [], Freed(uses, amounts, now, most), text);
        if (amounts.All(one => one.Most is not null) && amounts.Sum(one => one.Most!.Value) + now <= most)
            return null;
        ImmutableArray<Need> needs = amounts.Any(one => one.Most is null && one.Use.Product.Record is not null)
            ? [Need.Question("past"), Need.Record(treatment.Id, "yearly-limit-kg-ai-ha")]
            : [Need.Question("past")];
        return new LimitVerdict(LimitKind.Amount, active, Truth.NotKnown, needs, null, text);
    }

    private static (UseOfActive Use, decimal? Least, decimal? Most) Amount(UseOfActive use, string active)
    {
        if (use.Product.Record is not { } record)
            return (use, 0, null);
        (decimal? least, decimal? most) = ActiveDoses.Of(use.Told, record, active);
        return (use, use.IsSure ? least : 0, most);
    }

    // The oldest uses lapse first; the day on which enough of them have is the day.
    private static DateOnly? Freed(
        UsesOfActive uses, (UseOfActive Use, decimal? Least, decimal? Most)[] amounts, decimal now, decimal most)
    {
        decimal left = amounts.Where(one => one.Use.IsSure).Sum(one => one.Least ?? 0);
        foreach ((UseOfActive use, decimal? least, _) in amounts.Where(one => one.Use.IsSure).OrderBy(one => one.Use.Told.Date))
        {
            left -= least ?? 0;
            if (left + now <= most)
                return uses.FreedOn(use.Told.Date!.Value);
        }

        return null;
    }

    private static string Kg(decimal kg) => Math.Round(kg, 2).ToString("0.##", CultureInfo.InvariantCulture);
}

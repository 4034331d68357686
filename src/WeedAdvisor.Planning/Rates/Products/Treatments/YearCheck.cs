using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products.Treatments;

/// <summary>
/// Holds one more use against what a calendar year may see: of each active, over all products that hold it; uses of the
/// treatment; and the days since an active was last used.
/// </summary>
/// <param name="sheet">The working.</param>
/// <param name="site">The knowledge and the area.</param>
/// <param name="treatment">The treatment.</param>
/// <param name="active">Active ingredient of this use on an area, all actives together; null when it cannot be counted.</param>
internal sealed class YearCheck(WorkingSheet sheet, RateSite site, Treatment treatment, Quantity? active)
{
    // Limits are printed in kilograms to two places, turned from pounds: 1.5 lb/acre stands as 1.68 and is 1.681.
    private const decimal Rounding = 0.005m;

    private readonly ImmutableArray<RateResult>.Builder _results = ImmutableArray.CreateBuilder<RateResult>();
    private readonly ImmutableArray<string>.Builder _cautions = ImmutableArray.CreateBuilder<string>();
    private readonly ImmutableArray<string>.Builder _sources = ImmutableArray.CreateBuilder<string>();

    /// <summary>What is left of each active.</summary>
    public ImmutableArray<RateResult> Results => _results.ToImmutable();

    /// <summary>What could not be checked.</summary>
    public ImmutableArray<string> Cautions => _cautions.ToImmutable();

    /// <summary>Keys of the sources of the limits.</summary>
    public ImmutableArray<string> Sources => _sources.ToImmutable();

    /// <summary>Why one more use is too much; null when nothing says so.</summary>
    public RateProblem? Run()
    {
        ImmutableArray<PastUse>? past = PastUses.Of(site);
        if (past is null)
        {
            _cautions.Add("What was used here earlier this year is not known. Only this one use was held against the yearly limits; "
                + "every earlier use of the same active counts as well.");
        }

        ImmutableArray<PastUse> uses = past ?? [];
        ImmutableArray<PastUse> thisYear = site.Date is { } day ? PastUses.InYear(uses, day) : [];
        return TooMany(thisYear) ?? TooSoon(uses) ?? TooMuch(thisYear);
    }

    private static string Days(IEnumerable<PastUse> uses) => string.Join(", ", uses.Select(use =>
        $"{use.Treatment.Id} {use.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "without a date"}"));

    private IEnumerable<ActiveLimit> Limits(string name) => site.Knowledge.ActiveLimits.Values.Where(limit => limit.Active == name);

    private RateProblem? TooMany(ImmutableArray<PastUse> thisYear)
    {
        ImmutableArray<PastUse> own = [.. thisYear.Where(use => use.Treatment.Id == treatment.Id)];
        if (treatment.UsesPerYear is { } most && own.Length + 1 > most)
            return Refusal($"it may be used {Times(most)} a year, and was used this year: {Days(own)}");
        foreach (string name in treatment.Actives.Select(one => one.Name))
        {
            ImmutableArray<PastUse> same = [.. thisYear.Where(use => PastUses.Holds(use.Treatment, name))];
            if (Limits(name).FirstOrDefault(limit => same.Length + 1 > limit.UsesPerYear) is { } limit)
            {
                return Refusal($"products with {name} may be used {Times(limit.UsesPerYear!.Value)} a year "
                    + $"({string.Join(", ", limit.Sources)}), and were used this year: {Days(same)}");
            }
        }

        return null;
    }

    private RateProblem? TooSoon(ImmutableArray<PastUse> uses)
    {
        if (treatment.RepeatAfterDays is not { } wait || site.Date is not { } day)
            return null;
        ImmutableArray<PastUse> same =
            [.. uses.Where(use => treatment.Actives.Any(one => PastUses.Holds(use.Treatment, one.Name)))];
        if (same.Any(use => use.Date is null))
            _cautions.Add($"An earlier use of the same active has no date. {Figures.Of(wait, 6)} days must lie between two uses.");
        PastUse? last = same.Where(use => use.Date is not null).MaxBy(use => use.Date);
        if (last is null || day.DayNumber - last.Date!.Value.DayNumber >= wait)
            return null;
        DateOnly again = last.Date.Value.AddDays((int)decimal.Ceiling(wait));
        return Refusal($"{Figures.Of(wait, 6)} days must lie between two uses of the same active; the last was {Days([last])}, "
            + $"so not before {again.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}");
    }

    private RateProblem? TooMuch(ImmutableArray<PastUse> thisYear)
    {
        foreach (string name in treatment.Actives.Select(one => one.Name))
        {
            Quantity? now = active is { } all ? all.To("kg/ha") * PastUses.Share(treatment, name) : null;
            if (now is { } brought && treatment.Actives.Length > 1)
                _results.Add(new($"active-{Word(name)}", $"Active ingredient, {name}", brought, [UnitTable.Of("lb/acre")]));
            if (Most(name) is { } limit && Over(name, now, limit.Most, limit.Sources, thisYear) is { } problem)
                return problem;
        }

        // The limit of a premix counts all its actives together.
        return treatment is { YearlyLimitKgAiHa: { } own, Actives.Length: > 1 }
            && active is { } sum && sum.In("kg/ha") * (1 + thisYear.Count(use => use.Treatment.Id == treatment.Id)) > own + Rounding
            ? Refusal($"all its actives together may come to {Quantity.Of(own, "kg/ha")} a year; this use and the earlier ones pass it")
            : null;
    }

    private (Quantity Most, ImmutableArray<string> Sources)? Most(string name)
    {
        IEnumerable<(decimal Kg, ImmutableArray<string> Sources)> found = Limits(name)
            .Where(limit => limit.KgAiHaPerYear is not null)
            .Select(limit => (limit.KgAiHaPerYear!.Value, limit.Sources));
        if (treatment is { YearlyLimitKgAiHa: { } own, Actives.Length: 1 })
            found = found.Append((own, treatment.Sources));
        (decimal Kg, ImmutableArray<string> Sources)[] limits = [.. found.OrderBy(limit => limit.Kg)];
        return limits.Length == 0 ? null : (Quantity.Of(limits[0].Kg, "kg/ha"), limits[0].Sources);
    }

    private RateProblem? Over(
        string name, Quantity? now, Quantity most, ImmutableArray<string> sources, ImmutableArray<PastUse> thisYear)
    {
        ImmutableArray<PastUse> same = [.. thisYear.Where(use => PastUses.Holds(use.Treatment, name))];
        ImmutableArray<Quantity?> amounts = [.. same.Select(use => PastUses.MostBrought(use.Treatment, name))];
        if (now is not { } brought || amounts.Any(amount => amount is null))
        {
            _cautions.Add($"{name} may come to {most} a year, but not every use could be counted. Count them by their labels first.");
            return null;
        }

        Quantity used = amounts.OfType<Quantity>().Aggregate(Quantity.Of(0, "kg/ha"), (sum, amount) => sum + amount);
        string cited = string.Join(", ", sources.Take(3));
        if ((used + brought).In("kg/ha") > most.In("kg/ha") + Rounding)
        {
            string earlier = same.IsEmpty
                ? ""
                : $", and up to {used} was used this year ({Days(same)}; no rate is written down, so the highest published one counts)";
            return Refusal($"{name} may come to {most} a year ({cited}); this use brings {brought}{earlier}");
        }

        if (!same.IsEmpty)
            sheet.Line($"{name} used this year at most", string.Join(" + ", amounts.Select(amount => $"{amount}")), used, "kg/ha");
        Quantity rest = most - used - brought;
        Quantity left = rest.Value >= 0
            ? sheet.Line($"{name} left after this use", $"{most} - {used} - {brought}", rest, "kg/ha")
            : sheet.Line($"{name} left after this use", $"{most} - {used} - {brought}, the limit being rounded", rest * 0, "kg/ha");
        _results.Add(new($"left-{Word(name)}", $"{name} left this year", left, [UnitTable.Of("lb/acre")]));
        _sources.AddRange(sources);
        return null;
    }

    private static string Word(string name) =>
        name.ToLowerInvariant().Replace(' ', '-').Replace(",", "-", StringComparison.Ordinal);

    private static string Times(decimal times) => times == 1 ? "once" : $"{Figures.Of(times, 6)} times";

    private static RateProblem Refusal(string text) => new("treatment", text);
}

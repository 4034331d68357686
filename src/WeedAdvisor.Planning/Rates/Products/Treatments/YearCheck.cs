using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge.Readings;
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
        ImmutableArray<PastUse> inYear = site.Date is { } day ? PastUses.InTwelveMonths(uses, day) : [];
        return Limited() ?? TooMuch(inYear);
    }

    private static string Days(IEnumerable<PastUse> uses) => string.Join(", ", uses.Select(use =>
        $"{use.Treatment.Id} {use.Date?.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) ?? "without a date"}"));

    private IEnumerable<ActiveLimit> Limits(string name) => site.Knowledge.ActiveLimits.Values.Where(limit => limit.Active == name);

    // Uses and intervals are decided in one place for the advice, the season plan and here; what goes on now is counted below.
    private RateProblem? Limited()
    {
        if (site is not { Date: { } day, Area.Past: { } past })
            return null;
        foreach (LimitVerdict verdict in LimitCheck.Of(treatment, day, past, site.Knowledge))
        {
            if (verdict.Holds == Truth.Yes)
                return Refusal(verdict.Until is { } until ? $"{verdict.Text}; not before {until.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture)}" : verdict.Text);
            if (verdict.Kind != LimitKind.Amount)
                _cautions.Add($"{verdict.Text}. Only the label, or what was not told of that use, can say whether one more may follow.");
        }

        return null;
    }

    private RateProblem? TooMuch(ImmutableArray<PastUse> inYear)
    {
        foreach (string name in treatment.Actives.Select(one => one.Name))
        {
            Quantity? now = active is { } all ? all.To("kg/ha") * PastUses.Share(treatment, name) : null;
            if (now is { } brought && treatment.Actives.Length > 1)
                _results.Add(new($"active-{Word(name)}", $"Active ingredient, {name}", brought, [UnitTable.Of("lb/acre")]));
            if (Most(name) is { } limit && Over(name, now, limit.Most, limit.Sources, inYear) is { } problem)
                return problem;
        }

        // The limit of a premix counts all its actives together.
        return treatment is { YearlyLimitKgAiHa: { } own, Actives.Length: > 1 }
            && active is { } sum && sum.In("kg/ha") * (1 + inYear.Count(use => use.Treatment.Id == treatment.Id)) > own + Rounding
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
        string name, Quantity? now, Quantity most, ImmutableArray<string> sources, ImmutableArray<PastUse> inYear)
    {
        ImmutableArray<PastUse> same = [.. inYear.Where(use => PastUses.Holds(use.Treatment, name))];
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
                : $", and up to {used} was used within twelve months ({Days(same)}; no rate is written down, so the highest published one counts)";
            return Refusal($"{name} may come to {most} a year ({cited}); this use brings {brought}{earlier}");
        }

        if (!same.IsEmpty)
            sheet.Line($"{name} used within twelve months at most", string.Join(" + ", amounts.Select(amount => $"{amount}")), used, "kg/ha");
        Quantity rest = most - used - brought;
        Quantity left = rest.Value >= 0
            ? sheet.Line($"{name} left after this use", $"{most} - {used} - {brought}", rest, "kg/ha")
            : sheet.Line($"{name} left after this use", $"{most} - {used} - {brought}, the limit being rounded", rest * 0, "kg/ha");
        _results.Add(new($"left-{Word(name)}", $"{name} left within the twelve months", left, [UnitTable.Of("lb/acre")]));
        _sources.AddRange(sources);
        return null;
    }

    private static string Word(string name) =>
        name.ToLowerInvariant().Replace(' ', '-').Replace(",", "-", StringComparison.Ordinal);

    private static RateProblem Refusal(string text) => new("treatment", text);
}

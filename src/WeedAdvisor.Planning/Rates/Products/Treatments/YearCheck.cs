using System.Collections.Immutable;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products.Treatments;

/// <summary>
/// Holds one more use, at the rate chosen, against the limits of its actives and its own. What may be too much is
/// refused too: the product is about to be measured out.
/// </summary>
/// <param name="sheet">The working.</param>
/// <param name="site">The knowledge and the area.</param>
/// <param name="treatment">The treatment.</param>
/// <param name="active">Active ingredient of this use on an area, all actives together; null when it cannot be
/// counted.</param>
internal sealed class YearCheck(WorkingSheet sheet, RateSite site, Treatment treatment, Quantity? active)
{
    private const string Kilograms = "kg/ha";

    private readonly ImmutableArray<RateResult>.Builder _results = ImmutableArray.CreateBuilder<RateResult>();
    private readonly ImmutableArray<string>.Builder _cautions = ImmutableArray.CreateBuilder<string>();
    private readonly ImmutableArray<string>.Builder _sources = ImmutableArray.CreateBuilder<string>();

    /// <summary>What is left of each active.</summary>
    public ImmutableArray<RateResult> Results => _results.ToImmutable();

    /// <summary>What could not be checked.</summary>
    public ImmutableArray<string> Cautions => _cautions.ToImmutable();

    /// <summary>Keys of the sources of the limits.</summary>
    public ImmutableArray<string> Sources => _sources.ToImmutable();

    private bool IsPastTold => site is { Area.Past: not null, Date: not null };

    /// <summary>Why one more use is too much, or may be; null when nothing says so.</summary>
    public RateProblem? Run()
    {
        if (!IsPastTold)
        {
            _cautions.Add(
                "What was used here before is not known. Only this one use was held against the limits of a year; "
                    + "every earlier use of the same active counts as well."
            );
        }

        foreach (Active one in treatment.Actives.Length > 1 ? treatment.Actives : [])
        {
            if (Brought(one.Name) is { } brought)
                _results.Add(
                    new(
                        $"active-{Word(one.Name)}",
                        $"Active ingredient, {one.Name}",
                        brought,
                        [UnitTable.Of("lb/acre")]
                    )
                );
        }

        LimitVerdict[] verdicts =
        [
            .. LimitCheck.All(
                treatment,
                site.Date ?? DateOnly.MinValue,
                IsPastTold ? site.Area!.Past : null,
                site.Knowledge,
                active?.In(Kilograms)
            ),
        ];
        if (verdicts.FirstOrDefault(IsRefused) is { } refused)
            return Refusal(refused);
        foreach (LimitVerdict verdict in verdicts)
        {
            if (verdict.Holds == Truth.NotKnown && IsPastTold)
                _cautions.Add($"{verdict.Text}.");
            else if (verdict is { Yearly: { Kind: LimitKind.Amount, IsStandIn: false } limit, Active: { } name })
                Left(limit, name, verdict.Used);
        }

        return null;
    }

    // With the past told, what waits for more of it is refused; what waits for the label alone is said.
    private bool IsRefused(LimitVerdict verdict) =>
        verdict.Holds == Truth.Yes
        || (verdict.Holds == Truth.NotKnown && IsPastTold && verdict.Needs.All(need => need.Kind == NeedKind.Question));

    private void Left(YearlyLimit limit, string name, ActiveAmount used)
    {
        if (Brought(name) is not { } brought || used.Most is not { } before)
        {
            _cautions.Add(
                $"{name} may come to {Quantity.Of(limit.Most, Kilograms)} a year, but this use could not be counted. "
                    + $"Count it by its label first."
            );
            return;
        }

        var most = Quantity.Of(limit.Most, Kilograms);
        var earlier = Quantity.Of(before, Kilograms);
        if (before > 0)
            sheet.Line(
                $"{name} used in twelve months at most",
                "by the rates told, or the highest published",
                earlier,
                Kilograms
            );
        Quantity rest = most - earlier - brought;
        Quantity left =
            rest.Value >= 0
                ? sheet.Line($"{name} left after this use", $"{most} - {earlier} - {brought}", rest, Kilograms)
                : sheet.Line(
                    $"{name} left after this use",
                    $"{most} - {earlier} - {brought}, the limit being rounded",
                    rest * 0,
                    Kilograms
                );
        RateResult result = new($"left-{Word(name)}", $"{name} left this year", left, [UnitTable.Of("lb/acre")]);
        if (_results.FirstOrDefault(one => one.Id == result.Id) is { } other)
        {
            if (other.Value.In(Kilograms) <= left.Value)
                return;
            _results.Remove(other);
        }

        _results.Add(result);
        _sources.AddRange(limit.Sources);
    }

    private Quantity? Brought(string name) =>
        active is { } all ? all.To(Kilograms) * ActiveAmounts.Share(treatment, name) : null;

    private static string Word(string name) =>
        name.ToLowerInvariant().Replace(' ', '-').Replace(",", "-", StringComparison.Ordinal);

    private static RateProblem Refusal(LimitVerdict verdict)
    {
        string cited = verdict.Yearly is { } limit ? $" ({string.Join(", ", limit.Sources.Take(3))})" : "";
        string until = verdict.Until is { } day ? FormattableString.Invariant($"; not before {day:yyyy-MM-dd}") : "";
        string rate = verdict.Holds == Truth.NotKnown ? "; tell more of the earlier uses, their days and rates" : "";
        return new("treatment", $"{char.ToLowerInvariant(verdict.Text[0])}{verdict.Text[1..]}{cited}{until}{rate}");
    }
}

using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Certainties;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>
/// From the weights of the rules to certainty and worth, step by step, so that it can be checked with a pencil: each
/// line begins with what the line before came to.
/// </summary>
internal static class WorkingSection
{
    private const double Nothing = 1e-9;

    /// <summary>The working of an action's certain arguments.</summary>
    public static CertaintyWorking Of(IEnumerable<Reason> reasons)
    {
        Reason[] sure = [.. reasons.Where(reason => reason is { IsCertain: true, Then: Consequence.Argument })];
        return CertaintyWorking.Of(
            sure.Where(reason => !IsDoubt(reason)).Select(reason => (reason.Judgement, reason.Certainty)),
            sure.Where(IsDoubt).Select(reason => (reason.Judgement, reason.Certainty))
        );
    }

    /// <summary>The section; nothing where no rule argues.</summary>
    /// <param name="names">What things are called.</param>
    /// <param name="reasons">Everything that was concluded of the action.</param>
    /// <param name="clear">The action where it is clear; null else.</param>
    public static IEnumerable<Block> Of(Names names, ImmutableArray<Reason> reasons, ClearAction? clear)
    {
        CertaintyWorking working = Of(reasons);
        if (working.For.IsEmpty && working.Against.IsEmpty)
            return [];
        return
        [
            Heading.Section("How the figures come about"),
            .. Side("For it: ", working.For, reasons),
            .. Side("Against it: ", working.Against, reasons),
            .. Together(working),
            .. clear is null ? [] : Worth(names, clear),
        ];
    }

    /// <summary>A figure as it stands in a working: enough places to go on with.</summary>
    public static string Figure(double value) => value.ToString("0.####", CultureInfo.InvariantCulture);

    private static IEnumerable<Block> Side(
        string label,
        ImmutableArray<CertaintyStep> steps,
        ImmutableArray<Reason> reasons
    )
    {
        foreach (CertaintyStep step in steps)
        {
            string sum =
                step.Before == 0
                    ? Figure(step.Certainty)
                    : $"{Figure(step.Before)} + {Figure(step.Certainty)} x (1 - {Figure(step.Before)}) = "
                        + Figure(step.After);
            yield return Line(label, $"{sum}, rule {step.Rule}");
            Reason reason = reasons
                .Where(one => one.IsCertain && one.Judgement == step.Rule)
                .MaxBy(one => one.Certainty)!;
            if (reason is { Then: Consequence.Argument own, Premise: < 1 - Nothing })
                yield return Line(
                        "where ",
                        $"{Figure(step.Certainty)} = {Figure(own.Certainty)} x {Figure(reason.Premise)}: the rule's "
                            + "weight times how sure the finding is that it builds on"
                    )
                    .At(4);
        }
    }

    private static IEnumerable<Block> Together(CertaintyWorking working)
    {
        string word = working.Together > Nothing ? $", {Figures.CaseWord(working.Together)} case" : "";
        if (working.For.IsEmpty || working.Against.IsEmpty)
        {
            yield return Line("Case: ", $"{Figure(working.Together)}{word}");
            yield break;
        }

        double least = Math.Min(working.ForIt, working.AgainstIt);
        string sum =
            least >= 1
                ? "complete contradiction, which counts as 0"
                : $"({Figure(working.ForIt)} - {Figure(working.AgainstIt)}) / (1 - {Figure(least)}) = "
                    + Figure(working.Together);
        yield return Line("Case: ", sum + word);
    }

    private static IEnumerable<Block> Worth(Names names, ClearAction clear)
    {
        EffectPart[] known =
        [
            .. clear.Effect.Parts.Where(part => part is { LowPercent: not null, HighPercent: not null }),
        ];
        if (clear.Effect.Reduction is { } reduction)
        {
            string sum = string.Join(
                " + ",
                known.Select(part => $"{Figure(part.Weight)} x {Figure(Middle(part))} ({names.Weed(part.Weed)})")
            );
            string none = Listing.And([
                .. clear.Effect.Parts.Where(part => part.LowPercent is null).Select(part => names.Weed(part.Weed)),
            ]);
            yield return Line(
                "Effect: ",
                $"{sum} = {Figure(reduction)}, of each weed its share of the cover times the middle of what is "
                    + "published"
                    + (none.Length == 0 ? "" : $"; nothing is promised of {none}")
            );
        }
        else
        {
            yield return Line(
                "Effect: ",
                $"no figure is published, so the least known among what is for the same time counts, "
                    + Figure(clear.EffectCounted)
            );
        }

        yield return Line(
            "Worth: ",
            $"{Figure(clear.Certainty)} x {Figure(clear.EffectCounted)} = {Figure(clear.Worth)}, the case times "
                + "the effect"
        );
    }

    private static double Middle(EffectPart part) => (double)(part.LowPercent!.Value + part.HighPercent!.Value) / 200;

    private static bool IsDoubt(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: true };

    private static Keyed Line(string label, string text) => new Keyed(label, text) { KeepsUnits = true, Indent = 2 };
}

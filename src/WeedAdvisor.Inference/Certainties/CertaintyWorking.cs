using System.Collections.Immutable;

namespace WeedAdvisor.Inference.Certainties;

/// <summary>One argument more on a side.</summary>
/// <param name="Rule">The rule whose argument it is.</param>
/// <param name="Before">What the side came to before.</param>
/// <param name="Certainty">The argument's certainty, in (0, 1].</param>
/// <param name="After">What the side comes to with it: before + certainty x (1 - before).</param>
public sealed record CertaintyStep(string Rule, double Before, double Certainty, double After);

/// <summary>
/// How the certainty of an action comes about, step by step, in the order in which <see cref="CertaintyFactor"/>
/// gathers: each side in order of size, then one against the other. Its last figure is that of the advice to the bit.
/// </summary>
/// <param name="For">The arguments for it.</param>
/// <param name="Against">The arguments against it.</param>
public sealed record CertaintyWorking(ImmutableArray<CertaintyStep> For, ImmutableArray<CertaintyStep> Against)
{
    /// <summary>What speaks for it, in [0, 1].</summary>
    public double ForIt => For.IsEmpty ? 0 : For[^1].After;

    /// <summary>What speaks against it, in [0, 1].</summary>
    public double AgainstIt => Against.IsEmpty ? 0 : Against[^1].After;

    /// <summary>Both together, in [-1, 1].</summary>
    public double Together => CertaintyFactor.Combine(ForIt, -AgainstIt);

    /// <summary>The working of arguments; of a rule that matched several times its strongest counts.</summary>
    /// <param name="support">Rule and certainty of each argument for it.</param>
    /// <param name="against">The same of each argument against it.</param>
    public static CertaintyWorking Of(
        IEnumerable<(string Rule, double Certainty)> support,
        IEnumerable<(string Rule, double Certainty)> against
    ) => new(Steps(support), Steps(against));

    private static ImmutableArray<CertaintyStep> Steps(IEnumerable<(string Rule, double Certainty)> arguments)
    {
        var steps = ImmutableArray.CreateBuilder<CertaintyStep>();
        double so = 0;
        foreach (
            (string rule, double certainty) in arguments
                .GroupBy(one => one.Rule, StringComparer.Ordinal)
                .Select(rule => (rule.Key, rule.Max(one => one.Certainty)))
                .OrderBy(one => one.Item2)
                .ThenBy(one => one.Key, StringComparer.Ordinal)
        )
        {
            double after = CertaintyFactor.Combine(so, certainty);
            steps.Add(new CertaintyStep(rule, so, certainty, after));
            so = after;
        }

        return steps.ToImmutable();
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Answers;

namespace WeedAdvisor.Planning.Rates.Forms;

/// <summary>
/// Holds optional entries against each other: which of them a chosen way of working needs, and which it cannot use.
/// </summary>
internal static class Entered
{
    /// <summary>The first entry that is missing or out of place; null when all is well.</summary>
    /// <param name="inputs">The entries.</param>
    /// <param name="way">The way of working, such as <c>a circle</c>.</param>
    /// <param name="needs">Fields that it needs.</param>
    /// <param name="idle">Fields that it has no use for.</param>
    public static RateProblem? Wrong(
        RateInputs inputs,
        string way,
        ImmutableArray<string> needs,
        ImmutableArray<string> idle
    )
    {
        if (needs.FirstOrDefault(field => !inputs.Has(field)) is { } missing)
            return new RateProblem(missing, $"not entered; {way} needs it");
        return idle.FirstOrDefault(inputs.Has) is { } spare
            ? new RateProblem(spare, $"{way} has no use for it; leave it blank")
            : null;
    }

    /// <summary>A problem unless just one of two fields was entered.</summary>
    public static RateProblem? NotOne(RateInputs inputs, string one, string other) =>
        (inputs.Has(one), inputs.Has(other)) switch
        {
            (true, true) => new RateProblem(other, $"enter this or '{one}', not both"),
            (false, false) => new RateProblem(one, $"not entered; enter this or '{other}'"),
            _ => null,
        };
}

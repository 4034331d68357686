using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Rates;

/// <summary>Runs rate sums the way a person does: by what is typed.</summary>
internal static class Sums
{
    /// <summary>What the last of a decimal's 28 digits may add up to.</summary>
    public const decimal Dust = 0.000000000000001m;

    /// <summary>The knowledge, and no area.</summary>
    public static RateSite Nowhere { get; } = new(ShippedRules.Knowledge, null, null);

    /// <summary>Entries written as <c>field=text|field=text</c>.</summary>
    public static (string Field, string Typed)[] Typed(string entries) =>
        [.. entries.Split('|').Select(entry => entry.Split('=')).Select(parts => (parts[0], parts[1]))];

    /// <summary>The form of a group.</summary>
    public static RateForm Form(string group, string form) =>
        RateForms.Groups.Single(one => one.Id == group).Forms.Single(one => one.Id == form);

    /// <summary>The answer; fails the test with what is wrong when there is none.</summary>
    public static RateAnswer Answer(string group, string form, params (string Field, string Typed)[] typed)
    {
        Outcome<RateAnswer, RateProblem> outcome = Form(group, form)
            .Run(typed.ToDictionary(entry => entry.Field, entry => entry.Typed), Nowhere);
        Assert.True(outcome.Value is not null, string.Join("; ", outcome.Refusals));
        return outcome.Value;
    }

    /// <summary>The problems; fails the test when there is an answer.</summary>
    public static ImmutableArray<RateProblem> Refusal(
        string group,
        string form,
        params (string Field, string Typed)[] typed
    )
    {
        Outcome<RateAnswer, RateProblem> outcome = Form(group, form)
            .Run(typed.ToDictionary(entry => entry.Field, entry => entry.Typed), Nowhere);
        Assert.Null(outcome.Value);
        return outcome.Refusals;
    }
}

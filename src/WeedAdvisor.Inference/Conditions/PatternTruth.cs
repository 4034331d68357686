using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Conditions;

/// <summary>Whether a fact passes a pattern's tests, and which variables that binds.</summary>
internal static class PatternTruth
{
    private static readonly IReadOnlyCollection<Need> s_nothing = Array.Empty<Need>();

    /// <summary>The truth of the pattern for the fact, what it waits for, and the variables bound so far.</summary>
    public static FactTruth Of(Pattern.Fact pattern, Fact fact, Bindings bindings)
    {
        var truth = Truth.Yes;
        SortedSet<Need>? needs = null;
        foreach ((string attribute, AttributeTest test) in pattern.Tests)
        {
            Reading reading = fact.Read(attribute);
            if (test is AttributeTest.Variable { Binds: true } variable)
                bindings = bindings.With(variable.Name, reading);
            Truth holds = TestTruth.Of(test, reading, bindings);
            if (holds == Truth.NotKnown)
                (needs ??= []).UnionWith(TestTruth.NeedsOf(test, reading, bindings));
            truth = Truths.And(truth, holds);
        }

        return new FactTruth(truth, needs ?? s_nothing, bindings);
    }

    /// <summary>Whether a fact may pass: no test fails for sure. What it waits for is not worked out.</summary>
    public static bool MayPass(Pattern.Fact pattern, Fact fact, Bindings bindings)
    {
        // Most facts fail a test that no variable stands in: nothing is bound for them.
        bool usesVariables = false;
        foreach ((string attribute, AttributeTest test) in pattern.Tests)
        {
            if (MayUseVariables(test))
                usesVariables = true;
            else if (TestTruth.Of(test, fact.Read(attribute), bindings) == Truth.No)
                return false;
        }

        return !usesVariables || MayPassBound(pattern, fact, bindings);
    }

    private static bool MayUseVariables(AttributeTest test) =>
        test is AttributeTest.Variable { Binds: false } or AttributeTest.VariableLimit or AttributeTest.Every;

    private static bool MayPassBound(Pattern.Fact pattern, Fact fact, Bindings bindings)
    {
        foreach ((string attribute, AttributeTest test) in pattern.Tests)
        {
            Reading reading = fact.Read(attribute);
            if (test is AttributeTest.Variable { Binds: true } variable)
                bindings = bindings.With(variable.Name, reading);
            if (TestTruth.Of(test, reading, bindings) == Truth.No)
                return false;
        }

        return true;
    }

    /// <summary>Whether a fact is of the kind that a pattern asks for.</summary>
    public static bool IsOfKind(Fact fact, FactKind kind) =>
        kind switch
        {
            FactKind.Site => fact is SiteFact,
            FactKind.Weed => fact is WeedFact,
            FactKind.Crop => fact is CropFact,
            FactKind.Practice => fact is PracticeFact,
            FactKind.Treatment => fact is TreatmentFact,
            FactKind.Action => fact is ActionFact,
            FactKind.Past => fact is PastFact,
            FactKind.Closure => fact is ClosureFact,
            FactKind.Limit => fact is LimitFact,
            FactKind.Escape => fact is EscapeFact,
            _ => false,
        };
}

/// <summary>The truth of a pattern for one fact.</summary>
/// <param name="Truth">Whether it holds.</param>
/// <param name="Needs">What it waits for when it is not known.</param>
/// <param name="Bindings">The variables after it.</param>
internal sealed record FactTruth(Truth Truth, IReadOnlyCollection<Need> Needs, Bindings Bindings);

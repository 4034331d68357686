using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Tests.Oracle;

/// <summary>
/// What holds in a world of which everything is known: each condition is tried on each thing, true or false.
/// </summary>
/// <remarks>Plain on purpose, and with nothing of how the program decides.</remarks>
internal sealed class TwoValued
{
    private readonly World _world;
    private readonly HashSet<string> _findings = new(StringComparer.Ordinal);
    private readonly Dictionary<string, Value?> _bound = new(StringComparer.Ordinal);

    private TwoValued(World world) => _world = world;

    /// <summary>Everything that the judgements conclude.</summary>
    /// <param name="judgements">The judgements.</param>
    /// <param name="world">The world.</param>
    public static Said[] Conclude(IEnumerable<Judgement> judgements, World world)
    {
        var decided = new TwoValued(world);
        var said = new List<Said>();
        foreach (Judgement judgement in judgements.OrderBy(FindingMade, StringComparer.Ordinal))
        {
            foreach (ImmutableArray<Thing> match in decided.Matches(judgement.When, 0, []))
                said.Add(SaidOf(judgement, match));
            if (judgement.Then is Consequence.MakesFinding finding && said.Exists(one => one.Judgement == judgement.Id))
                decided._findings.Add(finding.Id);
        }

        return [.. said];
    }

    // Findings are named so that each builds on earlier names only; what makes none comes last.
    private static string FindingMade(Judgement judgement) =>
        judgement.Then is Consequence.MakesFinding finding ? finding.Id : "~";

    private static Said SaidOf(Judgement judgement, ImmutableArray<Thing> match) =>
        new(
            judgement.Id,
            [.. match.Where(thing => thing.Kind is not (FactKind.Site or FactKind.Past)).Select(thing => thing.Key)],
            match
                .FirstOrDefault(thing => thing.Kind is FactKind.Practice or FactKind.Treatment)
                ?.Key["action/".Length..],
            true
        );

    private IEnumerable<ImmutableArray<Thing>> Matches(
        ImmutableArray<Pattern> when,
        int next,
        ImmutableArray<Thing> soFar
    )
    {
        if (next == when.Length)
            return [soFar];
        if (when[next] is not Pattern.Fact fact)
            return IsSo(when[next]) ? Matches(when, next + 1, soFar) : [];
        var found = new List<ImmutableArray<Thing>>();
        foreach (Thing thing in _world.Of(fact.Kind))
        {
            if (Passes(thing, fact))
                found.AddRange(Matches(when, next + 1, soFar.Add(thing)));
        }

        return found;
    }

    private bool IsSo(Pattern pattern) =>
        pattern switch
        {
            Pattern.HasFinding finding => _findings.Contains(finding.Id),
            Pattern.Any any => IsThere(any.Inner),
            Pattern.None none => !IsThere(none.Inner),
            _ => throw new InvalidOperationException("no such pattern"),
        };

    private bool IsThere(Pattern pattern) =>
        pattern is Pattern.Fact fact ? _world.Of(fact.Kind).Any(thing => Passes(thing, fact)) : IsSo(pattern);

    private bool Passes(Thing thing, Pattern.Fact pattern)
    {
        foreach (AttributeCondition condition in pattern.Tests)
        {
            if (!Holds(condition.Test, thing[condition.Attribute]))
                return false;
        }

        return true;
    }

    private bool Holds(AttributeTest test, Value? value) =>
        test switch
        {
            AttributeTest.Word word => word.Negated != HasOneOf(value, word.Words),
            AttributeTest.Limit limit => Compares(value?.Number, limit.Comparison, limit.Value),
            AttributeTest.Variable { Binds: true } binds => Binds(binds.Name, value),
            AttributeTest.Variable variable => variable.Negated != IsShared(value, _bound[variable.Name]),
            AttributeTest.VariableLimit limit => Compares(value?.Number, limit.Comparison, _bound[limit.Name]?.Number),
            AttributeTest.Every every => every.Tests.All(one => Holds(one, value)),
            _ => throw new InvalidOperationException("no such test"),
        };

    private bool Binds(string name, Value? value)
    {
        _bound[name] = value;
        return value is not null;
    }

    private static bool HasOneOf(Value? value, WordSet words) =>
        value is not null
        && (
            value.Number is { } number
                ? words.Contains(number.ToString("0.####", CultureInfo.InvariantCulture))
                : value.Words.Any(words.Contains)
        );

    private static bool IsShared(Value? value, Value? other) =>
        value is not null
        && other is not null
        && (value.Number is { } number ? number == other.Number : value.Words.Any(other.Words.Contains));

    private static bool Compares(decimal? value, Comparison comparison, decimal? limit) =>
        value is { } left
        && limit is { } right
        && comparison switch
        {
            Comparison.LessThan => left < right,
            Comparison.AtMost => !(left > right),
            Comparison.AtLeast => !(left < right),
            _ => left > right,
        };
}

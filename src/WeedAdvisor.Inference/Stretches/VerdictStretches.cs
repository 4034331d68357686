using System.Collections.Immutable;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Stretches;

/// <summary>
/// Finds days between which nothing changes that a judgement tests. On all days of such a stretch every action stands
/// alike, so the rules need be asked only once; texts that count days differ.
/// </summary>
/// <remarks>
/// Two days are alike when the facts of the area are the same but for numbers, and every number stays between the same
/// two of the numbers that judgements compare it with. No list of dates is kept: what comes to depend on the day later
/// is found by itself.
/// </remarks>
public sealed class VerdictStretches
{
    private static readonly FactKind[] s_kinds = [.. Enum.GetValues<FactKind>().Where(kind => !kind.IsOfCatalogue())];

    private readonly KnowledgeBase _knowledge;
    private readonly ComparedNumbers _compared;

    private VerdictStretches(KnowledgeBase knowledge, ComparedNumbers compared) =>
        (_knowledge, _compared) = (knowledge, compared);

    /// <summary>Reads what the judgements of a knowledge base compare.</summary>
    public static VerdictStretches Of(KnowledgeBase knowledge) =>
        new(knowledge, ComparedNumbers.Of(knowledge.Judgements, CatalogueFacts.Of(knowledge)));

    /// <summary>The stretches of a span of days, in order; together they are the span.</summary>
    /// <param name="on">The area on a day.</param>
    /// <param name="from">The first day.</param>
    /// <param name="to">The last day.</param>
    public ImmutableArray<(DateOnly From, DateOnly To)> Of(Func<DateOnly, AreaCase> on, DateOnly from, DateOnly to)
    {
        var facts = new ImmutableArray<Fact>[Math.Max(0, to.DayNumber - from.DayNumber + 1)];
        Parallel.For(0, facts.Length, day => facts[day] = AreaFacts.Of(_knowledge, on(from.AddDays(day))));
        var stretches = ImmutableArray.CreateBuilder<(DateOnly From, DateOnly To)>();
        for (int first = 0, next = 1; next <= facts.Length; next++)
        {
            if (next < facts.Length && AreAlike(facts[next - 1], facts[next]))
                continue;
            stretches.Add((from.AddDays(first), from.AddDays(next - 1)));
            first = next;
        }

        return stretches.ToImmutable();
    }

    private bool AreAlike(ImmutableArray<Fact> one, ImmutableArray<Fact> other) =>
        one.Length == other.Length
        && one.Zip(other).All(pair => AreAlike(pair.First, pair.Second))
        && _compared.Pairs.All(pair => OrderOf(one, pair).SequenceEqual(OrderOf(other, pair)));

    private bool AreAlike(Fact one, Fact other)
    {
        if (!one.Equals(other) || one.Readings.Count != other.Readings.Count)
            return false;
        FactKind kind = KindOf(one);
        return one.Readings.All(pair =>
            other.Readings.TryGetValue(pair.Key, out Reading? reading)
            && (pair.Value, reading) switch
            {
                (Reading.Number left, Reading.Number right) => _compared.AreAlike(
                    new FactAttribute(kind, pair.Key),
                    left.Value,
                    right.Value
                ),
                _ => pair.Value == reading,
            }
        );
    }

    // How the numbers of two attributes lie to each other, over all facts that have them.
    private static IEnumerable<int> OrderOf(
        ImmutableArray<Fact> facts,
        (FactAttribute One, FactAttribute Other) pair
    ) => from one in NumbersOf(facts, pair.One) from other in NumbersOf(facts, pair.Other) select one.CompareTo(other);

    private static IEnumerable<decimal> NumbersOf(ImmutableArray<Fact> facts, FactAttribute attribute) =>
        facts
            .Where(fact => KindOf(fact) == attribute.Kind)
            .Select(fact => fact.Readings.GetValueOrDefault(attribute.Name))
            .OfType<Reading.Number>()
            .Select(number => number.Value);

    private static FactKind KindOf(Fact fact) => s_kinds.First(kind => Conditions.PatternTruth.IsOfKind(fact, kind));
}

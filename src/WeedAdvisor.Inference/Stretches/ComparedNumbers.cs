using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Stretches;

/// <summary>An attribute of a kind of fact.</summary>
/// <param name="Kind">The kind of fact.</param>
/// <param name="Name">The attribute's name.</param>
internal readonly record struct FactAttribute(FactKind Kind, string Name);

/// <summary>
/// What the numbers of an area are compared with, over all judgements: fixed limits, the figures of the catalogue, and
/// each other. Between two such marks a number may move, and no judgement can tell the difference.
/// </summary>
internal sealed class ComparedNumbers
{
    private readonly Dictionary<FactAttribute, decimal[]> _marks;

    private ComparedNumbers(
        Dictionary<FactAttribute, decimal[]> marks,
        ImmutableArray<(FactAttribute, FactAttribute)> pairs
    ) => (_marks, Pairs) = (marks, pairs);

    /// <summary>Attributes of areas that some judgement compares with one another.</summary>
    public ImmutableArray<(FactAttribute One, FactAttribute Other)> Pairs { get; }

    /// <summary>Reads the comparisons out of the judgements.</summary>
    public static ComparedNumbers Of(IEnumerable<Judgement> judgements, IReadOnlyCollection<ActionFact> catalogue)
    {
        var marks = new Dictionary<FactAttribute, SortedSet<decimal>>();
        var pairs = new HashSet<(FactAttribute, FactAttribute)>();
        foreach (Judgement judgement in judgements)
        {
            (FactAttribute Attribute, AttributeTest Test)[] tests = [.. judgement.When.SelectMany(TestsIn)];
            foreach ((FactAttribute attribute, AttributeTest test) in tests)
                MarksOf(attribute).UnionWith(FixedIn(test));
            foreach (FactAttribute[] together in Together(tests))
            {
                foreach (FactAttribute one in together.Where(one => !one.Kind.IsOfCatalogue()))
                {
                    MarksOf(one).UnionWith(together.SelectMany(other => FiguresOf(other, catalogue)));
                    pairs.UnionWith(together.Where(other => !other.Kind.IsOfCatalogue()).Select(other => (one, other)));
                }
            }
        }

        return new ComparedNumbers(
            marks.Where(pair => pair.Value.Count > 0).ToDictionary(pair => pair.Key, pair => pair.Value.ToArray()),
            [.. pairs.Where(pair => MayBeNumber(pair.Item1) && MayBeNumber(pair.Item2))]
        );

        SortedSet<decimal> MarksOf(FactAttribute attribute) =>
            marks.TryGetValue(attribute, out SortedSet<decimal>? set) ? set : marks[attribute] = [];
    }

    /// <summary>Whether no mark lies between two numbers of an attribute, or on one of them.</summary>
    public bool AreAlike(FactAttribute attribute, decimal one, decimal other) =>
        one == other
        || !_marks.TryGetValue(attribute, out decimal[]? marks)
        || Array.BinarySearch(marks, one) == Array.BinarySearch(marks, other);

    /// <summary>The numbers that an attribute is compared with, in order.</summary>
    public ImmutableSortedSet<decimal> MarksOf(FactAttribute attribute) => [.. _marks.GetValueOrDefault(attribute, [])];

    private static IEnumerable<(FactAttribute Attribute, AttributeTest Test)> TestsIn(Pattern pattern) =>
        pattern switch
        {
            Pattern.Fact fact => fact.Tests.SelectMany(condition =>
                Single(condition.Test).Select(test => (new FactAttribute(fact.Kind, condition.Attribute), test))
            ),
            Pattern.None none => TestsIn(none.Inner),
            Pattern.Any any => TestsIn(any.Inner),
            _ => [],
        };

    private static IEnumerable<AttributeTest> Single(AttributeTest test) =>
        test is AttributeTest.Every every ? every.Tests.SelectMany(Single) : [test];

    // Numbers are also tested as words, such as the month.
    private static IEnumerable<decimal> FixedIn(AttributeTest test) =>
        test switch
        {
            AttributeTest.Limit limit => [limit.Value],
            AttributeTest.Word word => word
                .Words.Select(text =>
                    decimal.TryParse(text, NumberStyles.Number, CultureInfo.InvariantCulture, out decimal number)
                        ? number
                        : (decimal?)null
                )
                .OfType<decimal>(),
            _ => [],
        };

    // What one variable of a judgement ties together.
    private static IEnumerable<FactAttribute[]> Together(
        IEnumerable<(FactAttribute Attribute, AttributeTest Test)> tests
    ) =>
        tests
            .Select(one =>
                (
                    one.Attribute,
                    Name: one.Test switch
                    {
                        AttributeTest.Variable variable => variable.Name,
                        AttributeTest.VariableLimit limit => limit.Name,
                        _ => null,
                    }
                )
            )
            .Where(one => one.Name is not null)
            .GroupBy(one => one.Name, one => one.Attribute)
            .Select(group => group.ToArray())
            .Where(group => group.Length > 1);

    // What a question asks for may be a number; the schema tells of all else.
    private static bool MayBeNumber(FactAttribute attribute) =>
        AttributeSchema.Of(attribute.Kind).FirstOrDefault(definition => definition.Name == attribute.Name)
            is not { } known
        || known.Shape == AttributeShape.Number;

    private static IEnumerable<decimal> FiguresOf(FactAttribute attribute, IReadOnlyCollection<ActionFact> catalogue) =>
        attribute.Kind.IsOfCatalogue()
            ? catalogue
                .Where(fact => PatternTruth.IsOfKind(fact, attribute.Kind))
                .Select(fact => fact.Read(attribute.Name))
                .OfType<Reading.Number>()
                .Select(number => number.Value)
            : [];
}

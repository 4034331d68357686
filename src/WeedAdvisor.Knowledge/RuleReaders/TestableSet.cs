using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>The attributes that a pattern of one kind can test.</summary>
internal sealed class TestableSet
{
    private static readonly TestableSet s_weed = OfFacts(FactKind.Weed);
    private static readonly TestableSet s_crop = OfFacts(FactKind.Crop);
    private static readonly TestableSet s_practice = OfFacts(FactKind.Practice);
    private static readonly TestableSet s_treatment = OfFacts(FactKind.Treatment);
    private static readonly TestableSet s_action = OfFacts(FactKind.Action);
    private static readonly TestableSet s_past = OfFacts(FactKind.Past);
    private static readonly TestableSet s_closure = OfFacts(FactKind.Closure);
    private static readonly TestableSet s_limit = OfFacts(FactKind.Limit);
    private static readonly TestableSet s_escape = OfFacts(FactKind.Escape);

    // What rules tested once and most will still look for.
    private const string InsteadOfMonth = "'season', 'mean-c' or 'warming': a month is not the same season everywhere";

    private readonly Dictionary<string, Testable> _attributes;
    private readonly Dictionary<string, string> _elsewhere;
    private readonly ValidWords _names;

    private TestableSet(FactKind kind, Dictionary<string, Testable> attributes, Dictionary<string, string> elsewhere)
    {
        _attributes = attributes;
        _elsewhere = elsewhere;
        _names = new ValidWords($"something that a {PatternWords.Of(kind)} pattern can test", _attributes.Keys);
    }

    /// <summary>The attributes of a weed, a crop, an action or an earlier application.</summary>
    public static TestableSet Of(FactKind kind) =>
        kind switch
        {
            FactKind.Weed => s_weed,
            FactKind.Crop => s_crop,
            FactKind.Practice => s_practice,
            FactKind.Treatment => s_treatment,
            FactKind.Action => s_action,
            FactKind.Past => s_past,
            FactKind.Closure => s_closure,
            FactKind.Limit => s_limit,
            FactKind.Escape => s_escape,
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "the site depends on the questions"),
        };

    /// <summary>The attributes of the site: what is asked and, for rules, what follows from the answers.</summary>
    public static TestableSet OfSite(IReadOnlyCollection<Question> questions, bool withDerived)
    {
        // Made anew for every question with conditions: each of the questions is gone through once.
        var attributes = new Dictionary<string, Testable>(StringComparer.Ordinal);
        var elsewhere = new Dictionary<string, string>(StringComparer.Ordinal);
        foreach (Question question in questions)
        {
            if (Asked(question) is { } testable)
                attributes.TryAdd(question.Id, testable);
            else
                elsewhere.TryAdd(question.Id, Elsewhere(question.Kind));
        }

        if (withDerived)
        {
            foreach (AttributeDefinition definition in AttributeSchema.DerivedSite)
                attributes.TryAdd(definition.Name, Ranged(definition));
            elsewhere.TryAdd("month", InsteadOfMonth);
        }

        return new TestableSet(FactKind.Site, attributes, elsewhere);
    }

    /// <summary>The attribute of this name, or null.</summary>
    public Testable? Find(string name) => _attributes.GetValueOrDefault(name);

    /// <summary>What was expected instead of an unknown name.</summary>
    public string ExpectedInsteadOf(string name) => _elsewhere.GetValueOrDefault(name, _names.Expected);

    /// <summary>The nearest known name, or null.</summary>
    public string? Nearest(string name) => _elsewhere.ContainsKey(name) ? null : _names.Nearest(name);

    private static TestableSet OfFacts(FactKind kind) =>
        new(
            kind,
            AttributeSchema.Of(kind).Select(Ranged).ToDictionary(a => a.Definition.Name, StringComparer.Ordinal),
            []
        );

    private static Testable Ranged(AttributeDefinition definition) =>
        new(
            definition,
            definition.Name switch
            {
                "mean-c" => new Span(-40, 45),
                "cover-percent" or "total-cover-percent" => new Span(0, 100),
                _ => null,
            }
        );

    private static Testable? Asked(Question question) =>
        question.Kind switch
        {
            QuestionKind.OneOf => new(new(question.Id, AttributeShape.Word, $"answers:{question.Id}"), null),
            QuestionKind.AnyOf => new(new(question.Id, AttributeShape.WordSet, $"answers:{question.Id}"), null),
            QuestionKind.Region => new(new(question.Id, AttributeShape.Word, "regions"), null),
            QuestionKind.Number => new(new(question.Id, AttributeShape.Number), question.Between),
            _ => null,
        };

    private static string Elsewhere(QuestionKind kind) =>
        kind switch
        {
            QuestionKind.Date => "the number of days that follows from the date, such as 'days-since-potting'",
            QuestionKind.Crops => "a 'crop:' pattern",
            QuestionKind.Weeds => "a 'weed:' pattern",
            QuestionKind.Chemicals => "a 'treatment:' pattern: what lies in the store changes no advice",
            _ => "a 'past:' pattern",
        };
}

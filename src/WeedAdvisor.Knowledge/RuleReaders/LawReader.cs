using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>A topic of which a country's file says that nothing is held, and whom to ask.</summary>
/// <param name="Country">The country.</param>
/// <param name="Topic">The topic; empty when it was missing.</param>
/// <param name="Ask">Whom to ask.</param>
/// <param name="When">The conditions, the country first.</param>
/// <param name="Where">Where it stands.</param>
internal sealed record LawNotHeld(string Country, string Topic, string Ask, ImmutableArray<Pattern> When, Place Where);

/// <summary>That a file on the law of a country was read, whatever stands in it.</summary>
/// <param name="Country">The country.</param>
/// <param name="File">The file.</param>
internal sealed record LawFileRead(string Country, string File);

/// <summary>
/// Reads the law of one country. Every rule holds in that country alone: the condition on it is put in front here, so
/// that no rule can be written without.
/// </summary>
/// <param name="country">The country: the file's name without its ending.</param>
/// <param name="site">What a site pattern can test.</param>
internal sealed class LawReader(string country, TestableSet site)
{
    /// <summary>The key of the topics that a rule answers.</summary>
    public const string Topic = "topic";

    /// <summary>The key of whom to ask where nothing is held.</summary>
    public const string NotHeld = "not-held";

    private const string Topics = "list:law-topic";

    private readonly Pattern _here = new Pattern.Fact(
        FactKind.Site,
        [new AttributeCondition("country", new AttributeTest.Word(WordSet.Of([country]), Negated: false))]
    );

    /// <summary>The country whose law a file holds.</summary>
    public static string CountryOf(string file) => Path.GetFileNameWithoutExtension(file);

    /// <summary>The id of the rule that says that a topic is not held.</summary>
    public static string IdOfNotHeld(string country, string topic) => $"{country}-{topic}-is-not-held";

    /// <summary>The rules and the topics not held, after the note that the file was read.</summary>
    public IEnumerable<object> Read(Node root, ReadContext context)
    {
        if (country == Region.Elsewhere)
            context.Report(root, $"a file of law named '{country}'", "the word of one country");
        else
            context.CheckWord(root, country, context.Lexicon.Of(Region.Countries));
        return
        [
            new LawFileRead(country, context.File),
            .. MappingReader.Each(root, context, "a rule of law", Rule).OfType<object>(),
        ];
    }

    private object? Rule(MappingReader map) => map.Has(NotHeld) ? Unheld(map) : Held(map);

    private Judgement? Held(MappingReader map)
    {
        WordSet topics =
            map.Optional(Topic) is SequenceNode
                ? map.WordSet(Topic, Topics)
                : WordSet.Of(map.Word(Topic, Topics) is { Length: > 0 } one ? [one] : []);
        var answer = new LawAnswer(country, topics, IsHeld: true) { Checked = map.CheckedDay() };
        Judgement? rule = new JudgementReader($"law/{country}", site).Read(map, [_here], answer);
        map.CheckedAgainst(rule?.Sources ?? []);
        return rule;
    }

    private LawNotHeld Unheld(MappingReader map)
    {
        var variables = new VariableScope(map.Context);
        ImmutableArray<Pattern> when = map.Optional("when") is { } patterns
            ? new PatternReader(map.Context, site, variables).ReadAll(patterns)
            : [];
        variables.Finish();
        var unheld = new LawNotHeld(country, map.Word(Topic, Topics), map.Text(NotHeld), [_here, .. when], map.Where);
        map.Finish();
        return unheld;
    }
}

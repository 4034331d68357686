using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>Reads the patterns of one rule, in order, so that a variable is bound before it is used.</summary>
internal sealed class PatternReader(ReadContext context, TestableSet site, VariableScope variables)
{
    private readonly TestReader _tests = new(context, variables);

    /// <summary>The patterns under <c>when</c>; at least one.</summary>
    public ImmutableArray<Pattern> ReadAll(Node node)
    {
        if (node is not SequenceNode { Items.Count: > 0 } list)
        {
            context.Report(node, node.Described, "a list of at least one pattern, as in '- site: { cover: open-sky }'");
            return [];
        }

        return [.. list.Items.Select(item => Read(item, PatternWords.All)).OfType<Pattern>()];
    }

    private Pattern? Read(Node node, ValidWords words)
    {
        if (node is not MappingNode { Entries: [var entry] })
        {
            context.Report(node, node.Described, "one pattern: a map with one key");
            return null;
        }

        string word = entry.Key.Text;
        if (!words.Contains(word))
        {
            context.CheckWord(entry.Key, word, words);
            return null;
        }

        return word switch
        {
            PatternWords.None => Inner(entry.Value) is { } inner ? new Pattern.None(inner) : null,
            PatternWords.Any => Inner(entry.Value) is { } inner ? new Pattern.Any(inner) : null,
            PatternWords.Finding => Finding(entry.Value),
            _ => Fact(PatternWords.KindOf(word)!.Value, entry.Value),
        };
    }

    private Pattern? Inner(Node node)
    {
        variables.MayBind = false;
        Pattern? inner = Read(node, PatternWords.Inner);
        variables.MayBind = true;
        return inner;
    }

    private Pattern.HasFinding? Finding(Node node)
    {
        if (MappingReader.Of(node, context, "a finding") is not { } map)
            return null;
        var finding = new Pattern.HasFinding(map.Word("id", "findings"));
        map.Finish();
        return finding;
    }

    private Pattern.Fact? Fact(FactKind kind, Node node)
    {
        if (node is not MappingNode map)
        {
            context.Report(node, node.Described, "a map of tests; { } to match every one");
            return null;
        }

        TestableSet attributes = kind == FactKind.Site ? site : TestableSet.Of(kind);
        return new Pattern.Fact(kind, _tests.ReadAll(map, attributes));
    }
}

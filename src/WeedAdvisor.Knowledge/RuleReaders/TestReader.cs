using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>Reads the test that a pattern makes on one attribute.</summary>
/// <param name="context">What the readers of this file share.</param>
/// <param name="variables">The rule's variables; null where none are allowed.</param>
internal sealed class TestReader(ReadContext context, VariableScope? variables)
{
    // Gives a name to what is tested, so that the test and the text can both use it.
    private const string Called = "called";

    private static readonly ValidWords s_operators = new(
        "one of",
        [
            Called,
            TestSpelling.Not,
            TestSpelling.Has,
            TestSpelling.Lacks,
            "at-least",
            "at-most",
            "more-than",
            "less-than",
            "between",
        ]
    );

    /// <summary>The conditions of a pattern's map, in the order written.</summary>
    public ImmutableArray<AttributeCondition> ReadAll(MappingNode pattern, TestableSet attributes)
    {
        var conditions = ImmutableArray.CreateBuilder<AttributeCondition>(pattern.Entries.Count);
        foreach (Entry entry in pattern.Entries)
        {
            string name = entry.Key.Text;
            if (attributes.Find(name) is not { } attribute)
                context.Report(entry.Key, $"'{name}'", attributes.ExpectedInsteadOf(name), attributes.Nearest(name));
            else
                conditions.AddRange(
                    Read(attribute, entry.Value)
                        .OfType<AttributeTest>()
                        .Select(test => new AttributeCondition(name, test))
                );
        }

        return conditions.DrainToImmutable();
    }

    private IEnumerable<AttributeTest?> Read(Testable attribute, Node node) =>
        node switch
        {
            ScalarNode scalar when IsVariable(scalar) => [Variable(attribute, scalar)],
            MappingNode { Entries: [{ Key.Text: Called, Value: ScalarNode called }, ..] entries } named
                when IsVariable(called) => entries.Count == 1
                ? [variables!.BindOrUse(called, attribute.Definition)]
                :
                [
                    variables!.BindOrUse(called, attribute.Definition),
                    Operators(attribute, named, named.Entries.Skip(1)),
                ],
            MappingNode map => [Operators(attribute, map, map.Entries)],
            _ => [PlainWords(attribute, node)],
        };

    private AttributeTest? Variable(Testable attribute, ScalarNode name)
    {
        if (variables!.IsBound(name))
            TestSpelling.CheckPlain(context, attribute.Definition, name);
        return variables.BindOrUse(name, attribute.Definition);
    }

    private AttributeTest? PlainWords(Testable attribute, Node node)
    {
        TestSpelling.CheckPlain(context, attribute.Definition, node);
        return Words(attribute, node, isNegated: false);
    }

    private AttributeTest? NamedWords(Testable attribute, Entry entry)
    {
        TestSpelling.CheckNamed(context, attribute.Definition, entry);
        return Words(attribute, entry.Value, isNegated: entry.Key.Text != TestSpelling.Has);
    }

    private AttributeTest? Operators(Testable attribute, MappingNode map, IEnumerable<Entry> entries)
    {
        if (map.Entries.Count == 0)
            context.Report(map, map.Described, s_operators.Expected);
        AttributeTest[] tests = [.. entries.SelectMany(entry => Operator(attribute, entry)).OfType<AttributeTest>()];
        return tests.Length switch
        {
            0 => null,
            1 => tests[0],
            _ => new AttributeTest.Every([.. tests]),
        };
    }

    private IEnumerable<AttributeTest?> Operator(Testable attribute, Entry entry)
    {
        switch (entry.Key.Text)
        {
            case Called:
                context.Report(entry.Key, $"'{Called}' here", $"'{Called}: $name' before the tests");
                return [];
            case TestSpelling.Not or TestSpelling.Has or TestSpelling.Lacks:
                return [NamedWords(attribute, entry)];
            case "at-least":
                return [Limit(attribute, entry, Comparison.AtLeast)];
            case "at-most":
                return [Limit(attribute, entry, Comparison.AtMost)];
            case "more-than":
                return [Limit(attribute, entry, Comparison.MoreThan)];
            case "less-than":
                return [Limit(attribute, entry, Comparison.LessThan)];
            case "between":
                return Between(attribute, entry);
            default:
                context.CheckWord(entry.Key, entry.Key.Text, s_operators);
                return [];
        }
    }

    private AttributeTest? Words(Testable attribute, Node node, bool isNegated)
    {
        if (node is ScalarNode scalar && IsVariable(scalar))
            return variables!.Use(scalar, attribute.Definition.Shape) is { } name
                ? new AttributeTest.Variable(name, Binds: false, isNegated)
                : null;
        IReadOnlyList<Node> items = node is SequenceNode list ? list.Items : [node];
        if (items.Count == 0)
            context.Report(node, node.Described, "at least one word");
        var words = new HashSet<string>(StringComparer.Ordinal);
        foreach (Node item in items)
        {
            if (Word(attribute, item) is not { } word)
                continue;
            if (!words.Add(word))
                context.Report(item, $"'{word}' a second time", "each word once in a list");
        }

        return words.Count == 0 ? null : new AttributeTest.Word(WordSet.Of(words), isNegated);
    }

    private string? Word(Testable attribute, Node node)
    {
        if (attribute.Definition.Shape == AttributeShape.Number)
            return Number(attribute, node) is { } number ? ((Reading.Number)Reading.Of(number)).AsWord : null;
        if (node is not ScalarNode { IsNothing: false } scalar || IsVariable(scalar))
        {
            context.Report(node, node.Described, "a word; a variable stands alone, not in a list");
            return null;
        }

        context.CheckWord(scalar, scalar.Text, context.Lexicon.Of(attribute.Definition.Words ?? "words:true|false"));
        return scalar.Text;
    }

    private AttributeTest? Limit(Testable attribute, Entry entry, Comparison comparison)
    {
        if (!IsNumber(attribute, entry))
            return null;
        if (entry.Value is ScalarNode scalar && IsVariable(scalar))
            return variables!.Use(scalar, AttributeShape.Number) is { } name
                ? new AttributeTest.VariableLimit(comparison, name)
                : null;
        return Number(attribute, entry.Value) is { } number ? new AttributeTest.Limit(comparison, number) : null;
    }

    private IEnumerable<AttributeTest?> Between(Testable attribute, Entry entry)
    {
        if (!IsNumber(attribute, entry))
            return [];
        if (entry.Value is not SequenceNode { Items: [var low, var high] } range)
        {
            context.Report(entry.Value, entry.Value.Described, "two numbers: [low, high]");
            return [];
        }

        if (Number(attribute, low) is not { } from || Number(attribute, high) is not { } to)
            return [];
        if (from > to)
            context.Report(
                range,
                $"[{ScalarGrammar.Write(from)}, {ScalarGrammar.Write(to)}]",
                "the lower number first"
            );
        return [new AttributeTest.Limit(Comparison.AtLeast, from), new AttributeTest.Limit(Comparison.AtMost, to)];
    }

    private bool IsNumber(Testable attribute, Entry entry)
    {
        if (attribute.Definition.Shape == AttributeShape.Number)
            return true;
        context.Report(
            entry.Key,
            $"'{entry.Key.Text}' on '{attribute.Definition.Name}', which is not a number",
            "a word or a list of words"
        );
        return false;
    }

    private decimal? Number(Testable attribute, Node node)
    {
        if (node is not ScalarNode scalar || !ScalarGrammar.TryNumber(scalar.Text, out decimal number))
        {
            context.Report(node, node.Described, $"a number: '{attribute.Definition.Name}' is one");
            return null;
        }

        if (attribute.Between is { } range && (number < range.Low || number > range.High))
            context.Report(node, scalar.Text, ScalarGrammar.Between(range.Low, range.High));
        return number;
    }

    // Where variables are not allowed, the dollar sign is just a letter of a word that is not in any list.
    private bool IsVariable(ScalarNode node) => variables is not null && VariableScope.IsVariable(node);
}

using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>
/// Each test of words is written in one way: a set always by <c>has</c> and <c>lacks</c>, what holds one word by the
/// word itself and <c>not</c>, and one word never as a list. Whoever looks for a rule then finds it by one search.
/// </summary>
internal static class TestSpelling
{
    /// <summary>The word of a map for being, or holding, any of some words.</summary>
    public const string Has = "has";

    /// <summary>The word of a map for holding none of some words.</summary>
    public const string Lacks = "lacks";

    /// <summary>The word of a map for being none of some words.</summary>
    public const string Not = "not";

    private const string Words = "words";

    /// <summary>Reports words, or a variable that is bound already, written without <c>has</c> on a set.</summary>
    public static void CheckPlain(ReadContext context, AttributeDefinition attribute, Node value)
    {
        if (attribute.Shape == AttributeShape.WordSet && Written(value) is { } words)
            context.Report(value, Found(value, words), $"'{{ {Has}: {words} }}': '{attribute.Name}' is a set");
        else
            CheckList(context, value);
    }

    /// <summary>
    /// Reports <c>not</c> on a set and <c>has</c> or <c>lacks</c> on one word, and a list of one word.
    /// </summary>
    public static void CheckNamed(ReadContext context, AttributeDefinition attribute, Entry entry)
    {
        bool isSet = attribute.Shape == AttributeShape.WordSet;
        string words = Written(entry.Value) ?? Words;
        string? right = (entry.Key.Text, isSet) switch
        {
            (Not, true) => $"'{{ {Lacks}: {words} }}': '{attribute.Name}' is a set",
            (Has, false) => $"'{attribute.Name}: {words}': '{attribute.Name}' is not a set",
            (Lacks, false) => $"'{{ {Not}: {words} }}': '{attribute.Name}' is not a set",
            _ => null,
        };
        if (right is not null)
            context.Report(entry.Key, $"'{entry.Key.Text}' on '{attribute.Name}'", right);
        else
            CheckList(context, entry.Value);
    }

    private static void CheckList(ReadContext context, Node value)
    {
        if (value is SequenceNode { Items: [ScalarNode { IsNothing: false } only] })
            context.Report(value, "a list of one word", $"'{only.Text}' alone");
    }

    private static string Found(Node value, string words) => value is ScalarNode ? $"'{words}'" : words;

    // As it should be written; null for what is no word and no list of words, which is reported as such.
    private static string? Written(Node value) =>
        value switch
        {
            ScalarNode { IsNothing: false } scalar => scalar.Text,
            SequenceNode { Items: [ScalarNode only] } => only.Text,
            SequenceNode { Items.Count: > 1 } list when list.Items.All(item => item is ScalarNode) =>
                $"[{string.Join(", ", list.Items.OfType<ScalarNode>().Select(item => item.Text))}]",
            _ => null,
        };
}

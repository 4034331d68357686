using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>
/// The variables of one rule, in the order of reading. A variable that is bound and never used is a problem: almost
/// always a slip in its name, which would otherwise quietly match everything.
/// </summary>
internal sealed class VariableScope(ReadContext context)
{
    private readonly Dictionary<string, Binding> _bound = new(StringComparer.Ordinal);
    private readonly HashSet<string> _used = new(StringComparer.Ordinal);

    /// <summary>Whether a first use binds here; inside <c>none</c> and <c>any</c> it doesn't.</summary>
    public bool MayBind { get; set; } = true;

    /// <summary>The names bound so far.</summary>
    public IEnumerable<string> Names => _bound.Keys;

    /// <summary>Whether the scalar is a variable.</summary>
    public static bool IsVariable(ScalarNode node) => node.Text.StartsWith('$');

    /// <summary>Whether the variable was bound before.</summary>
    public bool IsBound(ScalarNode node) => _bound.ContainsKey(node.Text[1..]);

    /// <summary>A plain <c>$name</c>: binds at its first use, compares later.</summary>
    public AttributeTest? BindOrUse(ScalarNode node, AttributeDefinition attribute)
    {
        string name = node.Text[1..];
        if (_bound.ContainsKey(name) || !MayBind)
            return Use(node, attribute.Shape) is { } used
                ? new AttributeTest.Variable(used, Binds: false, Negated: false)
                : null;
        if (!ScalarGrammar.IsId(name))
        {
            context.Report(node, node.Described, "a variable: a dollar sign and lower-case words joined by hyphens");
            return null;
        }

        _bound.Add(name, new Binding(name, attribute.Shape, node));
        return new AttributeTest.Variable(name, Binds: true, Negated: false);
    }

    /// <summary>The name of a variable that must have been bound, and to something comparable; else null.</summary>
    public string? Use(ScalarNode node, AttributeShape shape)
    {
        string name = node.Text[1..];
        if (!_bound.TryGetValue(name, out Binding? binding))
        {
            context.Report(
                node,
                $"the variable {node.Text} before it is bound",
                "a variable bound by '$name' alone in an earlier pattern, outside 'none' and 'any'",
                Problems.NearestWord.Of(name, Names) is { } near ? "$" + near : null
            );
            return null;
        }

        _used.Add(name);
        if (Family(binding.Shape) == Family(shape))
            return name;
        context.Report(
            node,
            $"{node.Text}, which holds {Family(binding.Shape)}",
            $"a variable that holds {Family(shape)}"
        );
        return null;
    }

    /// <summary>Notes the use of a variable in a text; false when it is not bound.</summary>
    public bool Mention(string name)
    {
        _used.Add(name);
        return _bound.ContainsKey(name);
    }

    /// <summary>Reports the variables that were bound and never used.</summary>
    public void Finish()
    {
        foreach (Binding binding in _bound.Values.Where(binding => !_used.Contains(binding.Name)))
            context.Report(
                binding.Where,
                $"the variable ${binding.Name}, bound and never used",
                "a second use of it, or no variable"
            );
    }

    private sealed record Binding(string Name, AttributeShape Shape, ScalarNode Where);

    private static string Family(AttributeShape shape) =>
        shape switch
        {
            AttributeShape.Number => "a number",
            AttributeShape.Flag => "true or false",
            _ => "words",
        };
}

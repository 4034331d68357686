using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>
/// Checks the slots of a text: each must name a fact that the rule matches, or a variable that it binds.
/// </summary>
internal sealed class SlotCheck(ReadContext context, ImmutableArray<Pattern> when, VariableScope variables)
{
    /// <summary>Checks the text that stands in the node; other nodes have been reported already.</summary>
    public void Check(Node? node)
    {
        if (node is not ScalarNode scalar)
            return;
        string text = scalar.Text;
        int at = text.AsSpan().IndexOfAny('{', '}');
        while (at >= 0)
        {
            int end = text.AsSpan(at + 1).IndexOfAny('{', '}');
            if (text[at] == '}' || end < 0 || text[at + 1 + end] == '{')
            {
                context.Report(scalar, "a brace without its partner", "slots such as {treatment} or {$name}");
                return;
            }

            CheckSlot(scalar, text.Substring(at + 1, end));
            int next = text.AsSpan(at + end + 2).IndexOfAny('{', '}');
            at = next < 0 ? -1 : at + end + 2 + next;
        }
    }

    private void CheckSlot(ScalarNode where, string slot)
    {
        if (slot.StartsWith('$') ? variables.Mention(slot[1..]) : Facts().Contains(slot))
            return;
        string[] valid = [.. Facts(), .. variables.Names.Select(name => "$" + name)];
        string expected =
            valid.Length == 0
                ? "no slots: the rule matches no weed, crop, action or earlier application"
                : $"a slot of this rule: {string.Join(", ", valid.Select(name => $"{{{name}}}"))}";
        context.Report(where, $"the slot {{{slot}}}", expected, NearestWord.Of(slot, valid));
    }

    private IEnumerable<string> Facts() =>
        when.OfType<Pattern.Fact>()
            .Where(fact => fact.Kind != FactKind.Site)
            .Select(fact => PatternWords.Of(fact.Kind))
            .Distinct();
}

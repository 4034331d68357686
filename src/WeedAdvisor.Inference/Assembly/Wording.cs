using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>Puts rules into words: slots filled in, tests and patterns as a person would say them.</summary>
internal static class Wording
{
    /// <summary>
    /// Fills the slots of a rule's text: <c>{weed}</c>, <c>{crop}</c>, <c>{practice}</c>, <c>{treatment}</c>,
    /// <c>{action}</c>, <c>{past}</c>, <c>{closure}</c>, <c>{limit}</c> and <c>{escape}</c> with the names of the facts
    /// matched, <c>{$name}</c> with what a variable stands for. A number of days that is not known yet reads as such. A
    /// slot that nothing fills is left as it is; the reader refuses such rules.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="match">What the rule matched.</param>
    /// <param name="bindings">What its variables stand for.</param>
    /// <param name="say">A word in plain words.</param>
    /// <param name="action">The name of the action that the text speaks of; null for none.</param>
    public static Said Fill(
        string text,
        IReadOnlyList<Matched> match,
        Bindings bindings,
        Func<string, string> say,
        string? action
    )
    {
        if (!text.Contains('{', StringComparison.Ordinal))
            return text;
        var parts = ImmutableArray.CreateBuilder<SaidPart>();
        int from = 0;
        while (from < text.Length)
        {
            int start = text.IndexOf('{', from),
                end = start < 0 ? -1 : text.IndexOf('}', start);
            if (end < 0)
                break;
            if (start > from)
                parts.Add(new SaidPart(text[from..start], false));
            bool isCount = text.AsSpan(end + 1).StartsWith(" days", StringComparison.Ordinal);
            string value = ValueOf(text[(start + 1)..end], match, bindings, say, isCount) ?? text[start..(end + 1)];
            parts.Add(new SaidPart(value, value.Equals(action, StringComparison.OrdinalIgnoreCase)));
            from = end + 1;
        }

        if (from < text.Length)
            parts.Add(new SaidPart(text[from..], false));
        return new Said(parts.ToImmutable());
    }

    private static string? ValueOf(
        string slot,
        IReadOnlyList<Matched> match,
        Bindings bindings,
        Func<string, string> say,
        bool isCount
    )
    {
        if (slot.StartsWith('$'))
        {
            return bindings[slot[1..]] switch
            {
                Reading.Words words => string.Join(" or ", words.Value.Select(say)),
                Reading.Nothing => null,
                Reading.Open when isCount => "some",
                Reading.Open open => $"(not answered yet: {string.Join(", ", open.Needs.Select(need => need.Id))})",
                Reading other => other.Text,
            };
        }

        IEnumerable<Fact> facts = match.OfType<Matched.One>().Select(one => one.Fact);
        return slot switch
        {
            "weed" => facts.OfType<WeedFact>().FirstOrDefault()?.Name,
            "crop" => facts.OfType<CropFact>().FirstOrDefault()?.Name,
            "practice" => facts.OfType<PracticeFact>().FirstOrDefault()?.Name,
            "treatment" => facts.OfType<TreatmentFact>().FirstOrDefault()?.Name,
            "action" => facts.OfType<ActionFact>().FirstOrDefault()?.Name,
            "past" => facts.OfType<PastFact>().FirstOrDefault()?.Name,
            "closure" => facts.OfType<ClosureFact>().FirstOrDefault()?.Name,
            "limit" => facts.OfType<LimitFact>().FirstOrDefault()?.Name,
            "escape" => facts.OfType<EscapeFact>().FirstOrDefault()?.Name,
            _ => null,
        };
    }

    /// <summary>A test in words, such as <c>one of film-on, glass-or-rigid</c> or <c>at least 3</c>.</summary>
    public static string Of(AttributeTest test) =>
        test switch
        {
            AttributeTest.Word { Words.Count: 1 } word => (word.Negated ? "not " : "") + word.Words.First(),
            AttributeTest.Word word => (word.Negated ? "none of " : "one of ") + word.Words,
            AttributeTest.Limit limit => $"{Of(limit.Comparison)} {limit.Value.ToString(CultureInfo.InvariantCulture)}",
            AttributeTest.Variable { Binds: true } variable => $"anything, called ${variable.Name}",
            AttributeTest.Variable variable => (variable.Negated ? "nothing of $" : "same as $") + variable.Name,
            AttributeTest.VariableLimit limit => $"{Of(limit.Comparison)} ${limit.Name}",
            AttributeTest.Every every => string.Join(" and ", every.Tests.Select(Of)),
            _ => test.GetType().Name,
        };

    /// <summary>
    /// What a pattern asks for, such as <c>weed</c>, <c>no weed</c> or <c>finding surface-stays-wet</c>.
    /// </summary>
    public static string Of(Pattern pattern) =>
        pattern switch
        {
            Pattern.Fact fact => Of(fact.Kind),
            Pattern.HasFinding finding => $"finding {finding.Id}",
            Pattern.None none => $"no {Of(none.Inner)}",
            Pattern.Any any => $"any {Of(any.Inner)}",
            _ => pattern.GetType().Name,
        };

    private static string Of(FactKind kind) =>
        kind switch
        {
            FactKind.Site => "site",
            FactKind.Weed => "weed",
            FactKind.Crop => "crop",
            FactKind.Practice => "practice",
            FactKind.Treatment => "treatment",
            FactKind.Action => "action",
            FactKind.Past => "earlier application",
            FactKind.Closure => "entry interval",
            FactKind.Limit => "limit of an active",
            FactKind.Escape => "weed that came through",
            _ => kind.ToString(),
        };

    private static string Of(Comparison comparison) =>
        comparison switch
        {
            Comparison.LessThan => "less than",
            Comparison.AtMost => "at most",
            Comparison.AtLeast => "at least",
            Comparison.MoreThan => "more than",
            _ => comparison.ToString(),
        };
}

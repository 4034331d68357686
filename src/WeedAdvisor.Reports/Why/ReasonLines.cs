using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>
/// Reasons as an adviser says them: each rule once, the strongest match first, then what it rests on here.
/// </summary>
/// <param name="names">What things are called.</param>
/// <param name="sentences">How conditions read.</param>
internal sealed class ReasonLines(Names names, ConditionSentences sentences)
{
    private const int Inner = 2;

    /// <summary>A line for each rule, in the order of the reasons.</summary>
    public ItemList Of(IEnumerable<Reason> reasons) =>
        new([
            .. reasons
                .GroupBy(reason => reason.Judgement, StringComparer.Ordinal)
                .Select(rule => ItemOf([.. rule.OrderByDescending(reason => reason.Certainty)])),
        ]);

    /// <summary>What a reason says, once the name of its action was said in full.</summary>
    public static string TextOf(Names names, Reason reason) =>
        reason.Action is { } action ? names.Spoken(action, reason.Said) : Names.UnderItsName(reason.Said);

    /// <summary>What of the area a reason rests on, as sentences; of a reason that is not sure only what is.</summary>
    public ImmutableArray<string> Facts(Reason reason) =>
        [
            .. reason
                .Matched.Where(match => match.Asked is null || !match.Asked.IsOnAction())
                .SelectMany(sentences.Facts)
                .Distinct(StringComparer.Ordinal),
        ];

    private Item ItemOf(ImmutableArray<Reason> rule)
    {
        Reason best = rule[0];
        string text = TextOf(names, best);
        // A name that the reason says is no more to be told.
        string[] facts = [.. Facts(best).Where(fact => !text.Contains(fact, StringComparison.OrdinalIgnoreCase))];
        return new Item(Item.Dash, text + Weight(best))
        {
            Below =
            [
                .. facts.Length == 0
                    ? []
                    : (Block[])[new Keyed("here: ", Figures.Sentence(string.Join("; ", facts)) + ".").At(Inner)],
                .. Others(rule) is { Length: > 0 } others
                    ? [new Keyed("the same of: ", others + ".").At(Inner)]
                    : (Block[])[],
                .. best.Needs.Select(need => new Keyed("ask: ", names.Need(need)).At(Inner)),
                new Keyed("source: ", best.Sources.IsEmpty ? "none named" : string.Join(", ", best.Sources)).At(Inner),
            ],
        };
    }

    // How much an argument weighs, in a word.
    private static string Weight(Reason reason) =>
        reason.Then is Consequence.Argument ? $" ({Figures.CaseWord(reason.Certainty)} reason)" : "";

    // The weeds, crops and uses of the other matches of the rule.
    private static string Others(ImmutableArray<Reason> rule) =>
        Listing.And([
            .. rule.Skip(1)
                .SelectMany(Subjects)
                .Except(Subjects(rule[0]), StringComparer.Ordinal)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ]);

    private static IEnumerable<string> Subjects(Reason reason) =>
        reason
            .Matched.Where(match =>
                match.Asked is Pattern.Fact { Kind: not FactKind.Site } && !match.Asked.IsOnAction()
            )
            .Select(match => match.Fact);
}

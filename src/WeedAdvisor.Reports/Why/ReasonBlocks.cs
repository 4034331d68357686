using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>
/// Reasons taken apart: the rule, every condition with what it asked and what it found, the findings behind it, its
/// sources.
/// </summary>
/// <param name="names">What things are called.</param>
/// <param name="sentences">How conditions read.</param>
public sealed class ReasonBlocks(Names names, ConditionSentences sentences)
{
    private const int Inner = 2,
        Step = 3;

    /// <summary>The reasons and everything below them.</summary>
    public ItemList Of(ImmutableArray<Reason> reasons) => new([.. reasons.Select(ItemOf)]);

    /// <summary>What a reason concludes, in a word or two.</summary>
    public static string Conclusion(Reason reason) =>
        reason.Then switch
        {
            Consequence.MakesFinding finding => $"finding {finding.Id} {Figures.Strength(reason)}",
            Consequence.Argument { IsDoubt: true } => $"doubt {Figures.Strength(reason)}",
            Consequence.Argument => $"support {Figures.Strength(reason)}",
            Consequence.Bar { Severity: Severity.Prohibited } => "prohibited",
            Consequence.Bar => "unsuitable",
            _ => "caution",
        };

    private Item ItemOf(Reason reason)
    {
        string standing = reason.IsCertain ? "" : ", not sure yet";
        return new Item(Item.Dash, Names.UnderItsName(reason.Caution ?? reason.Said))
        {
            Below =
            [
                .. reason.Caution is null
                    ? []
                    : (Block[])[Set(new Keyed("because: ", Names.UnderItsName(reason.Said)))],
                Set(new Paragraph($"{Conclusion(reason)} by rule {reason.Judgement} ({reason.Topic}){standing}")),
                .. reason.Needs.Select(need => Set(new Keyed("waits for: ", names.Need(need)))),
                Set(new ItemList([.. reason.Matched.SelectMany(ItemsOf)])),
                Set(new Keyed("sources: ", reason.Sources.IsEmpty ? "none named" : string.Join(", ", reason.Sources))),
            ],
        };
    }

    // What stands behind a condition stands below its last sentence.
    private IEnumerable<Item> ItemsOf(MatchedPattern match)
    {
        ImmutableArray<ConditionSentence> all = sentences.Of(match);
        return all.Select(
            (sentence, at) =>
                new Item(TruthMark.Of(sentence.Truth), sentence.Full)
                {
                    Below = at < all.Length - 1 || match.Behind.IsEmpty ? [] : [Of(match.Behind).At(Step)],
                }
        );
    }

    private static Block Set(Block block) => block.At(Inner);
}

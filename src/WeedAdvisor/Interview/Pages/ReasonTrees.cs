using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Reports.Documents;
using static WeedAdvisor.Interview.Pages.PageLines;

namespace WeedAdvisor.Interview.Pages;

/// <summary>Reasons with the reasons behind them, each a step further in.</summary>
/// <param name="words">What things are called.</param>
/// <param name="full">Whether to show every condition with what was read.</param>
internal sealed class ReasonTrees(AdviceWords words, bool full)
{
    private const int Step = 4;

    public IEnumerable<Block> Of(IEnumerable<Reason> reasons) => reasons.SelectMany(reason => Tree(reason, 0));

    private IEnumerable<Block> Tree(Reason reason, int indent)
    {
        string strength = reason.Then switch
        {
            Consequence.Argument or Consequence.MakesFinding => $", {AdviceWords.Share(reason.Certainty)}",
            _ => "",
        };
        return
        [
            Marked(Mark(reason), reason.Text).At(indent),
            In(indent + Step, $"rule: {AdviceWords.Sentence(reason.Judgement)}{strength}", Tone.Muted),
            .. reason.Needs.Select(need => In(indent + Step, $"waits for: {words.Need(need)}", Tone.Muted)),
            .. reason.Matched.SelectMany(matched =>
                (IEnumerable<Block>)
                    [
                        .. full ? Matched(matched, indent + Step) : [],
                        .. matched.Behind.SelectMany(behind => Tree(behind, indent + Step)),
                    ]
            ),
        ];
    }

    private static IEnumerable<Block> Matched(MatchedPattern matched, int indent) =>
        [
            Marked("- ", $"{matched.Pattern}: {matched.Fact}{May(matched.Truth)}", Tone.Muted).At(indent),
            .. matched.Tests.Select(test =>
                Marked(". ", $"{test.Attribute} {test.Expected}; read: {test.Read}{May(test.Truth)}", Tone.Muted)
                    .At(indent + 2)
            ),
        ];

    private static string Mark(Reason reason) =>
        reason.Then switch
        {
            Consequence.Argument when !reason.IsCertain => "? ",
            Consequence.Argument { IsDoubt: true } => "- ",
            Consequence.Argument => "+ ",
            Consequence.Bar => reason.IsCertain ? "x " : "? ",
            _ => "* ",
        };

    private static string May(Truth truth) => truth == Truth.NotKnown ? " (may hold)" : "";
}

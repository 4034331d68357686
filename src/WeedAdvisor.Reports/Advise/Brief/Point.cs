using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.Brief;

/// <summary>Something said with an action.</summary>
/// <param name="Mark">What it is, such as <c>mind: </c>.</param>
/// <param name="Own">In words for this action.</param>
/// <param name="Shared">In words that fit other actions as well.</param>
internal sealed record Point(string Mark, string Own, string Shared)
{
    public const string For = "for: ";
    public const string Mind = "mind: ";
    public const string Unless = "clear unless: ";

    private const int MostReasons = 2;

    /// <summary>Whether it is something to mind, and not a reason.</summary>
    public bool IsCaution { get; private init; }

    /// <summary>The point below its action.</summary>
    public Keyed Block() =>
        new(Mark, Line.FromString(Own) with { Tone = IsCaution || Mark == Unless ? Tone.Warning : Tone.Normal });

    /// <summary>
    /// What there is to say of an action: the doubt that could still outweigh it; the strongest rules for and against
    /// it; then what to mind, what holds in this case before what its record always says.
    /// </summary>
    public static ImmutableArray<Point> Of(BriefStyle style, ClearAction action) =>
        [
            .. action.Status == ActionStatus.Clear ? [] : (Point[])[OfDoubt(style, action)],
            .. Strongest(style, action, For, isDoubt: false),
            .. Strongest(style, action, "against: ", isDoubt: true),
            .. action
                .Cautions.OrderBy(Weight)
                .Select(caution =>
                    OfText(style, action.Action, caution.IsCertain ? Mind : "mind, if it applies: ", caution.Said) with
                    {
                        IsCaution = true,
                    }
                ),
        ];

    private static IEnumerable<Point> Strongest(BriefStyle style, ClearAction action, string mark, bool isDoubt) =>
        action
            .Because.Where(reason => reason.Then is Consequence.Argument argument && argument.IsDoubt == isDoubt)
            .DistinctBy(reason => reason.Judgement)
            .Take(MostReasons)
            .Select(reason => OfText(style, action.Action, mark, reason.Said, style.Keys(reason.Sources)));

    private static Point OfDoubt(BriefStyle style, ClearAction action)
    {
        string ask = $"({StatusWords.AskOf(action, style.Names.NeedInShort)})";
        return StatusWords.DoubtOf(action) is { } doubt
            ? OfText(style, action.Action, Unless, doubt, " " + ask)
            : new Point(Unless, Figures.Sentence(ask), Figures.Sentence(ask));
    }

    private static Point OfText(BriefStyle style, string action, string mark, Said said, string behind = "") =>
        new(mark, Names.UnderItsName(said) + behind, style.Names.OfAny(action, said) + behind);

    private static int Weight(ActionCaution caution) =>
        caution switch
        {
            { Judgement: not null, IsCertain: true } => 0,
            { Judgement: null } => 1,
            _ => 2,
        };
}

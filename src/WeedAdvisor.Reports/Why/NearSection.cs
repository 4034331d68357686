using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Nearest;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>Rules that would speak for an action, the nearest first, condition by condition.</summary>
/// <param name="rules">The rules as they stand in the area.</param>
/// <param name="sentences">How conditions read.</param>
internal sealed class NearSection(NearestRules rules, ConditionSentences sentences)
{
    private static readonly string[] s_kinds = ["id", "kind", "is-a", "treatment", "rated-as"];

    private const int Most = 3,
        MostInFull = 10;

    /// <summary>The section of an action which nothing bars and nothing supports; null of any other.</summary>
    public static NearSection? In(
        KnowledgeBase knowledge,
        ConditionSentences sentences,
        AreaCase looked,
        AreaAdvice area,
        string action
    ) => IsAsked(area, action) ? new NearSection(NearestRules.In(knowledge, looked), sentences) : null;

    /// <summary>The rules that would speak for the action, the nearest first.</summary>
    public ImmutableArray<NearRule> Rules(string action) => rules.Supporting(action);

    /// <summary>Whether nothing bars an action and nothing, also nothing possible, speaks for it.</summary>
    public static bool IsAsked(AreaAdvice area, string action) =>
        area.StatusOf(action) == ActionStatus.NotAdvised
        && !area.AllConclusions()
            .Any(reason => reason.Action == action && reason.Then is Consequence.Argument { IsDoubt: false });

    /// <summary>An area as it was looked at.</summary>
    public static AreaCase LookedAt(Visit visit, AreaAdvice area) =>
        new(visit.Date, area.Area, [.. visit.Areas.Where(other => other.Id != area.Area.Id), .. visit.Elsewhere]);

    /// <summary>The section.</summary>
    /// <param name="action">The action's id.</param>
    /// <param name="full">Whether to tell more than the nearest few.</param>
    public IEnumerable<Block> Of(string action, bool full)
    {
        ImmutableArray<NearRule> near = rules.Supporting(action);
        return
        [
            Heading.Section("What would speak for it, the nearest first"),
            near.IsEmpty
                ? new Paragraph("No rule could: none speaks for it wherever it is.").At(2)
                : new ItemList([.. near.Take(full ? MostInFull : Most).Select(ItemOf)]).At(2),
            .. near.Length > Most && !full
                ? [new Paragraph($"{near.Length - Most} more rules are further off.").At(2)]
                : (Block[])[],
        ];
    }

    /// <summary>
    /// The first thing that the nearest rule asks for and that is not so here, as a sentence; null where no rule could
    /// speak for it.
    /// </summary>
    /// <param name="action">The action's id.</param>
    public string? Spoken(string action) =>
        rules.Supporting(action) is [{ Missed: var least }, ..] near
            ? near.TakeWhile(rule => rule.Missed == least)
                .Select(rule => rule.Reason.Matched.FirstOrDefault(match => match.Truth == Truth.No))
                .OfType<MatchedPattern>()
                // Of rules equally near the one that asks for the least, and for no weed by name, is said soonest.
                .OrderBy(match => match.Tests.Any(test => test.Attribute == "id"))
                .ThenBy(match => match.Tests.Length)
                .Select(SpokenOf)
                .FirstOrDefault()
            : null;

    private string? SpokenOf(MatchedPattern missed) =>
        missed.Asked is Pattern.HasFinding finding
            ? $"It would take this, and it is not so here: {sentences.TextOf(finding.Id)}."
        : sentences.For(missed) is { } wanted ? $"It is for {wanted}, and none such is here."
        : sentences.Of(missed).FirstOrDefault(one => one.Truth == Truth.No) is { } sentence
            ? $"It would take this: {sentence.Text}"
                + (sentence.Here is null ? "." : $". Here: {sentence.Here.TrimEnd('.')}.")
        : null;

    // A rule that does not hold has no reason to tell, only what it would take: it says itself by its id.
    private Item ItemOf(NearRule near) =>
        new(Item.Dash, $"{Figures.Sentence(Names.Field(near.Reason.Judgement))}: {Misses(near)}.")
        {
            Below = [Conditions(near.Reason, isInner: false).At(2)],
        };

    private ItemList Conditions(Reason reason, bool isInner) =>
        new([
            .. reason
                .Matched.Where(match => match.Asked is null || !match.Asked.IsOnAction() || match.Truth != Truth.Yes)
                .SelectMany(match =>
                    match.Truth == Truth.No && sentences.Wanted(match) is { } wanted
                        ? [NotThere(match, wanted)]
                        : ItemsOf(match, isInner)
                ),
        ]);

    private IEnumerable<Item> ItemsOf(MatchedPattern match, bool isInner) =>
        sentences
            .Of(match)
            .Select(sentence => new Item(TruthMark.Of(sentence.Truth), sentence.Full)
            {
                Below = isInner ? [] : Behind(match),
            });

    // What comes nearest to it, test by test. What is of another kind altogether comes nowhere near.
    private Item NotThere(MatchedPattern match, string wanted) =>
        match.Tests.Any(test => test.Truth == Truth.No && s_kinds.Contains(test.Attribute))
            ? new Item(TruthMark.Of(match.Truth), Figures.Sentence($"{wanted}. None of that kind is here."))
            : Nearest(match, wanted);

    private Item Nearest(MatchedPattern match, string wanted) =>
        new(TruthMark.Of(match.Truth), Figures.Sentence($"{wanted}. The nearest is {match.Fact}:"))
        {
            Below =
            [
                new ItemList([
                    .. sentences.Of(match).Select(sentence => new Item(TruthMark.Of(sentence.Truth), sentence.Full)),
                ]).At(3),
            ],
        };

    // What would make a finding that is not made.
    private ImmutableArray<Block> Behind(MatchedPattern match) =>
        match is { Truth: Truth.No, Asked: Pattern.HasFinding finding } && rules.Making(finding.Id) is { } maker
            ?
            [
                new Paragraph($"It would be, by rule {maker.Reason.Judgement}:").At(3),
                Conditions(maker.Reason, true).At(3),
            ]
            : [];

    private static string Misses(NearRule near)
    {
        string open = near.Open == 0 ? "" : $", {near.Open} not known";
        return $"{Figures.Count(near.Missed, "condition is", "conditions are")} not met{open}";
    }
}

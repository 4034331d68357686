using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Unlock;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;
using WeedAdvisor.Reports.Why;

namespace WeedAdvisor.Reports.Unlock;

/// <summary>Sets of answers in words. Sets that differ only in the answer to one question are told together.</summary>
/// <param name="sentences">How answers read.</param>
internal sealed class AnswerSetLines(ConditionSentences sentences)
{
    private const int Most = 6;

    /// <summary>The sets as items; of many the first few and how many more there are.</summary>
    public IEnumerable<Block> Of(ImmutableArray<AnswerSet> sets)
    {
        Item[] items =
        [
            .. sets.GroupBy(set => string.Join(';', set.Changes.Select(change => change.Question.Id)))
                .SelectMany(alike => Together([.. alike])),
        ];
        yield return new ItemList([.. items.Take(Most)]).At(2);
        if (items.Length > Most)
            yield return new Paragraph($"and {Figures.Count(items.Length - Most, "more way", "more ways")}.").At(4);
    }

    /// <summary>An answer with what is told now.</summary>
    public string Of(AnswerChange change) => $"{sentences.Answered(change.Question, change.Then)} {NowOf(change)}";

    private string NowOf(AnswerChange change) =>
        change.IsUntold ? "(not told yet)" : $"(now: {sentences.Told(change.Question, change.Now!)})";

    private IEnumerable<Item> Together(AnswerSet[] alike)
    {
        // All but the last question with the same answers: the answers to the last are told in a row.
        foreach (
            IGrouping<string, AnswerSet> same in alike.GroupBy(set =>
                string.Join(';', set.Changes.SkipLast(1).Select(change => change.Then.ToString())) + set.Status
            )
        )
        {
            AnswerSet first = same.First();
            AnswerChange last = first.Changes[^1];
            string answers = sentences.AnsweredByOneOf(last.Question, [.. same.Select(set => set.Changes[^1].Then)]);
            string row = string.Join("; and ", first.Changes.SkipLast(1).Select(Of).Append($"{answers} {NowOf(last)}"));
            string status = first.Status == ActionStatus.ClearUnless ? "; clear then, unless a doubt holds" : "";
            yield return new Item(Item.Dash, Figures.Sentence($"{row}{status}."));
        }
    }
}

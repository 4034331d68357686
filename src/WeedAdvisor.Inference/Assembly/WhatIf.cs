using System.Collections.Immutable;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// What an answer that is missing would make of conclusions that are open, without asking the rules again. What holds
/// or fails for sure stays so, whatever is answered, so only the open ones are looked at anew. Where a question has
/// answers to choose from each is tried; of others (dates, numbers, lists) only that what waits for them holds, or that
/// it fails.
/// </summary>
internal abstract class WhatIf
{
    private WhatIf() { }

    /// <summary>The ways in which a question can be answered.</summary>
    public static IEnumerable<WhatIf> AnswersTo(Question question, AreaCase looked, KnowledgeBase knowledge) =>
        question.Kind is QuestionKind.OneOf or QuestionKind.AnyOf
            ? question.Choices.Select(choice => new Chosen(question.Id, choice.Id, looked, knowledge))
            : [new AllHold(question.Id), new AllFail()];

    /// <summary>What becomes of an open conclusion that waits for the question; null when it fails.</summary>
    public abstract Conclusion? Of(Conclusion open);

    private static Conclusion AsHeld(Conclusion open, string question)
    {
        ImmutableArray<Need> left = [.. open.Needs.Where(need => need != Need.Question(question))];
        return Conclusion.Of(
            open.Judgement,
            open.Match,
            new MatchTruth(
                left.IsEmpty ? Truth.Yes : Truth.NotKnown,
                left,
                open.Premise,
                open.MostPremise,
                open.Bindings
            )
        );
    }

    private sealed class AllHold(string question) : WhatIf
    {
        public override Conclusion? Of(Conclusion open) => AsHeld(open, question);
    }

    private sealed class AllFail : WhatIf
    {
        public override Conclusion? Of(Conclusion open) => null;
    }

    private sealed class Chosen : WhatIf
    {
        private readonly Need _question;
        private readonly Lazy<SiteFact> _site;

        public Chosen(string question, string answer, AreaCase looked, KnowledgeBase knowledge)
        {
            _question = Need.Question(question);
            _site = new Lazy<SiteFact>(() => AnsweredSite.Of(looked, question, answer, knowledge));
        }

        public override Conclusion? Of(Conclusion open)
        {
            if (open.IsCertain || !open.Needs.Contains(_question))
                return open;
            ImmutableArray<Matched> match = [.. open.Match.Select(Anew)];
            var truth = MatchTruth.Of(open.Judgement, match);
            return truth.Truth == Truth.No ? null : Conclusion.Of(open.Judgement, match, truth);
        }

        private Matched Anew(Matched matched) =>
            matched switch
            {
                Matched.One { Fact: SiteFact } => new Matched.One(_site.Value),
                Matched.Several several => new Matched.Several([
                    .. several.Facts.Select(fact => fact is SiteFact ? _site.Value : fact),
                ]),
                Matched.Evidence evidence => new Matched.Evidence([
                    .. evidence.Conclusions.Select(Of).OfType<FindingConclusion>(),
                ]),
                _ => matched,
            };
    }
}

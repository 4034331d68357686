using System.Collections.Immutable;
using WeedAdvisor.Inference.Catalogue;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Conclusions;

/// <summary>
/// Everything that the judgements say of an area, kept by match: each speaks for a set of actions, and a conclusion
/// about one of them is made when somebody wants to read it. Immutable.
/// </summary>
/// <param name="matches">What holds or may hold, in ordinal order.</param>
/// <param name="index">The actions spoken of.</param>
internal sealed class AreaConclusions(ImmutableArray<CaseMatch> matches, ActionIndex index)
{
    /// <summary>
    /// What an advice reads: the bars of every action, and all else but the arguments and cautions on actions that are
    /// barred for good, which change nothing. In ordinal order of judgement and match.
    /// </summary>
    public ImmutableArray<Conclusion> ForAdvice()
    {
        ActionSet never = BarredForGood();
        return Made(one =>
            one.Judgement.Then is Consequence.Bar ? one.Extent.Perhaps : one.Extent.Perhaps.Without(never)
        );
    }

    /// <summary>Every conclusion, in ordinal order of judgement and match.</summary>
    public ImmutableArray<Conclusion> All() => Made(one => one.Extent.Perhaps);

    private ImmutableArray<Conclusion> Made(Func<CaseMatch, ActionSet> about)
    {
        ImmutableArray<Conclusion>.Builder made = ImmutableArray.CreateBuilder<Conclusion>();
        foreach (CaseMatch one in matches)
        {
            if (one.Condition is null)
            {
                made.Add(one.OnArea());
                continue;
            }

            foreach (int place in about(one))
                made.Add(one.On(index.Matched[place], place));
        }

        return made.DrainToImmutable();
    }

    private ActionSet BarredForGood()
    {
        ActionSet never = ActionSet.None(index.Actions.Length);
        foreach (CaseMatch one in matches)
        {
            if (one.Judgement.Then is Consequence.Bar { Lift: Lift.Never } && one.Sure is { } sure)
                never = never.Or(sure);
        }

        return never;
    }
}

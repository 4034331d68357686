using System.Collections.Immutable;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>Everything that was concluded about one action, sorted by what it means for it.</summary>
internal sealed class ActionCase
{
    /// <summary>Sorts the conclusions about an action.</summary>
    public ActionCase(string action, IEnumerable<Conclusion> conclusions)
    {
        Action = action;
        foreach (Conclusion conclusion in conclusions)
        {
            switch (conclusion.Judgement.Then)
            {
                case Consequence.Argument { IsDoubt: false }:
                    Supports.Add(conclusion);
                    break;
                case Consequence.Argument:
                    Doubts.Add(conclusion);
                    break;
                case Consequence.Bar:
                    Bars.Add(conclusion);
                    break;
                case Consequence.Caution:
                    Cautions.Add(conclusion);
                    break;
                default:
                    break;
            }
        }
    }

    /// <summary>The action's id.</summary>
    public string Action { get; }

    /// <summary>Arguments for it.</summary>
    public List<Conclusion> Supports { get; } = [];

    /// <summary>Arguments against it.</summary>
    public List<Conclusion> Doubts { get; } = [];

    /// <summary>Bars.</summary>
    public List<Conclusion> Bars { get; } = [];

    /// <summary>Cautions.</summary>
    public List<Conclusion> Cautions { get; } = [];

    /// <summary>A bar holds.</summary>
    public bool IsBarred => Bars.Exists(bar => bar.IsCertain);

    /// <summary>
    /// No bar holds or could still hold, something speaks for it for sure, and what speaks for it outweighs what
    /// speaks against it.
    /// </summary>
    public bool IsClear => Bars.Count == 0 && Supports.Exists(support => support.IsCertain) && Certainty > 0;

    /// <summary>Something speaks for it, no bar holds, but an answer is missing.</summary>
    public bool IsWaiting =>
        !IsBarred && Supports.Count > 0 && (Bars.Count > 0 || !Supports.Exists(support => support.IsCertain));

    /// <summary>Combined certainty of the certain arguments, in [-1, 1].</summary>
    public double Certainty => Certainties.CertaintyFactor.Combine(
        Evidences.CertaintyOf(Supports.Where(one => one.IsCertain)),
        -Evidences.CertaintyOf(Doubts.Where(one => one.IsCertain)));

    /// <summary>What a waiting action waits for: its possible bars, and its supports when none is certain.</summary>
    public IEnumerable<Conclusion> Waits =>
        Supports.Exists(support => support.IsCertain) ? Bars : Bars.Concat(Supports);

    /// <summary>The needs of what it waits for, in order.</summary>
    public ImmutableArray<Need> Needs => [.. Waits.SelectMany(one => one.Needs).Distinct().Order()];
}

using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Certainties;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>Everything that was concluded about one action, sorted by what it means for it.</summary>
internal sealed class ActionCase
{
    // Arguments that cancel out leave a trace in the last bits.
    private const double Nothing = 1e-9;

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

        Certainty = CertaintyFactor.Combine(
            Evidences.CertaintyOf(Supports.Where(IsSure)),
            -Evidences.CertaintyOf(Doubts.Where(IsSure))
        );
        MostCertainty = CertaintyFactor.Combine(
            Evidences.MostCertaintyOf(Supports),
            -Evidences.CertaintyOf(Doubts.Where(IsSure))
        );
        Status = Bars.Exists(IsSure) ? StatusOfBars() : StatusOf(Bars);
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

    /// <summary>All that its status hangs on: arguments and bars.</summary>
    public IEnumerable<Conclusion> All => Supports.Concat(Doubts).Concat(Bars);

    /// <summary>How it stands.</summary>
    public ActionStatus Status { get; }

    /// <summary>
    /// How it will stand once every bar that ends has ended: only bars that may still come up count. Not advised for
    /// what is never to be used.
    /// </summary>
    public ActionStatus After =>
        Status == ActionStatus.Never ? ActionStatus.NotAdvised : StatusOf([.. Bars.Where(bar => !bar.IsCertain)]);

    /// <summary>It certainly comes second, after the cleaning.</summary>
    public bool ComesAfterCleaning =>
        Doubts.Exists(doubt =>
            doubt is { IsCertain: true, Judgement.Then: Consequence.Argument { AfterCleaning: true } }
        );

    /// <summary>The job that it shares here with others, as a certain doubt says; null for none.</summary>
    public string? JobHere =>
        Doubts
            .Where(IsSure)
            .Select(doubt => ((Consequence.Argument)doubt.Judgement.Then).OneOf)
            .OfType<string>()
            .Order(StringComparer.Ordinal)
            .FirstOrDefault();

    /// <summary>A bar holds.</summary>
    public bool IsBarred => Status is ActionStatus.Never or ActionStatus.NotYet or ActionStatus.NotThisWay;

    /// <summary>The bars that hold.</summary>
    public IEnumerable<Conclusion> CertainBars => Bars.Where(IsSure);

    /// <summary>Combined certainty of the certain arguments, in [-1, 1].</summary>
    public double Certainty { get; }

    /// <summary>What is left of it if every doubt that could hold does, as strong as it can become.</summary>
    public double LeastCertainty =>
        CertaintyFactor.Combine(Evidences.CertaintyOf(Supports.Where(IsSure)), -Evidences.MostCertaintyOf(Doubts));

    /// <summary>What it can become at most if every argument for it holds: what is against it for sure stays.</summary>
    public double MostCertainty { get; }

    /// <summary>What an answer could still bring up against it although it is clear: doubts, and ifs.</summary>
    public IEnumerable<Conclusion> OpenDoubts =>
        Doubts.Where(doubt => !doubt.IsCertain || doubt.MostCertainty > doubt.Certainty).Concat(Bars.Where(IsIf));

    /// <summary>What a waiting action waits for: its possible bars, and its supports when none is certain.</summary>
    public IEnumerable<Conclusion> Waits
    {
        get
        {
            IEnumerable<Conclusion> bars = Bars.Where(bar => !IsIf(bar));
            return Supports.Exists(IsSure) ? bars : bars.Concat(Supports);
        }
    }

    /// <summary>The needs of what it waits for, in order.</summary>
    public ImmutableArray<Need> Needs => [.. Waits.SelectMany(one => one.Needs).Distinct().Order()];

    private static bool IsSure(Conclusion conclusion) => conclusion.IsCertain;

    // What does no harm does not wait because it may turn out not to suit: it is told, with its if. A prohibition, such
    // as that nobody may go in, is waited for whatever the work is; so is what the place, its roof and its stock bear.
    private static bool IsIf(Conclusion bar) =>
        !bar.IsCertain
        && bar.Action is PracticeFact
        && bar.Judgement.Then is Consequence.Bar { Severity: Severity.Unsuitable }
        && !bar.Needs.Any(need => Footing.IsGround(need.Id));

    private ActionStatus StatusOf(List<Conclusion> possibleBars) =>
        // No answer could bring it forward: to let it wait would be a promise that nobody can keep.
        MostCertainty <= Nothing
            ? ActionStatus.NotAdvised
        : possibleBars.Exists(bar => !IsIf(bar)) && Supports.Count > 0 ? ActionStatus.Waits
        : !Supports.Exists(IsSure)
            ? Supports.Count > 0 ? ActionStatus.Waits
                : ActionStatus.NotAdvised
        : Certainty <= Nothing ? ActionStatus.NotAdvised
        : LeastCertainty <= Nothing || possibleBars.Exists(IsIf) ? ActionStatus.ClearUnless
        : ActionStatus.Clear;

    // One bar that never ends is enough; another way helps only where nothing but the way is wrong.
    private ActionStatus StatusOfBars()
    {
        Lift[] lifts = [.. CertainBars.Select(Lifts.Of)];
        return lifts.Any(lift => lift is Lift.Never) ? ActionStatus.Never
            : lifts.Any(lift => lift is Lift.OtherWay) ? ActionStatus.NotThisWay
            : ActionStatus.NotYet;
    }
}

using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>What the parts before and behind the areas need of them.</summary>
internal sealed record SeenInAreas
{
    /// <summary>Whether a chemical is named anywhere.</summary>
    public bool NamesTreatment { get; init; }

    /// <summary>Whether a chemical is clear somewhere, or may become so by an answer.</summary>
    public bool AdvisesTreatment { get; init; }

    /// <summary>Whether costs are told that rest on invented figures.</summary>
    public bool HasInventedCosts { get; init; }

    /// <summary>Whether a chemical is clear.</summary>
    public bool HasClearTreatment { get; init; }

    /// <summary>Whether the visit names chemicals that somebody has or asks about.</summary>
    public bool AnswersInHand { get; init; }

    /// <summary>What was seen in one area.</summary>
    public static SeenInAreas Of(Names names, KnowledgeBase knowledge, AreaAdvice area) =>
        new()
        {
            NamesTreatment = Safety.NamesTreatment(area, knowledge),
            AdvisesTreatment =
                area.Clear.Any(action => names.IsTreatment(action.Action))
                || area.Waiting.Any(action => names.IsTreatment(action.Action)),
            HasInventedCosts = area.Clear.Any(action =>
                names.Cost(action.Action, area.Reading) is { Cost.IsInvented: true } cost
                && Costs.ForArea(cost) is not null
            ),
            HasClearTreatment = area.Clear.Any(action => names.IsTreatment(action.Action)),
            AnswersInHand = area.Reading.InHand.Count > 0,
        };

    /// <summary>What was seen in these areas or in others.</summary>
    public SeenInAreas Or(SeenInAreas other) =>
        new()
        {
            NamesTreatment = NamesTreatment || other.NamesTreatment,
            AdvisesTreatment = AdvisesTreatment || other.AdvisesTreatment,
            HasInventedCosts = HasInventedCosts || other.HasInventedCosts,
            HasClearTreatment = HasClearTreatment || other.HasClearTreatment,
            AnswersInHand = AnswersInHand || other.AnswersInHand,
        };
}

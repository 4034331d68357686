using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview;

/// <summary>Gives the advice for an area as it now stands. The interview asks it after every answer.</summary>
public interface IAdviceSource
{
    /// <summary>The advice for one area on the day of the visit.</summary>
    public AreaAdvice Of(DateOnly date, VisitArea area);
}

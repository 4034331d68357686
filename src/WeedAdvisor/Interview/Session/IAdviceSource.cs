using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Interview.Session;

/// <summary>Gives the advice for an area as it now stands. The interview asks it after every answer.</summary>
public interface IAdviceSource
{
    /// <summary>The advice for one area on a day.</summary>
    public AreaAdvice Of(AreaCase area);

    /// <summary>The engine behind it, of which more can be asked than the advice; null where there is none.</summary>
    public Advisor? Engine => null;
}

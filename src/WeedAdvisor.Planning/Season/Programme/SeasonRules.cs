using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Stretches;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>
/// The rules as a plan asks them: once for every stretch of its year, and again on the days of what it puts on. Safe to
/// share between threads where the advice is.
/// </summary>
public sealed class SeasonRules
{
    private readonly Func<Func<AreaCase, AreaAdvice>> _open;
    private readonly Func<AreaThroughYear, SeasonYear, WeeklyAdvice> _weekly;

    private SeasonRules(
        VerdictStretches stretches,
        Func<Func<AreaCase, AreaAdvice>> open,
        Func<AreaThroughYear, SeasonYear, WeeklyAdvice> weekly
    ) => (Stretches, _open, _weekly) = (stretches, open, weekly);

    /// <summary>Which days can share one asking.</summary>
    public VerdictStretches Stretches { get; }

    /// <summary>The rules through an advisor; each line to it is its own.</summary>
    public static SeasonRules Of(Advisor advisor) =>
        new(
            VerdictStretches.Of(advisor.Knowledge),
            () =>
            {
                LiveAdvice? live = null;
                return area => live is null ? (live = advisor.Open(area)).Advice : live.Change(area);
            },
            (through, year) => WeeklyAdvice.Of(advisor, through, year)
        );

    /// <summary>The rules through whatever gives advice on an area and a day.</summary>
    public static SeasonRules Of(KnowledgeBase knowledge, Func<AreaCase, AreaAdvice> advise)
    {
        var stretches = VerdictStretches.Of(knowledge);
        return new SeasonRules(
            stretches,
            () => advise,
            (through, year) => WeeklyAdvice.Of(stretches, advise, through, year)
        );
    }

    /// <summary>What they allow on every day of a year, apart from what a plan puts on.</summary>
    public WeeklyAdvice Weekly(AreaThroughYear through, SeasonYear year) => _weekly(through, year);

    /// <summary>A line to the rules, for one thread.</summary>
    public Func<AreaCase, AreaAdvice> Open() => _open();
}

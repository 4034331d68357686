using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Season.Year;

/// <summary>What the rules allow in an area, week by week.</summary>
/// <param name="Year">The weeks.</param>
/// <param name="ByWeek">The advice at the start of each week.</param>
public sealed record WeeklyAdvice(SeasonYear Year, ImmutableArray<AreaAdvice> ByWeek)
{
    /// <summary>Asks the rules anew for every week, on the area as it will stand then.</summary>
    public static WeeklyAdvice Of(Advisor advisor, AreaThroughYear area, SeasonYear year)
    {
        var weeks = new AreaAdvice[SeasonYear.Weeks];
        int workers = Math.Clamp(Environment.ProcessorCount, 1, 8);
        Parallel.For(0, workers, new ParallelOptions { MaxDegreeOfParallelism = workers }, worker =>
        {
            int first = SeasonYear.Weeks * worker / workers, end = SeasonYear.Weeks * (worker + 1) / workers;
            LiveAdvice live = advisor.Open(area.On(year.DayOf(first)));
            weeks[first] = live.Advice;
            for (int week = first + 1; week < end; week++)
                weeks[week] = live.Change(area.On(year.DayOf(week)));
        });
        return new WeeklyAdvice(year, [.. weeks]);
    }

    /// <summary>The same through whatever gives advice on an area and a day; one week after the other.</summary>
    public static WeeklyAdvice Of(Func<AreaCase, AreaAdvice> advise, AreaThroughYear area, SeasonYear year) => new(
        year,
        [.. Enumerable.Range(0, SeasonYear.Weeks).Select(week => advise(area.On(year.DayOf(week))))]);

    /// <summary>Whether an action is clear at the start of a week.</summary>
    public bool IsClear(string action, int week) => ByWeek[week].Clear
        .Any(clear => clear.Action == action && clear.Status == ActionStatus.Clear);

    /// <summary>Treatments that stop seed from coming up and are clear in at least one week, in ordinal order of id.</summary>
    public ImmutableArray<Treatment> Preventives(IReadOnlyDictionary<string, Treatment> treatments) =>
    [
        .. ByWeek
            .SelectMany(week => week.Clear)
            .Select(clear => treatments.GetValueOrDefault(clear.Action))
            .OfType<Treatment>()
            .Distinct()
            .Where(treatment => treatment is { Role: "preemergence", ResidualWeeks: not null })
            .OrderBy(treatment => treatment.Id, StringComparer.Ordinal),
    ];
}

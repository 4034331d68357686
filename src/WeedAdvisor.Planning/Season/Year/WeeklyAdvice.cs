using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Stretches;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Season.Year;

/// <summary>Days on which every action stands alike.</summary>
/// <param name="From">The first day.</param>
/// <param name="To">The last day.</param>
/// <param name="Advice">The advice on the first day.</param>
public sealed record AdviceStretch(DateOnly From, DateOnly To, AreaAdvice Advice);

/// <summary>What the rules allow in an area on every day of a plan, apart from what the plan itself puts on.</summary>
/// <param name="Year">The weeks.</param>
/// <param name="Stretches">The advice, stretch by stretch; together they are all days of the plan.</param>
public sealed record WeeklyAdvice(SeasonYear Year, ImmutableArray<AdviceStretch> Stretches)
{
    private const int MostDays = 4;

    /// <summary>
    /// Whether what waits for an answer counts as clear: to tell what the open questions could be worth at most. Such a
    /// year is never shown as a plan.
    /// </summary>
    public bool CountsWaiting { get; init; }

    /// <summary>Asks the rules anew for every stretch, on the area as it will stand then.</summary>
    public static WeeklyAdvice Of(Advisor advisor, AreaThroughYear area, SeasonYear year)
    {
        ImmutableArray<(DateOnly From, DateOnly To)> days = VerdictStretches
            .Of(advisor.Knowledge)
            .Of(area.On, year.From, year.LastDay);
        var advice = new AreaAdvice[days.Length];
        int workers = Math.Clamp(Environment.ProcessorCount, 1, 8);
        Parallel.For(0, workers, new ParallelOptions { MaxDegreeOfParallelism = workers }, worker =>
        {
            LiveAdvice? live = null;
            for (int i = days.Length * worker / workers; i < days.Length * (worker + 1) / workers; i++)
                advice[i] = live is null
                    ? (live = advisor.Open(area.On(days[i].From))).Advice
                    : live.Change(area.On(days[i].From));
        });
        return new WeeklyAdvice(year, [.. days.Zip(advice, (span, one) => new AdviceStretch(span.From, span.To, one))]);
    }

    /// <summary>The same through whatever gives advice on an area and a day; one stretch after the other.</summary>
    public static WeeklyAdvice Of(
        VerdictStretches stretches,
        Func<AreaCase, AreaAdvice> advise,
        AreaThroughYear area,
        SeasonYear year
    ) =>
        new(
            year,
            [
                .. stretches
                    .Of(area.On, year.From, year.LastDay)
                    .Select(span => new AdviceStretch(span.From, span.To, advise(area.On(span.From)))),
            ]
        );

    /// <summary>
    /// How every action stands on a day of the plan. Texts that count days are those of the stretch's first day.
    /// </summary>
    public AreaAdvice On(DateOnly day) => Stretches.First(stretch => day <= stretch.To).Advice;

    /// <summary>Whether an action is clear on a day of the plan.</summary>
    public bool IsClear(string action, DateOnly day) =>
        On(day) is var advice && (CountsWaiting ? MayBecomeClear(advice, action) : advice.IsClear(action));

    /// <summary>
    /// Whether a week serves an action: it is clear on the first day or on most days. What goes on is credited from the
    /// first day of its week, so a week that opens at its end would be credited for days on which nothing lay there.
    /// </summary>
    public bool IsClear(string action, int week) =>
        IsClear(action, Year.DayOf(week)) || Year.DaysOf(week).Count(day => IsClear(action, day)) >= MostDays;

    /// <summary>
    /// Treatments that stop seed from coming up and are clear on at least one day, in ordinal order of id.
    /// </summary>
    public ImmutableArray<Treatment> Preventives(IReadOnlyDictionary<string, Treatment> treatments) =>
        [
            .. Stretches
                .SelectMany(stretch => Clear(stretch.Advice))
                .Select(treatments.GetValueOrDefault)
                .OfType<Treatment>()
                .Distinct()
                .Where(treatment => treatment is { Role: "preemergence", ResidualWeeks: not null })
                .OrderBy(treatment => treatment.Id, StringComparer.Ordinal),
        ];

    private IEnumerable<string> Clear(AreaAdvice advice)
    {
        IEnumerable<string> clear = advice.Clear.Select(one => one.Action);
        return CountsWaiting ? clear.Concat(advice.Waiting.Select(one => one.Action)) : clear;
    }

    private static bool MayBecomeClear(AreaAdvice advice, string action) =>
        advice.Clear.Any(one => one.Action == action) || advice.Waiting.Any(one => one.Action == action);
}

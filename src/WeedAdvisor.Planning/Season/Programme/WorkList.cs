using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Dates;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>Everything that is to be done through the year around the applications, by day.</summary>
internal sealed class WorkList
{
    private const int CleanUpDays = 6;
    private const int LookFromDays = 14, LookToDays = 28;
    private const int MostPractices = 6;

    private readonly SeasonCase _season;
    private readonly SeasonPlan _plan;
    private readonly KnowledgeBase _knowledge;

    private WorkList(SeasonCase season, SeasonPlan plan, KnowledgeBase knowledge) =>
        (_season, _plan, _knowledge) = (season, plan, knowledge);

    /// <summary>The work, by day; on one day in the order in which it is done.</summary>
    public static ImmutableArray<PlannedWork> Of(SeasonCase season, SeasonPlan plan, KnowledgeBase knowledge)
    {
        var list = new WorkList(season, plan, knowledge);
        return
        [
            .. list.Applications()
                .Concat(list.Rounds())
                .Concat(list.Film())
                .Concat(list.Practices())
                .OrderBy(work => work.Day)
                .ThenBy(work => Order(work.Kind))
                .ThenBy(work => work.Action, StringComparer.Ordinal),
        ];
    }

    private static int Order(PlannedWorkKind kind) => kind switch
    {
        PlannedWorkKind.Practice => 0,
        PlannedWorkKind.CleanUp => 1,
        PlannedWorkKind.Round => 2,
        PlannedWorkKind.Apply => 3,
        PlannedWorkKind.WaterIn => 4,
        PlannedWorkKind.Film => 5,
        _ => 6,
    };

    private IEnumerable<PlannedWork> Applications()
    {
        foreach (SeasonApplication application in _plan.Applications)
        {
            Treatment treatment = _knowledge.Treatments[application.Name];
            DateOnly day = _season.Year.DayOf(application.Week), last = day.AddDays(CleanUpDays);
            yield return new(day, last, PlannedWorkKind.CleanUp, null,
                "Pull everything that is up and take it away: what goes on next stops seed, not plants.");
            yield return new(day, last, PlannedWorkKind.Apply, treatment.Id,
                $"{treatment.Name}: only if the label names this use and these crops and nothing has changed; run the advice again first.");
            if (treatment.WaterInMm is { } water)
                yield return new(day, day.AddDays((int)(treatment.WaterInWithinDays ?? 0)), PlannedWorkKind.WaterIn, treatment.Id, Watering(treatment, water));
            yield return new(day.AddDays(LookFromDays), day.AddDays(LookToDays), PlannedWorkKind.LookAgain, treatment.Id,
                "Look at what came through, write it down and pull it before it seeds.");
        }
    }

    private static string Watering(Treatment treatment, Span water)
    {
        string range = water.Low == water.High
            ? FormattableString.Invariant($"{water.Low:0.#}")
            : FormattableString.Invariant($"{water.Low:0.#} to {water.High:0.#}");
        string within = treatment.WaterInWithinDays switch
        {
            null => "",
            0 => " straight after",
            1 => " within a day",
            { } days => FormattableString.Invariant($" within {days:0} days"),
        };
        return $"Water in with {range} mm{within}.";
    }

    private IEnumerable<PlannedWork> Rounds()
    {
        for (int week = 0; week < SeasonYear.Weeks; week += _season.Labour.RoundsWeeks)
        {
            DateOnly day = _season.Year.DayOf(week);
            yield return new(day, day.AddDays(CleanUpDays), PlannedWorkKind.Round, null, "Weeding round: pull what is up before it seeds.");
        }
    }

    private IEnumerable<PlannedWork> Film()
    {
        DateOnly end = _season.Year.DayOf(SeasonYear.Weeks);
        if (_season.Through.CoveringAfter(_season.Year.From.AddDays(-1)) is { } on && on < end)
        {
            yield return new(on.AddDays(-CleanUpDays), on, PlannedWorkKind.CleanUp, null,
                "Pull everything that is up before film goes on: it grows on and seeds under it all winter.");
            yield return new(on, on, PlannedWorkKind.Film, null, "Film goes on. Nothing chemical goes on under it.");
        }

        if (_season.Through.UncoveringAfter(_season.Year.From.AddDays(-1)) is { } off && off < end)
            yield return new(off, off, PlannedWorkKind.Film, null, "Film comes off (average last frost unless you said another day).");
    }

    // What the rules advise today without chemicals, best first.
    private IEnumerable<PlannedWork> Practices() => _season.Weekly.On(_season.Year.From).Clear
        .Where(clear => _knowledge.Practices.ContainsKey(clear.Action) && clear.When is "now" or "season")
        .OrderBy(clear => clear.Rank)
        .Take(MostPractices)
        .Select(Practice);

    private PlannedWork Practice(ClearAction clear)
    {
        Practice practice = _knowledge.Practices[clear.Action];
        ActionDates dates = ActionDates.Of(practice, _season.Area, _season.Year.From, _knowledge);
        DateOnly last = dates.Latest is { } latest && latest > dates.Earliest ? latest : dates.Earliest.AddDays(CleanUpDays);
        return new(dates.Earliest, last, PlannedWorkKind.Practice, practice.Id, $"{practice.Name}.");
    }
}

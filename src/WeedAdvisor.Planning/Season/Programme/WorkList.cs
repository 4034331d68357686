using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Dates;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>Everything that is to be done through the year around the applications, by day.</summary>
internal sealed class WorkList
{
    private const int RoundDays = 6;
    private const int MostPractices = 6;

    private readonly SeasonCase _season;
    private readonly ImmutableArray<PlannedUse> _uses;
    private readonly KnowledgeBase _knowledge;
    private readonly HandDays _hands;
    private readonly Way _way;

    private readonly Func<AreaCase, AreaAdvice> _ask;

    private WorkList(
        SeasonCase season,
        ImmutableArray<PlannedUse> uses,
        Func<AreaCase, AreaAdvice> ask,
        KnowledgeBase knowledge
    )
    {
        (_season, _uses, _ask, _knowledge) = (season, uses, ask, knowledge);
        _hands = new HandDays(season, uses, knowledge);
        _way = season.WayOf([]);
    }

    /// <summary>
    /// The work, by day; on one day in the order in which it is done. Nothing sends hands in while an entry interval
    /// runs.
    /// </summary>
    public static ImmutableArray<PlannedWork> Of(
        SeasonCase season,
        ImmutableArray<PlannedUse> uses,
        Func<AreaCase, AreaAdvice> ask,
        KnowledgeBase knowledge
    )
    {
        var list = new WorkList(season, uses, ask, knowledge);
        return WorkOrder.Of(
            list.Applications().Concat(list.Rounds()).Concat(list.Film()).Concat(list.Practices()),
            knowledge
        );
    }

    private int Usual(string id) => _season.Numbers.Whole(id);

    private IEnumerable<PlannedWork> Applications()
    {
        foreach (PlannedUse use in _uses)
        {
            Treatment treatment = _knowledge.Treatments[use.Treatment];
            (DateOnly first, DateOnly last) = use.Days;
            if (_hands.LastRun(Later(_season.Year.From, first.AddDays(-Usual(UsualIds.CleanUp))), first) is { } before)
            {
                yield return new(
                    before.First,
                    before.Last,
                    PlannedWorkKind.CleanUp,
                    null,
                    "Pull everything that is up and take it away: what goes on next stops seed, not plants."
                );
            }

            yield return new(
                first,
                last,
                PlannedWorkKind.Apply,
                treatment.Id,
                $"{treatment.Name}: only if the label names this use and these crops and nothing has changed; run the "
                    + $"advice again first."
            );
            if (WateringIn.WordsOf(treatment) is { } watering)
            {
                yield return new(
                    first,
                    last.AddDays((int)(treatment.WaterInWithinDays ?? 0)),
                    PlannedWorkKind.WaterIn,
                    treatment.Id,
                    $"Water in {watering}."
                );
            }

            if (
                _hands.FirstRun(first.AddDays(Usual(UsualIds.LookFrom)), first.AddDays(Usual(UsualIds.LookTo))) is
                { } look
            )
            {
                yield return new(
                    look.First,
                    look.Last,
                    PlannedWorkKind.LookAgain,
                    treatment.Id,
                    "Look at what came through, write it down and pull it before it seeds."
                );
            }
        }
    }

    // What is cleaned up before a use is the round of that week.
    private IEnumerable<PlannedWork> Rounds()
    {
        foreach (int week in _way.Season.Rounds.Select(round => round.Week))
        {
            DateOnly day = _season.Year.DayOf(week),
                last = day.AddDays(RoundDays);
            if (_uses.Any(use => use.Days.First >= day && use.Days.First <= last))
                continue;
            if ((_hands.FirstRun(day, last) ?? FromFirstOpen(day)) is { } days)
                yield return new(
                    days.First,
                    days.Last,
                    PlannedWorkKind.Round,
                    null,
                    $"{FirstRound.Words(_way, week)}{First(days)}"
                );
        }
    }

    private DayRun? FromFirstOpen(DateOnly day) =>
        _hands.FirstFrom(day) is { } open ? _hands.FirstRun(open, open.AddDays(RoundDays)) : null;

    private IEnumerable<PlannedWork> Film()
    {
        DateOnly end = _season.Year.DayOf(SeasonYear.Weeks);
        if (_season.Through.CoveringAfter(_season.Year.From.AddDays(-1)) is { } on && on < end)
        {
            if (_hands.LastRun(Later(_season.Year.From, on.AddDays(-RoundDays)), on) is { } before)
            {
                yield return new(
                    before.First,
                    before.Last,
                    PlannedWorkKind.CleanUp,
                    null,
                    "Pull everything that is up before film goes on: it grows on and seeds under it all winter."
                );
            }

            yield return FilmWork(on, "Film goes on. Nothing chemical goes on under it.");
        }

        if (_season.Through.UncoveringAfter(_season.Year.From.AddDays(-1)) is { } off && off < end)
            yield return FilmWork(off, "Film comes off (average last frost unless you said another day).");
    }

    // Film is work of hands: while an entry interval runs nobody is sent in to it.
    private PlannedWork FilmWork(DateOnly planned, string text)
    {
        DateOnly day = _hands.FirstFrom(planned) ?? planned;
        string moved = day == planned ? "" : $" Not on {planned:yyyy-MM-dd}: nobody may go in yet.";
        return new(day, day, PlannedWorkKind.Film, null, text + moved);
    }

    // What the rules advise at the beginning without chemicals, best first, on the first days on which they still do.
    private IEnumerable<PlannedWork> Practices()
    {
        var days = new PracticeDays(_season, _uses, _hands, _ask);
        return _season
            .Weekly.On(_season.Year.From)
            .Clear.Where(clear =>
                _knowledge.Practices.ContainsKey(clear.Action)
                && clear is { When: "now" or "season", Horizon: <= Horizon.ThisSeason }
            )
            .OrderBy(clear => clear.Rank)
            .Take(MostPractices)
            .Select(clear => Practice(_knowledge.Practices[clear.Action], days))
            .OfType<PlannedWork>();
    }

    private PlannedWork? Practice(Practice practice, PracticeDays days)
    {
        ActionDates dates = ActionDates.Of(practice, _season.Area, _season.Year.From, _knowledge);
        DateOnly last =
            dates.Latest is { } latest && latest > dates.Earliest ? latest : dates.Earliest.AddDays(RoundDays);
        bool isByParts = FirstRound.IsByParts(_way.Plan, practice.Id);
        return days.Of(practice, new DayRun(dates.Earliest, last)) is { } run
            ? new PlannedWork(
                run.First,
                isByParts ? Later(run.Last, _season.Year.DayOf(_way.Plan.SpreadWeeks).AddDays(-1)) : run.Last,
                PlannedWorkKind.Practice,
                practice.Id,
                $"{practice.Name}{(isByParts ? FirstRound.ByParts : "")}.{First(run)}"
            )
            : null;
    }

    private string First(DayRun days) => _hands.MeetUse(days) ? " Before anything goes on." : "";

    private static DateOnly Later(DateOnly one, DateOnly other) => one > other ? one : other;
}

using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Dates;

namespace WeedAdvisor.Planning.Season.Year;

/// <summary>
/// An area as it will stand later in the year. Only what follows from a date is changed: film goes on and comes off,
/// buds break and harden, potted plants settle, weeds have been pulled. Everything else stays as the visit found it,
/// and what the visit left open stays open, so that it still clears no chemical.
/// </summary>
public sealed class AreaThroughYear
{
    private const string Enclosing = "film-on",
        NewlyPotted = "newly-potted",
        WinterHouse = "overwintering-house";
    private const int DaysInWeek = 7;

    private readonly VisitArea _area;
    private readonly ImmutableArray<VisitArea> _others;
    private readonly DateOnly _visit;
    private readonly AreaReading _reading;
    private readonly Region _region;
    private readonly YearAssumptions _assumed;
    private readonly FilmYears? _film;

    /// <summary>An area through the year after a visit.</summary>
    /// <param name="found">The area as the visit found it, on the day of the visit.</param>
    /// <param name="reading">The area as read; its region must be told.</param>
    /// <param name="assumed">How it is taken to change.</param>
    /// <param name="uncovering">The day the film comes off; null for the average last frost of the region.</param>
    public AreaThroughYear(AreaCase found, AreaReading reading, YearAssumptions assumed, DateOnly? uncovering = null)
    {
        (DateOnly visit, VisitArea area, _others) = found;
        (_area, _visit, _assumed) = (area, visit, assumed);
        (_reading, _region) = (
            reading,
            reading.Region ?? throw new ArgumentException("the region is not told", nameof(reading))
        );
        DateOnly? covering = reading.CoveringOn;
        bool isCoveredForWinter = reading is { Cover: Enclosing, Place: WinterHouse };
        _film =
            isCoveredForWinter || (covering is not null && reading.Cover != Enclosing)
                ? FilmYears.Of(isCoveredForWinter ? null : covering, visit, _region, uncovering)
                : null;
    }

    /// <summary>The day film goes on next after a day; null when none does, or when it is not known.</summary>
    public DateOnly? CoveringAfter(DateOnly day) => _film?.CoveringAfter(day);

    /// <summary>The day film comes off next after a day; null when none is on, or when it is not known.</summary>
    public DateOnly? UncoveringAfter(DateOnly day) => _film?.UncoveringAfter(day);

    /// <summary>The area on a day, with the other areas, whose roof it may share.</summary>
    public AreaCase On(DateOnly day) => new(day, AreaOn(day), _others);

    private VisitArea AreaOn(DateOnly day)
    {
        ImmutableSortedDictionary<string, Answer>.Builder answers = _area.Answers.ToBuilder();
        Set(answers, QuestionIds.Cover, CoverOn(day));
        Set(answers, QuestionIds.Growth, GrowthOn(day));
        Set(answers, QuestionIds.Stock, StockOn(day));
        if (answers.ContainsKey(QuestionIds.Shipping) && !StatedHolds(day))
            answers[QuestionIds.Shipping] = Words("no");
        // What comes next has come on its day; what comes after it nobody knows.
        if (answers.GetValueOrDefault(QuestionIds.ComesNextOn) is Answer.Date next && next.Value <= day && day > _visit)
        {
            answers.Remove(QuestionIds.ComesNextOn);
            answers[QuestionIds.ComesNext] = Words("nothing-soon");
        }

        // What was put on just before the visit has lost its interval; what the plan puts on is told as such.
        if (day > _visit)
            answers.Remove(QuestionIds.Weather);
        if (day >= _visit.AddDays(DaysInWeek))
            answers[QuestionIds.PutOnLately] = Words("no");
        if (_film is { } film && !film.IsOn(day))
            PlanFilm(answers, film.CoveringAfter(day));
        return _area with
        {
            Answers = answers.ToImmutable(),
            // A preventive goes on clean pots: what is seen today has been pulled by then and may come up again.
            Weeds = _area.Weeds is { } weeds
                ? [.. weeds.Select(weed => new WeedSeen(weed.Weed, "expected", null)).Distinct()]
                : null,
        };
    }

    private string? CoverOn(DateOnly day) =>
        _film switch
        {
            null => _reading.Cover,
            { } film when film.IsOn(day) => Enclosing,
            _ => _reading.Cover == Enclosing ? "open-sky" : _reading.Cover,
        };

    // Where nobody knows when the next film goes on the question stays open, and holds back what hangs on it.
    private static void PlanFilm(ImmutableSortedDictionary<string, Answer>.Builder answers, DateOnly? covering)
    {
        if (covering is { } next)
        {
            answers[QuestionIds.CoveringPlanned] = Words("yes");
            answers[QuestionIds.CoveringDate] = new Answer.Date(next);
        }
        else
        {
            answers.Remove(QuestionIds.CoveringPlanned);
            answers.Remove(QuestionIds.CoveringDate);
        }
    }

    private string? GrowthOn(DateOnly day)
    {
        if (StatedHolds(day) || _reading.Growth is null)
            return _reading.Growth;
        if (_region.LastFrost is not { } last)
            return null;
        if (Within(day, last, -_assumed.FlushStartsWeeksBeforeLastFrost, _assumed.FlushEndsWeeksAfterLastFrost))
            return "bud-break-or-flush";
        return IsAtRest(day, last) ? "dormant" : "hardened";
    }

    // From some weeks after the first frost of a winter to some weeks before the last frost of the same winter, which
    // in the south begins and ends within one year.
    private bool IsAtRest(DateOnly day, string lastFrost) =>
        _region.FirstFrost is { } first
        && Enumerable
            .Range(day.Year - 1, 2)
            .Any(year =>
            {
                DateOnly autumn = CalendarDays.InYear(first, year);
                DateOnly rest = autumn.AddDays(_assumed.RestStartsWeeksAfterFirstFrost * DaysInWeek);
                DateOnly flush = CalendarDays
                    .Next(lastFrost, autumn)
                    .AddDays(-_assumed.FlushStartsWeeksBeforeLastFrost * DaysInWeek);
                return day >= rest && day < flush;
            });

    private static bool Within(DateOnly day, string monthAndDay, int weeksFrom, int weeksTo) =>
        Enumerable
            .Range(day.Year - 1, 3)
            .Any(year =>
            {
                DateOnly middle = CalendarDays.InYear(monthAndDay, year);
                return day >= middle.AddDays(weeksFrom * DaysInWeek) && day < middle.AddDays(weeksTo * DaysInWeek);
            });

    private string? StockOn(DateOnly day) =>
        _reading.Stock == NewlyPotted
        && _reading.PottedOn is { } potted
        && day >= potted.AddDays(_assumed.EstablishedWeeksAfterPotting * DaysInWeek)
            ? "established"
            : _reading.Stock;

    private bool StatedHolds(DateOnly day) => day < _visit.AddDays(_assumed.StatedHoldsWeeks * DaysInWeek);

    private static Answer.Words Words(string word) => new(WordSet.Of([word]));

    // A question that was not answered stays so: null takes the answer away.
    private static void Set(ImmutableSortedDictionary<string, Answer>.Builder answers, string question, string? word)
    {
        if (word is not null)
            answers[question] = Words(word);
        else
            answers.Remove(question);
    }
}

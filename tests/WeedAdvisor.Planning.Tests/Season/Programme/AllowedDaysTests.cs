using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Entry;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Season.Programme;

public sealed class AllowedDaysTests
{
    private static readonly DateOnly s_film = new(2026, 11, 20);

    // What a grower would do: a new visit on that day, with the earlier uses written down as done on one of their days.
    [Fact]
    public void On_each_day_printed_the_advice_of_that_day_clears_what_goes_on() =>
        Gen.Select(RandomYears.Cases, Gen.Int[0, 6].Array[8])
            .Sample(
                (season, picks) =>
                {
                    YearPlan plan = Years.Quick(season);
                    Assert.Equal(
                        plan.Plan!.Applications.Select(one => one.Name),
                        plan.Uses.Select(use => use.Treatment)
                    );
                    for (int i = 0; i < plan.Uses.Length; i++)
                    {
                        (DateOnly first, DateOnly last) = plan.Uses[i].Days;
                        Assert.InRange(first, season.Year.DayOf(plan.Plan.Applications[i].Week), last);
                        Assert.InRange(last, first, season.Year.DayOf(plan.Plan.Applications[i].Week).AddDays(6));
                        for (DateOnly day = first; day <= last; day = day.AddDays(1))
                            Assert.True(
                                IsClear(plan, day, plan.Uses[i].Treatment, Done(plan.Uses[..i], picks)),
                                $"{plan.Uses[i]} on {day:o}"
                            );
                    }
                },
                iter: Sizes.Of(2, 200),
                threads: 1
            );

    [Fact]
    public void No_work_of_hands_falls_inside_an_entry_interval_whenever_the_uses_are_made() =>
        Gen.Select(RandomYears.Cases, Gen.Int[0, 6].Array[8])
            .Sample(
                (season, picks) =>
                {
                    YearPlan plan = Years.Quick(season);
                    ImmutableArray<PastApplication> done = Done(plan.Uses, picks);
                    foreach (PlannedWork work in plan.Work.Where(IsOfHands))
                    {
                        for (DateOnly day = work.Day; day <= work.LastDay; day = day.AddDays(1))
                        {
                            // What goes on on that day itself goes on when the hands are through.
                            AreaCase on = On(plan, day, [.. done.Where(one => one.Date < day)]);
                            Assert.True(
                                Closures.Of(on, ShippedRules.Knowledge).All(one => one.Runs == Truth.No),
                                $"{work} on {day:o}"
                            );
                        }
                    }
                },
                iter: Sizes.Of(4, 200),
                threads: 1
            );

    [Fact]
    public void Nothing_is_put_on_or_watered_in_on_the_day_of_the_film_or_later() =>
        RandomYears.Cases.Sample(
            season =>
            {
                YearPlan plan = Years.Quick(season);
                foreach (
                    PlannedWork work in plan.Work.Where(work =>
                        work.Kind is PlannedWorkKind.Apply or PlannedWorkKind.WaterIn
                    )
                )
                    Assert.True(
                        season.Through.CoveringAfter(work.Day) is not { } film || work.LastDay < film,
                        $"{work}"
                    );
            },
            iter: Sizes.Of(4, 200),
            threads: 1
        );

    [Fact]
    public void A_span_ends_with_the_last_day_that_the_film_allows()
    {
        VisitArea yard = Years.DemoYard with
        {
            Answers = Years.DemoYard.Answers.SetItem("covering-date", new Answer.Date(s_film)),
            Weeds = [.. Years.DemoYard.Weeds!.Value, new WeedSeen("bittercress-flexuous", "expected", null)],
        };
        SeasonCase season = Years.Of(yard, Years.DemoDay, new SeasonRequest());
        Treatment[] near = [.. season.Treatments.Where(one => one.DaysBeforeCovering is not null)];
        Assert.NotEmpty(near);
        foreach (Treatment treatment in near)
        {
            DateOnly last = s_film.AddDays(-(int)treatment.DaysBeforeCovering!.Value);
            Assert.False(season.Weekly.IsClear(treatment.Id, last.AddDays(1)));
        }
    }

    // The whole week used to be printed where only its first days are allowed.
    [Fact]
    public void A_week_that_closes_before_its_end_is_not_printed_to_its_end()
    {
        DateOnly film = new(2026, 10, 30);
        VisitArea yard = Years.DemoYard with
        {
            Answers = Years.DemoYard.Answers.SetItem("covering-date", new Answer.Date(film)),
            Weeds =
            [
                new WeedSeen("bittercress-flexuous", "expected", null),
                new WeedSeen("groundsel-common", "expected", null),
            ],
        };
        SeasonCase season = Years.Of(yard, Years.DemoDay, new SeasonRequest());
        Assert.Equal(new DateOnly(2026, 10, 6), season.Year.DayOf(25));
        Assert.True(season.Weekly.IsClear("oxadiazon-granule", 25));
        int[] allButOne = [.. Enumerable.Range(0, 52).Where(week => week != 25)];
        YearPlan plan = Years.Quick(
            season.With(
                new SeasonRequest { MustUse = ["oxadiazon-granule"], Closed = [.. allButOne] },
                ShippedRules.Knowledge
            )
        );
        Assert.Equal([new DayRun(new DateOnly(2026, 10, 6), film.AddDays(-21))], plan.Uses.Select(use => use.Days));
    }

    [Fact]
    public void What_is_said_of_a_closed_span_counts_from_its_first_day()
    {
        YearPlan plan = Years.DemoQuick;
        ClosedSpan film = plan.Closed.First(span =>
            span.Because.Contains("The film goes on in", StringComparison.Ordinal)
        );
        int days = s_film.DayNumber - plan.Case.Year.DayOf(film.FromWeek).DayNumber;
        Assert.Contains(
            FormattableString.Invariant($"The film goes on in {days} days"),
            film.Because,
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Every_plan_named_as_next_best_has_a_day_for_each_of_its_uses()
    {
        YearPlan plan = Years.DemoFull;
        Assert.Equal(
            plan.NextBest.Select(next => next.Way.Plan.Parts.Sum(part => part.Weeks.Length)),
            plan.NextBest.Select(next => next.Uses.Length)
        );
    }

    private static bool IsOfHands(PlannedWork work) =>
        work.Kind switch
        {
            PlannedWorkKind.Apply or PlannedWorkKind.WaterIn => false,
            PlannedWorkKind.Practice => ShippedRules.Knowledge.Practices[work.Action!].Entry == EntryNeed.Worker,
            _ => true,
        };

    private static ImmutableArray<PastApplication> Done(ImmutableArray<PlannedUse> uses, int[] picks) =>
        [
            .. uses.Select(
                (use, i) =>
                    new PastApplication(
                        use.Treatment,
                        use.Days.First.AddDays(
                            picks[i % picks.Length] % (use.Days.Last.DayNumber - use.Days.First.DayNumber + 1)
                        ),
                        "clean",
                        WordSet.Empty
                    )
                    {
                        PartOnly = false,
                        WateredIn = true,
                    }
            ),
        ];

    private static AreaCase On(YearPlan plan, DateOnly day, ImmutableArray<PastApplication> done)
    {
        AreaCase on = plan.Case.Through.On(day);
        return on with { Area = on.Area with { Past = (on.Area.Past ?? []).AddRange(done) } };
    }

    private static bool IsClear(YearPlan plan, DateOnly day, string treatment, ImmutableArray<PastApplication> done)
    {
        AreaAdvice advice = ShippedRules.On(On(plan, day, done));
        return advice.Clear.Any(clear => clear.Action == treatment && clear.Status == ActionStatus.Clear);
    }
}

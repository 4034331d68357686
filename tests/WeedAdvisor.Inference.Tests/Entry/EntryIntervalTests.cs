using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Entry;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Entry;

/// <summary>
/// People come first: 40 CFR 170.407 (no entry before the interval has ended), 170.405(b) (enclosed spaces, airing),
/// 156.208 (intervals where none is known). The hours of the table in 170.405(b)(4) are from memory.
/// </summary>
public sealed class EntryIntervalTests
{
    private const string Work = "hand-weed-now";
    private static readonly DateOnly s_day = new(2026, 6, 15);

    [Fact]
    public void On_the_day_of_a_spray_nobody_is_sent_in_to_weed_before_the_hour_at_which_its_interval_ends()
    {
        BarredAction weeding = Barred(Yard(Use("isoxaben-spray", s_day, "08:00")));
        Assert.Equal(ActionStatus.NotYet, weeding.Status);
        Assert.Equal(new DateTime(2026, 6, 15, 20, 0, 0), weeding.Until!.From);
        Assert.True(weeding.Until.HasHour);
    }

    [Fact]
    public void A_use_without_an_hour_ended_at_the_end_of_its_day() =>
        Assert.Equal(new DateTime(2026, 6, 16, 12, 0, 0), Barred(Yard(Use("isoxaben-spray", s_day, null))).Until!.From);

    [Fact]
    public void When_the_interval_has_ended_before_the_day_begins_the_work_is_clear() =>
        Assert.Equal(ActionStatus.Clear, Cleared(Yard(Use("isoxaben-spray", s_day.AddDays(-1), "11:00"))).Status);

    [Theory]
    [InlineData(47, true)]
    [InlineData(49, false)]
    public void A_weed_killer_of_unknown_interval_keeps_people_out_for_48_hours(int hoursAgo, bool closed) =>
        AssertClosed(Other("weed-killer"), hoursAgo, closed);

    [Theory]
    [InlineData(71, true)]
    [InlineData(73, false)]
    public void Any_other_pesticide_keeps_people_out_for_72_hours(int hoursAgo, bool closed) =>
        AssertClosed(Other("other-pesticide"), hoursAgo, closed);

    [Fact]
    public void Where_the_time_zone_is_not_known_one_hour_more_is_counted()
    {
        VisitArea yard = Yard(Use("isoxaben-spray", s_day, "08:00"));
        yard = yard with { Answers = yard.Answers.Remove("region") };
        Assert.Equal(new DateTime(2026, 6, 15, 21, 0, 0), Barred(yard).Until!.From);
    }

    [Fact]
    public void Products_put_on_together_share_the_longest_interval_and_others_run_each_from_their_own_end()
    {
        PastApplication short12 = Use("isoxaben-spray", s_day, "08:00"),
            long24 = Use("pendimethalin-spray", s_day, "08:00");
        Assert.Equal(new DateTime(2026, 6, 16, 8, 0, 0), Barred(Yard(short12, long24)).Until!.From);
        Assert.Equal(
            new DateTime(2026, 6, 16, 8, 0, 0),
            Barred(Yard(short12 with { Hour = new TimeOnly(18, 0) }, long24)).Until!.From
        );
    }

    // 40 CFR 156.208(c)(2): 48 hours is the longest that is asked for in general.
    [Fact]
    public void Every_chemical_whose_record_names_no_interval_keeps_people_out_for_48_hours()
    {
        Treatment[] silent =
        [
            .. ShippedRules.Knowledge.Treatments.Values.Where(treatment => treatment.ReiHours is null),
        ];
        Assert.NotEmpty(silent);
        Assert.All(silent, treatment =>
            Assert.Equal(
                new DateTime(2026, 6, 17, 8, 0, 0),
                Barred(Yard(Use(treatment.Id, s_day, "08:00"))).Until!.From
            )
        );
    }

    [Fact]
    public void An_interval_that_is_taken_for_usual_is_said_to_be_that()
    {
        static string Why(PastApplication use) =>
            Barred(Yard(use))
                .Because.First(one => one.Judgement.Contains("entry-interval", StringComparison.Ordinal))
                .Text;
        Assert.Contains(
            "is not known, so 72 hours count, and more where its label says more",
            Why(Other("other-pesticide") with { Date = s_day }),
            StringComparison.Ordinal
        );
        Assert.DoesNotContain("is not known", Why(Use("isoxaben-spray", s_day, "08:00")), StringComparison.Ordinal);
    }

    [Fact]
    public void Hours_are_elapsed_hours_across_the_change_of_the_clock()
    {
        // 24 hours from ten in the evening before the clock springs forward end at eleven, before it falls back at
        // nine.
        Assert.Equal(
            new DateTime(2026, 3, 8, 23, 0, 0),
            Barred(
                Yard(Use("pendimethalin-spray", new DateOnly(2026, 3, 7), "22:00")),
                new DateOnly(2026, 3, 8)
            ).Until!.From
        );
        Assert.Equal(
            new DateTime(2026, 11, 1, 21, 0, 0),
            Barred(
                Yard(Use("pendimethalin-spray", new DateOnly(2026, 10, 31), "22:00")),
                new DateOnly(2026, 11, 1)
            ).Until!.From
        );
    }

    [Theory]
    [InlineData("mist-or-fog", true)]
    [InlineData("other-spray", true)]
    [InlineData(null, true)]
    [InlineData("low-coarse-spray", false)]
    [InlineData("granules", false)]
    public void Under_a_roof_the_method_decides_whether_the_whole_house_is_closed(string? method, bool closed)
    {
        PastApplication use = Use("diquat-floor-spray", s_day, "08:00") with { Method = method };
        Assert.Equal(closed, IsClosed(Bench("house-2"), Floor("house-2", use)));
    }

    [Fact]
    public void Another_house_is_not_closed() =>
        Assert.False(IsClosed(Bench("house-3"), Floor("house-2", Use("diquat-floor-spray", s_day, "08:00"))));

    [Fact]
    public void While_the_house_has_no_name_the_work_waits_for_it()
    {
        VisitArea floor = Floor("house-2", Use("diquat-floor-spray", s_day, "08:00"));
        AreaAdvice advice = Advise(Bench(null), s_day, floor);
        Assert.Contains(Need.Question("house"), Assert.Single(advice.Waiting, waiting => waiting.Action == Work).Needs);
    }

    [Fact]
    public void Airing_is_asked_for_on_top_of_the_interval_for_a_day_at_most()
    {
        PastApplication fog = Use("glufosinate-floor-spray", s_day, "08:00") with { Method = "mist-or-fog" };
        Assert.Equal(new DateTime(2026, 6, 16, 8, 0, 0), Barred(Floor("house-2", fog)).Until!.From);
        Assert.Equal(
            new DateTime(2026, 6, 15, 20, 0, 0),
            Barred(Floor("house-2", fog with { Aired = true })).Until!.From
        );
    }

    [Fact]
    public void A_use_on_a_day_that_is_not_known_makes_the_work_wait()
    {
        AreaAdvice advice = Advise(Yard(Use("isoxaben-spray", null, null)), s_day);
        Assert.Contains(Need.Question("past"), Assert.Single(advice.Waiting, waiting => waiting.Action == Work).Needs);
    }

    [Fact]
    public void Until_it_is_said_whether_anything_was_put_on_lately_the_work_is_clear_unless_something_was()
    {
        VisitArea yard = Yard();
        ClearAction weeding = Cleared(yard with { Answers = yard.Answers.Remove("put-on-lately") });
        Assert.Equal(ActionStatus.ClearUnless, weeding.Status);
        Assert.Equal([Need.Question("put-on-lately")], weeding.Unless);
    }

    [Fact]
    public void What_was_put_on_lately_and_is_not_told_makes_the_work_wait()
    {
        VisitArea yard = Yard();
        AreaAdvice advice = Advise(yard.With("put-on-lately", "yes"), s_day);
        Assert.Contains(Need.Question("past"), Assert.Single(advice.Waiting, waiting => waiting.Action == Work).Needs);
    }

    [Fact]
    public void A_use_of_the_last_week_says_by_itself_that_something_was_put_on()
    {
        VisitArea yard = Yard(Use("isoxaben-spray", s_day.AddDays(-6), "08:00"));
        yard = yard with { Answers = yard.Answers.Remove("put-on-lately") };
        Assert.Equal(ActionStatus.Clear, Cleared(yard).Status);
        VisitArea older = Yard(Use("isoxaben-spray", s_day.AddDays(-8), "08:00"));
        older = older with { Answers = older.Answers.Remove("put-on-lately") };
        Assert.Equal([Need.Question("put-on-lately")], Cleared(older).Unless);
    }

    [Fact]
    public void That_nothing_was_put_on_does_not_count_beside_a_use_of_the_last_week()
    {
        VisitArea yard = Yard(Use("isoxaben-spray", s_day.AddDays(-6), "08:00"));
        Assert.Contains(Advise(yard.With("put-on-lately", "no"), s_day).Gaps, gap => gap.Kind == GapKind.Contradiction);
        VisitArea today = Yard(Use("isoxaben-spray", s_day, "08:00"));
        Assert.True(IsClosed(today.With("put-on-lately", "no")));

        // Nor beside one that closed the house from another area, nor while it is not known whether it is the same
        // house.
        PastApplication fog = Use("pelargonic-acid-floor-spray", s_day.AddDays(-6), "08:00") with
        {
            Method = "mist-or-fog",
        };
        AssertContradicted(Bench("house-2"), Floor("house-2", fog));
        AssertContradicted(Bench(null), Floor("house-2", fog));
        Assert.DoesNotContain(Advise(Bench("house-2"), s_day, Floor("house-3", fog)).Gaps, gap =>
            gap.Kind == GapKind.Contradiction
        );
    }

    private static void AssertContradicted(VisitArea area, params ImmutableArray<VisitArea> others)
    {
        AreaAdvice advice = Advise(area, s_day, others);
        Assert.Contains(advice.Gaps, gap => gap.Kind == GapKind.Contradiction);
        Assert.Contains(advice.Clear, clear =>
            clear.Status == ActionStatus.ClearUnless && clear.Unless.Contains(Need.Question("put-on-lately"))
        );
    }

    // Granules close no house, so an old use of them says nothing of what else was put on lately, and one of an unknown
    // day no more.
    [Theory]
    [InlineData("2026-01-05")]
    [InlineData(null)]
    public void Another_area_that_had_something_lately_keeps_the_house_waiting_while_no_use_of_these_days_is_told(
        string? day
    )
    {
        DateOnly? on = day is null
            ? null
            : DateOnly.ParseExact(day, "yyyy-MM-dd", System.Globalization.CultureInfo.InvariantCulture);
        AreaAdvice advice = Advise(Bench("house-2"), s_day, Floor("house-2", Use("oxadiazon-granule", on, null)));
        Assert.Equal(ActionStatus.Waits, advice.StatusOf(Work));
    }

    [Fact]
    public void What_is_done_elsewhere_need_not_wait()
    {
        VisitArea yard = Yard(Use("isoxaben-spray", s_day, "08:00"));
        yard = yard.With("incoming-stock", "not-inspected");
        Assert.Contains(Advise(yard, s_day).Clear, clear => clear.Action == "inspect-incoming");
    }

    [Fact]
    public void Every_time_zone_of_a_region_is_one_that_the_clock_knows() =>
        Assert.All(ShippedRules.Knowledge.Regions.Values, region =>
            Assert.True(
                region.TimeZone is { } zone ? EntryClock.Knows(zone) : region.Country == Region.Elsewhere,
                region.Id
            )
        );

    private static void AssertClosed(PastApplication use, int hoursAgo, bool closed)
    {
        DateTime end = s_day.ToDateTime(TimeOnly.MinValue).AddHours(-hoursAgo);
        PastApplication told = use with { Date = DateOnly.FromDateTime(end), Hour = TimeOnly.FromDateTime(end) };
        Assert.Equal(closed, IsClosed(Yard(told)));
    }

    private static bool IsClosed(VisitArea area, params ImmutableArray<VisitArea> others) =>
        Advise(area, s_day, others).Barred.Any(barred => barred.Action == Work && barred.Status == ActionStatus.NotYet);

    private static BarredAction Barred(VisitArea area, DateOnly? day = null) =>
        Assert.Single(Advise(area, day ?? s_day).Barred, barred => barred.Action == Work);

    private static ClearAction Cleared(VisitArea area) =>
        Assert.Single(Advise(area, s_day).Clear, clear => clear.Action == Work);

    private static AreaAdvice Advise(VisitArea area, DateOnly day, params ImmutableArray<VisitArea> others) =>
        ShippedRules.On(new AreaCase(day, area, others));

    private static PastApplication Use(string treatment, DateOnly? day, string? hour) =>
        new(treatment, day, "clean", WordSet.Empty)
        {
            Hour = hour is null
                ? null
                : TimeOnly.ParseExact(hour, "HH:mm", System.Globalization.CultureInfo.InvariantCulture),
        };

    private static PastApplication Other(string kind) => new(null, null, "clean", WordSet.Empty) { Kind = kind };

    private static VisitArea Yard(params ImmutableArray<PastApplication> past) =>
        Area(past, ("place", "container-yard"), ("cover", "open-sky"), ("stock", "established"), ("crops", "junipers"));

    private static VisitArea Floor(string house, params ImmutableArray<PastApplication> past) =>
        Area(past, ("place", "house-floor"), ("cover", "film-on"), ("stock", "none-present"), ("house", house));

    private static VisitArea Bench(string? house)
    {
        VisitArea bench = Area(
            [],
            ("place", "growing-house"),
            ("cover", "film-on"),
            ("stock", "established"),
            ("crops", "hydrangeas")
        );
        return house is null ? bench : bench with { Answers = bench.Answers.Add("house", Word(house)) };
    }

    private static VisitArea Area(
        ImmutableArray<PastApplication> past,
        params (string Question, string Word)[] answers
    ) =>
        new(
            "a",
            "A",
            answers
                .Append(("region", "north-carolina-piedmont"))
                .Append(("put-on-lately", past.IsEmpty ? "no" : "yes"))
                .ToImmutableSortedDictionary(one => one.Item1, one => (Answer)Word(one.Item2), StringComparer.Ordinal),
            [new WeedSeen("spurge-spotted", "young", 5)],
            past
        );

    private static Answer.Words Word(string word) => new Answer.Words(WordSet.Of([word]));
}

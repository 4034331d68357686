using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Labels;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Labels;

/// <summary>The grower's own labels: what they settle, what they lift with a line, and what they never lift.</summary>
public sealed class LabelBookTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly RandomVisits s_visits = new(s_knowledge);

    // A book that allows everything that a label can allow, for every treatment.
    private static readonly Lazy<Advisor> s_mildest = new(() =>
        Advisor.Of(
            LabelOverlay.Of(
                s_knowledge,
                new LabelBook([.. s_knowledge.Treatments.Values.Select(Mildest)], new string('0', 64))
            )
        )
    );

    [Fact]
    public void What_only_the_label_can_tell_is_settled_by_it()
    {
        Treatment open = s_knowledge.Treatments.Values.First(one =>
            one.RepeatAfterDays is null && one.Status == "current"
        );
        Treatment read = Over(open.Id, "repeat-after-days: 90").Treatments[open.Id];
        Assert.Equal(90, read.RepeatAfterDays);
        Assert.Contains(
            "90 days between two uses, which the record does not say",
            read.Label!.Line(RandomVisits.Day),
            StringComparison.Ordinal
        );
    }

    [Fact]
    public void Where_a_label_is_milder_both_figures_are_said()
    {
        KnowledgeBase read = Over("prodiamine-granule", "wait-after-potting-days: 7", "registration-number: \"12-34\"");
        Assert.Equal(
            "By your label of Own granules, number 12-34, read 2026-03-01: 7 days after potting; the record says 14.",
            read.Treatments["prodiamine-granule"].Label!.Line(RandomVisits.Day)
        );
    }

    [Fact]
    public void Of_two_entry_intervals_the_longer_counts()
    {
        Assert.Equal(
            12,
            Over("trifluralin-granule", "entry-hours: 4").Treatments["trifluralin-granule"].ReiHours!.Value.High
        );
        Assert.Equal(
            48,
            Over("trifluralin-granule", "entry-hours: 48").Treatments["trifluralin-granule"].ReiHours!.Value.High
        );
    }

    // 40 CFR 156.208(c)(2): where neither record nor label tells hours, 48 count; a label that tells them is the law.
    [Theory]
    [InlineData("", 48)]
    [InlineData("entry-hours: 4", 4)]
    [InlineData("entry-hours: 96", 96)]
    public void A_label_that_is_silent_on_entry_leaves_48_hours_and_one_that_speaks_is_kept(string says, int hours)
    {
        KnowledgeBase read = says.Length == 0 ? Over("prodiamine-granule") : Over("prodiamine-granule", says);
        Assert.Null(s_knowledge.Treatments["prodiamine-granule"].ReiHours);
        decimal? known = read.Treatments["prodiamine-granule"].ReiHours?.High;
        Assert.Equal(hours, known ?? read.Usual[UsualIds.EntryHours]);
    }

    // Whatever a label says, no interval that a text was read for becomes shorter by it.
    [Fact]
    public void No_label_makes_an_interval_shorter_that_was_read_elsewhere() =>
        Assert.All(s_knowledge.Treatments.Values.Where(one => one.ReiHours is not null), one =>
            Assert.Equal(
                one.ReiHours!.Value.High,
                Over(one.Id, "entry-hours: 0").Treatments[one.Id].ReiHours!.Value.High
            )
        );

    [Fact]
    public void A_label_read_more_than_a_year_ago_is_to_be_read_again() =>
        Assert.Contains(
            "read it again",
            Over("prodiamine-granule").Treatments["prodiamine-granule"].Label!.Line(new DateOnly(2027, 6, 1)),
            StringComparison.Ordinal
        );

    [Fact]
    public void The_stamp_tells_that_a_label_book_was_used() =>
        Assert.Contains("+labels-", Over("prodiamine-granule").Stamp.Brief, StringComparison.Ordinal);

    [Theory]
    [InlineData("treatment: prodiamine-granul\n  read: 2026-03-01", "did you mean 'prodiamine-granule'?")]
    [InlineData("treatment: prodiamine-granule\n  read: 2026-03-01\n  actives: [oryzalin]", "the actives oryzalin")]
    [InlineData("treatment: prodiamine-granule\n  read: yesterday", "a date, YYYY-MM-DD")]
    [InlineData("treatment: prodiamine-granule\n  read: 2026-03-01\n  organic-ok: true", "the key 'organic-ok'")]
    public void A_slip_is_one_clear_line(string fields, string expected)
    {
        Outcome<LabelBook, Problem> book = LabelFile.Parse(
            $"- id: own\n  name: Own\n  {fields}\n",
            "labels.yaml",
            s_knowledge,
            new DateOnly(2027, 6, 1)
        );
        Assert.Contains(expected, string.Join('\n', book.Refusals), StringComparison.Ordinal);
    }

    [Fact]
    public void Two_labels_of_one_treatment_are_refused()
    {
        const string one = "  name: Own\n  treatment: prodiamine-granule\n  read: 2026-03-01\n";
        Outcome<LabelBook, Problem> book = LabelFile.Parse(
            $"- id: a\n{one}- id: b\n{one}",
            "labels.yaml",
            s_knowledge,
            new DateOnly(2027, 6, 1)
        );
        Assert.Contains(
            "a second label of 'prodiamine-granule'",
            Assert.Single(book.Refusals).ToString(),
            StringComparison.Ordinal
        );
    }

    // What no label may lift, held over random visits with the mildest labels that there can be.
    [Fact]
    public void No_label_lifts_what_protects_people_cuttings_organic_and_edible_crops_or_a_closed_house() =>
        s_visits.Area.Sample(
            area =>
            {
                foreach (
                    VisitArea one in (VisitArea[])
                        [
                            area,
                            area.With("stock", "unrooted-cuttings"),
                            area.With("edible", "yes"),
                            area.With("organic", "yes"),
                            area.With("cover", "film-on"),
                        ]
                )
                {
                    foreach (
                        ClearAction clear in s_mildest.Value.Open(AreaCase.Alone(RandomVisits.Day, one)).Advice.Clear
                    )
                    {
                        if (!s_knowledge.Treatments.TryGetValue(clear.Action, out Treatment? treatment))
                            continue;
                        Assert.Equal("current", treatment.Status);
                        Assert.False(treatment.ReachesCrop && Says(one, "stock", "unrooted-cuttings"), clear.Action);
                        Assert.False(treatment.ReachesCrop && !one.Answers.ContainsKey("stock"), clear.Action);
                        Assert.False(treatment.OrganicOk != true && Says(one, "organic", "yes"), clear.Action);
                        Assert.False(treatment.EdibleOk != true && Says(one, "edible", "yes"), clear.Action);
                        Assert.False(treatment.EnclosedUse == "never" && Says(one, "cover", "film-on"), clear.Action);
                        Assert.NotNull(
                            clear.Cautions.FirstOrDefault(caution =>
                                caution.Text.StartsWith("By your label", StringComparison.Ordinal)
                            )
                        );
                    }
                }
            },
            iter: Sizes.Of(30, 2000)
        );

    [Fact]
    public void No_label_opens_a_place_in_which_an_interval_runs()
    {
        VisitArea yard = VisitArea.Blank("a", "A").With("cover", "open-sky") with
        {
            Past = [new PastApplication("pendimethalin-spray", RandomVisits.Day, "clean", WordSet.Empty)],
        };
        AreaAdvice advice = s_mildest.Value.Open(AreaCase.Alone(RandomVisits.Day, yard)).Advice;
        Assert.Contains(advice.Barred, barred =>
            barred.Action == "hand-weed-now" && barred.Until!.From > new DateTime(2026, 5, 14)
        );
    }

    private static KnowledgeBase Over(string treatment, params string[] fields)
    {
        string text =
            $"- id: own\n  name: Own granules\n  treatment: {treatment}\n  read: 2026-03-01\n"
            + string.Concat(fields.Select(field => $"  {field}\n"));
        return LabelOverlay.Of(
            s_knowledge,
            LabelFile.Parse(text, "labels.yaml", s_knowledge, new DateOnly(2027, 6, 1)).Value!
        );
    }

    private static ProductLabel Mildest(Treatment treatment) =>
        new()
        {
            Id = treatment.Id,
            Name = treatment.Name,
            Treatment = treatment.Id,
            Read = RandomVisits.Day,
            Sites = WordSet.Of(s_knowledge.QuestionOf("place")!.Choices.Select(choice => choice.Id)),
            Crops = WordSet.Of(s_knowledge.Crops.Keys),
            EntryHours = 0,
            WaitAfterPottingDays = 0,
            WaitBareRootDays = 0,
            DaysBeforeCovering = 0,
            RepeatAfterDays = 0,
            UsesPerYear = 366,
            YearlyLimitKgAiHa = 10_000,
            Where = treatment.Where,
        };

    private static bool Says(VisitArea area, string question, string word) =>
        area.Answers.GetValueOrDefault(question) is Answer.Words words && words.Value.Contains(word);
}

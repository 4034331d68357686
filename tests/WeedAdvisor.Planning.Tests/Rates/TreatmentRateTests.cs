using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Rates;

/// <summary>A treatment at its published rate, with the knowledge that ships.</summary>
public sealed class TreatmentRateTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Fact]
    public void Its_example_gives_product_active_and_what_is_left_of_the_year()
    {
        RateForm form = Sums.Form("product", "treatment");
        RateAnswer answer = Answer([], [.. form.Example.Select(entry => (entry.Key, entry.Value))]);

        // 200 lb of 0.5 percent on an acre is 1 lb, 1.120851 kg on a hectare; 1.68 kg a year (nc-prodiamine).
        Assert.Equal(1.120851, (double)answer["active"].Value.In("kg/ha"), 6);
        Assert.Equal(1.68 - 1.120851, (double)answer["left-prodiamine"].Value.In("kg/ha"), 6);
        Assert.Equal(200 * 5000 / 43560.0, (double)answer["product"].Value.In("lb"), 9);
        Assert.Contains("nc-prodiamine", answer.Sources);
        Assert.Contains(answer.Cautions, line => line.StartsWith("Ask for advice", StringComparison.Ordinal));
        Assert.Contains(answer.Cautions, line => line.Contains("not a label", StringComparison.Ordinal));
    }

    [Theory]
    [InlineData("149 lb/acre", "149 lb/acre is below the published rate, 150 to 300 lb/acre (")]
    [InlineData("301 lb/acre", "301 lb/acre is above the published rate, 150 to 300 lb/acre (")]
    [InlineData("2 pt/acre", "cannot be held against the published rate")]
    public void The_published_range_is_kept_at_both_ends(string rate, string said) =>
        Refused("rate", said, [], ("treatment", "prodiamine-granule"), ("area", "1 acre"), ("rate", rate));

    [Fact]
    public void A_rate_and_an_end_of_the_range_are_not_taken_together() =>
        Refused(
            "end",
            "leave this blank",
            [],
            ("treatment", "prodiamine-granule"),
            ("area", "1 acre"),
            ("rate", "200 lb/acre"),
            ("end", "high")
        );

    [Theory]
    [InlineData("low", 150)]
    [InlineData("high", 300)]
    public void Without_a_rate_an_end_of_the_range_is_taken_and_both_ends_are_allowed(string end, int pounds)
    {
        RateAnswer byEnd = Answer([], ("treatment", "prodiamine-granule"), ("area", "1 acre"), ("end", end));
        RateAnswer byRate = Answer(
            [],
            ("treatment", "prodiamine-granule"),
            ("area", "1 acre"),
            ("rate", FormattableString.Invariant($"{pounds} lb/acre"))
        );
        Assert.Equal(pounds, (double)byEnd["product"].Value.In("lb"), 9);
        Assert.Equal(byRate["product"].Value.In("lb"), byEnd["product"].Value.In("lb"), 12);
    }

    [Fact]
    public void A_yearly_limit_counts_an_active_across_premixes_by_its_share()
    {
        // 200 lb/acre of 0.4 percent bring 0.8967 kg/ha of prodiamine; 100 lb/acre of 0.75 percent bring 0.8406; 1.68 a
        // year.
        Refused(
            "treatment",
            "1.68 kg/ha of prodiamine may go on in twelve months",
            [("isoxaben-prodiamine-granule", Day(1, 10))],
            ("treatment", "oxyfluorfen-prodiamine-granule"),
            ("area", "1 acre")
        );
        RateAnswer answer = Answer(
            [("isoxaben-dithiopyr-granule", Day(1, 10))],
            ("treatment", "oxyfluorfen-prodiamine-granule"),
            ("area", "1 acre")
        );
        Assert.Equal(1.68 - (0.75 * 1.120851), (double)answer["left-prodiamine"].Value.In("kg/ha"), 5);
    }

    [Fact]
    public void More_than_the_year_allows_is_refused_and_names_the_earlier_uses()
    {
        RateProblem problem = Refused(
            "treatment",
            "1.68 kg/ha of prodiamine may go on in twelve months",
            [("oxyfluorfen-prodiamine-granule", Day(1, 10))],
            ("treatment", "prodiamine-granule"),
            ("area", "1 acre"),
            ("end", "high")
        );
        Assert.Contains("did (10 January 2026)", problem.Text, StringComparison.Ordinal);
        Assert.Contains("nc-prodiamine", problem.Text, StringComparison.Ordinal);
        Assert.Contains("not before 2027-01-10", problem.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_use_without_a_date_may_count_and_is_asked_for() =>
        Refused(
            "treatment",
            "a day that is not known",
            [("prodiamine-granule", null)],
            ("treatment", "prodiamine-granule"),
            ("area", "1 acre"),
            ("end", "low")
        );

    [Fact]
    public void Uses_of_more_than_twelve_months_ago_and_of_other_actives_leave_the_limit_whole()
    {
        RateAnswer answer = Answer(
            [("prodiamine-granule", new DateOnly(2025, 6, 30)), ("oxadiazon-granule", Day(2, 1))],
            ("treatment", "prodiamine-granule"),
            ("area", "1 acre"),
            ("end", "high")
        );

        // 1.5 lb/acre is 1.681 kg/ha: all of the year's 1.68, which is rounded.
        Assert.Equal(0, answer["left-prodiamine"].Value.Value);
    }

    [Fact]
    public void Each_active_of_a_premix_is_counted_by_its_share()
    {
        RateAnswer answer = Answer([], ("treatment", "isoxaben-dithiopyr-granule"), ("area", "1 acre"));
        Assert.Equal(0.75 * 1.120851, (double)answer["active-isoxaben"].Value.In("kg/ha"), 5);
        Assert.Equal(0.375 * 1.120851, (double)answer["active-dithiopyr"].Value.In("kg/ha"), 5);
        Assert.Equal(
            (double)answer["active"].Value.In("kg/ha"),
            (double)(answer["active-isoxaben"].Value.In("kg/ha") + answer["active-dithiopyr"].Value.In("kg/ha")),
            9
        );
    }

    [Fact]
    public void The_number_of_uses_a_year_is_kept_over_all_products_with_the_active() =>
        Refused(
            "treatment",
            "products with oxyfluorfen may go on three times in twelve months, and did: 5 January, 5 March and 5 May "
                + "2026",
            [
                ("oxyfluorfen-oryzalin-granule", Day(1, 5)),
                ("oxyfluorfen-oryzalin-granule", Day(3, 5)),
                ("oxyfluorfen-pendimethalin-granule", Day(5, 5)),
            ],
            ("treatment", "oxyfluorfen-prodiamine-granule"),
            ("area", "1 acre")
        );

    [Fact]
    public void Any_twelve_months_count_not_the_calendar_year() =>
        Refused(
            "treatment",
            "not before 2026-12-31",
            [("prodiamine-granule", new DateOnly(2025, 12, 31))],
            ("treatment", "prodiamine-granule"),
            ("area", "1 acre"),
            ("end", "high")
        );

    [Fact]
    public void What_may_be_too_much_for_want_of_an_earlier_rate_is_refused_until_that_is_told()
    {
        // 0.75 lb/acre fits beside 0.75 and not beside 1.5; 1.5 lb/acre is the year's all.
        (string, string)[] typed = [("treatment", "prodiamine-granule"), ("area", "1 acre"), ("end", "low")];
        Refused("treatment", "tell more of the earlier uses", [("prodiamine-granule", Day(2, 1))], typed);
        VisitArea told = VisitArea.Blank("yard", "Yard") with
        {
            Past =
            [
                new PastApplication("prodiamine-granule", Day(2, 1), null, WordSet.Empty)
                {
                    Rate = 150,
                    RateUnit = "lb/acre",
                },
            ],
        };
        Outcome<RateAnswer, RateProblem> outcome = Sums.Form("product", "treatment")
            .Run(
                typed.ToDictionary(entry => entry.Item1, entry => entry.Item2),
                new RateSite(s_knowledge, told, Today)
            );
        Assert.Equal(0, outcome.Value!["left-prodiamine"].Value.Value);
    }

    // The 2 lb/acre a year of oxyfluorfen are for sprays (PNW handbook); a granule brings as much in each of three
    // uses.
    [Fact]
    public void A_limit_of_one_form_does_not_refuse_another() =>
        Assert.NotEmpty(
            Answer(
                [("oxyfluorfen-oryzalin-granule", Day(1, 10))],
                ("treatment", "oxyfluorfen-oryzalin-granule"),
                ("area", "1 acre")
            ).Results
        );

    [Theory]
    [InlineData(59, false)]
    [InlineData(60, true)]
    public void The_days_between_two_uses_of_an_active_are_kept(int days, bool isAllowed)
    {
        (string, DateOnly?)[] past = [("isoxaben-dithiopyr-granule", Today.AddDays(-days))];
        (string, string)[] typed =
        [
            ("treatment", "isoxaben-spray"),
            ("area", "1 acre"),
            ("published", "2"),
            ("end", "low"),
        ];
        if (isAllowed)
            Assert.NotEmpty(Answer(past, typed).Results);
        else
            Refused("treatment", "60 days must lie between two uses of isoxaben", past, typed);
    }

    [Fact]
    public void Without_a_published_rate_there_is_no_number() =>
        Refused("treatment", "no rate is known here", [], ("treatment", "sethoxydim-over-top"), ("area", "1 acre"));

    [Fact]
    public void Without_a_strength_an_active_rate_gives_no_product() =>
        Refused("treatment", "no strength is known", [], ("treatment", "napropamide-granule"), ("area", "1 acre"));

    [Fact]
    public void A_percent_solution_without_a_strength_gives_no_product() =>
        Refused(
            "treatment",
            "no strength is known",
            [],
            ("treatment", "acetic-acid-spray"),
            ("area", "1000 ft2"),
            ("spray", "2 gal")
        );

    [Theory]
    [InlineData("oxadiazon-prodiamine-granule")]
    [InlineData("cinnamaldehyde-experimental")]
    public void What_is_not_in_use_gets_no_rate(string id) =>
        Refused("treatment", "no rate is worked out", [], ("treatment", id), ("area", "1 acre"));

    [Fact]
    public void Of_several_published_rates_one_must_be_named_because_their_products_differ()
    {
        RateProblem problem = Refused(
            "published",
            "say which",
            [],
            ("treatment", "oxyfluorfen-directed-spray"),
            ("area", "1 acre"),
            ("rate", "6 pt/acre")
        );
        Assert.Contains("2: 2 to 4 pt/acre", problem.Text, StringComparison.Ordinal);
        Refused(
            "rate",
            "above the published rate",
            [],
            ("treatment", "oxyfluorfen-directed-spray"),
            ("area", "1 acre"),
            ("published", "2"),
            ("rate", "6 pt/acre")
        );

        // The strength of the record is that of the EC; the pair of figures shows that the SC holds twice as much.
        RateAnswer answer = Answer(
            [],
            ("treatment", "oxyfluorfen-directed-spray"),
            ("area", "1 acre"),
            ("published", "2"),
            ("end", "high")
        );
        Assert.Equal(2, (double)answer["active"].Value.In("lb/acre"), 9);
    }

    [Fact]
    public void A_rate_in_water_is_held_against_the_rate_on_the_ground()
    {
        (string, string)[] typed =
        [
            ("treatment", "glufosinate-directed"),
            ("area", "1000 ft2"),
            ("published", "1"),
            ("end", "high"),
        ];
        Refused("spray", "not entered", [], typed);
        Assert.Equal(4, (double)Answer([], [.. typed, ("spray", "1 gal")])["product"].Value.In("fl-oz"), 9);
        Refused("spray", "the published most is", [], [.. typed, ("spray", "5 gal")]);
    }

    [Fact]
    public void A_rate_of_active_gives_no_more_product_than_published()
    {
        RateAnswer answer = Answer(
            [],
            ("treatment", "clethodim-over-top"),
            ("area", "1 acre"),
            ("published", "1"),
            ("active", "0.125 lb/acre")
        );
        Assert.Equal(8, (double)answer["product"].Value.In("fl-oz"), 9);
        Refused(
            "active",
            "above the published rate",
            [],
            ("treatment", "clethodim-over-top"),
            ("area", "1 acre"),
            ("published", "1"),
            ("active", "0.25 lb/acre")
        );
    }

    [Fact]
    public void When_the_past_is_not_known_it_says_so()
    {
        Dictionary<string, string> typed = new() { ["treatment"] = "prodiamine-granule", ["area"] = "1 acre" };
        Outcome<RateAnswer, RateProblem> outcome = Sums.Form("product", "treatment")
            .Run(typed, new RateSite(s_knowledge, null, null));
        Assert.Contains(outcome.Value!.Cautions, line => line.Contains("is not known", StringComparison.Ordinal));
        Assert.DoesNotContain(Answer([], ("treatment", "prodiamine-granule"), ("area", "1 acre")).Cautions, line =>
            line.Contains("is not known", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void No_treatment_of_the_knowledge_gets_more_than_it_publishes_at_any_end()
    {
        foreach (string id in s_knowledge.Treatments.Keys)
        {
            for (int published = 1; published <= 4; published++)
            {
                foreach (string end in new[] { "low", "high" })
                {
                    Outcome<RateAnswer, RateProblem> outcome = Run(
                        [],
                        ("treatment", id),
                        ("area", "1 ha"),
                        ("published", published.ToString(CultureInfo.InvariantCulture)),
                        ("end", end)
                    );
                    if (
                        outcome.Value is { } answer
                        && s_knowledge.Treatments[id] is { YearlyLimitKgAiHa: { } limit, Actives.Length: 1 }
                        && answer.Results.Any(result => result.Id == "active")
                    )
                    {
                        Assert.InRange(answer["active"].Value.In("kg/ha"), 0.000001m, limit + 0.005m);
                    }
                }
            }
        }
    }

    private static DateOnly Today => new(2026, 9, 15);

    private static DateOnly Day(int month, int day) => new(2026, month, day);

    private static Outcome<RateAnswer, RateProblem> Run(
        (string Treatment, DateOnly? Date)[] past,
        params (string Field, string Typed)[] typed
    )
    {
        VisitArea area = VisitArea.Blank("yard", "Yard") with
        {
            Past = [.. past.Select(use => new PastApplication(use.Treatment, use.Date, null, WordSet.Empty))],
        };
        return Sums.Form("product", "treatment")
            .Run(
                typed.ToDictionary(entry => entry.Field, entry => entry.Typed),
                new RateSite(s_knowledge, area, Today)
            );
    }

    private static RateAnswer Answer((string, DateOnly?)[] past, params (string, string)[] typed)
    {
        Outcome<RateAnswer, RateProblem> outcome = Run(past, typed);
        Assert.True(outcome.Value is not null, string.Join("; ", outcome.Refusals));
        return outcome.Value;
    }

    private static RateProblem Refused(
        string field,
        string said,
        (string, DateOnly?)[] past,
        params (string, string)[] typed
    )
    {
        Outcome<RateAnswer, RateProblem> outcome = Run(past, typed);
        RateProblem problem = Assert.Single(outcome.Refusals);
        Assert.Equal(field, problem.Field);
        Assert.Contains(said, problem.Text, StringComparison.Ordinal);
        return problem;
    }
}

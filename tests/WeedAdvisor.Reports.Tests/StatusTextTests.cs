using System.Text.Json;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Tests.Samples;
using WeedAdvisor.Reports.Text;
using WeedAdvisor.Reports.Why;

namespace WeedAdvisor.Reports.Tests;

/// <summary>The seven statuses, and what ends a bar, in the same words in every medium.</summary>
public sealed class StatusTextTests
{
    private static readonly TextLayout s_brief = new(120);
    private static readonly TextLayout s_full = new(120, Full: true);

    public static TheoryData<string, string> Statuses =>
        new()
        {
            { "let-surface-dry", "clear" },
            { "surface-wash", "clear unless (ask: cover)" },
            { "granule-01", "waits (ask: cover)" },
            { "granule-12", "not advised (what speaks against it weighs more)" },
            { "granule-13", "not advised (nothing speaks for it here)" },
            { "granule-06", "not yet (from 14 July)" },
            { "granule-07", "not yet (when the flush has hardened)" },
            { "granule-08", "not yet (from 2 January 2027, and when the house is open)" },
            { "pull-by-hand", "not yet (from 20:00 on 14 April)" },
            { "granule-11", "not this way (as a spray between the pots)" },
            { "granule-05", "never" },
        };

    [Theory]
    [MemberData(nameof(Statuses))]
    public void Each_status_has_its_words_in_why(string action, string words)
    {
        Assert.Equal(words, StatusWords.Of(SampleAdvice.ClosedArea, action, need => need.Id, SampleAdvice.Day));
        string why = DocumentText.Of(
            WhyDocument.Of(
                SampleAdvice.Of(SampleAdvice.ClosedArea),
                SampleKnowledge.Small.ActionOf(action)!,
                SampleKnowledge.Small
            ),
            120
        );
        Assert.Contains($"Here: {words}", why, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_of_a_closed_area_begins_with_keep_out_and_what_is_done_then()
    {
        foreach (TextLayout layout in (TextLayout[])[s_brief, s_full])
        {
            string page = Text(layout, SampleAdvice.ClosedArea);
            string afterHead = page[page.IndexOf("======\n\n", StringComparison.Ordinal)..];
            Assert.StartsWith(
                "======\n\nKEEP OUT UNTIL 20:00 ON 14 APRIL\n"
                    + "  - Granule number 05 went on here. Its interval still runs.\n"
                    + "  From then, best first:\n"
                    + "   1. Pull the weeds by hand\n"
                    + "   2. Mulch the pots\n",
                afterHead,
                StringComparison.Ordinal
            );
        }
    }

    [Fact]
    public void First_things_say_keep_out_and_no_work() =>
        Assert.Contains(
            "do:  keep out until 20:00 on 14 April\n",
            Text(s_brief, SampleAdvice.ClosedArea, SampleAdvice.BlankArea),
            StringComparison.Ordinal
        );

    [Fact]
    public void The_end_of_an_interval_at_midnight_is_24_00_of_the_day_before()
    {
        KeepOut untilMidnight = SampleAdvice.ClosedArea.KeepOut! with
        {
            Until = new Until(new DateTime(2026, 4, 16), false, []),
        };
        Assert.Equal("until 24:00 on 15 April", UntilWords.KeepOut(untilMidnight, SampleAdvice.Day));
    }

    [Fact]
    public void What_becomes_possible_stands_in_order_of_day_and_then_of_state() =>
        Assert.Contains(
            "WHAT BECOMES POSSIBLE, AND WHEN\n"
                + "  - From 20 April, if the answers it waits for allow it: Granule number 09\n"
                + "  - From 14 July: Granule number 06\n"
                + "  - From 2 January 2027, and when the house is open: Granule number 08\n"
                + "  - When the flush has hardened: Granule number 07\n\n",
            Text(s_full, SampleAdvice.ClosedArea),
            StringComparison.Ordinal
        );

    [Fact]
    public void Never_not_this_way_and_not_yet_stand_apart()
    {
        string page = Text(s_full, SampleAdvice.ClosedArea);
        int[] places =
        [
            .. new[] { "  Never, prohibited:", "  Not this way, prohibited:", "  Not yet, prohibited:" }.Select(title =>
                page.IndexOf(title, StringComparison.Ordinal)
            ),
        ];
        Assert.DoesNotContain(-1, places);
        Assert.Equal(places.Order(), places);
        Assert.Contains("not this way: as a spray between the pots\n", page, StringComparison.Ordinal);
        Assert.Contains("not yet: from 14 July\n", page, StringComparison.Ordinal);
    }

    [Fact]
    public void A_clear_action_names_the_doubt_that_could_outweigh_it_and_the_question()
    {
        string full = Text(s_full, SampleAdvice.ClosedArea);
        Assert.Contains(", clear unless (ask: cover)", full, StringComparison.Ordinal);
        Assert.Contains("unless: It may run off.", full, StringComparison.Ordinal);
    }

    [Fact]
    public void The_page_names_the_doubt_and_asks_the_question_in_full_without_an_id()
    {
        string page = Text(s_brief, SampleAdvice.ClosedArea);
        string question = SampleKnowledge.Small.Questions.Single(one => one.Id == "cover").Ask;
        Assert.Contains("unless: It may run off.", page, StringComparison.Ordinal);
        Assert.Contains($"ask: {question}\n", page, StringComparison.Ordinal);
        Assert.DoesNotContain("clear unless", page, StringComparison.Ordinal);
    }

    [Fact]
    public void What_is_not_advised_is_named_where_it_could_be_done_here() =>
        Assert.Contains(
            "WHAT IS NOT ADVISED: 2 CHEMICALS\n"
                + "  - what speaks against it weighs more: Granule number 12\n"
                + "  - it could be done here, but nothing calls for it: Granule number 13\n",
            Text(s_full, SampleAdvice.ClosedArea),
            StringComparison.Ordinal
        );

    [Fact]
    public void Json_writes_status_and_end_for_machines()
    {
        using var json = JsonDocument.Parse(
            JsonReport.Of(SampleAdvice.Of(SampleAdvice.ClosedArea), SampleKnowledge.Small)
        );
        JsonElement area = json.RootElement.GetProperty("areas")[0];
        Assert.Equal(
            "2026-04-14T20:00",
            area.GetProperty("keepOut").GetProperty("until").GetProperty("from").GetString()
        );
        Assert.Equal("clear-unless", area.GetProperty("clear")[1].GetProperty("status").GetString());
        Assert.Equal("cover", area.GetProperty("clear")[1].GetProperty("unless")[0].GetProperty("id").GetString());
        JsonElement barred = area.GetProperty("barred");
        Assert.Equal("never", barred[0].GetProperty("status").GetString());
        Assert.Equal(JsonValueKind.Null, barred[0].GetProperty("until").ValueKind);
        JsonElement until = barred[3].GetProperty("until");
        Assert.Equal("2027-01-02", until.GetProperty("day").GetString());
        Assert.Equal(JsonValueKind.Null, until.GetProperty("hour").ValueKind);
        Assert.Equal("when the house is open", until.GetProperty("states")[0].GetString());
        Assert.Equal("20:00", barred[6].GetProperty("until").GetProperty("hour").GetString());
        Assert.Equal("as a spray between the pots", barred[8].GetProperty("otherWays")[0].GetString());
        Assert.Equal(
            ["mulch-pots", "pull-by-hand", "granule-09", "granule-06", "granule-08", "granule-07"],
            area.GetProperty("becomesPossible").EnumerateArray().Select(one => one.GetProperty("action").GetString())
        );
        Assert.Equal("granule-12", area.GetProperty("notAdvised")[0].GetProperty("action").GetString());
    }

    private static string Text(TextLayout layout, params AreaAdvice[] areas) =>
        TextReport.Of(SampleAdvice.Of([.. areas]), SampleKnowledge.Small, layout);
}

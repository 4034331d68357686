using WeedAdvisor.Interview.Earlier;
using WeedAdvisor.Interview.Files;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Interview.Words;

public sealed class TypedTests
{
    private static readonly DateOnly s_day = new(2026, 4, 14);

    [Theory]
    [InlineData("3")]
    [InlineData("film-on")]
    [InlineData("Film")]
    [InlineData("fi")]
    public void One_answer_is_picked_by_number_word_text_or_beginning(string typed) =>
        Assert.Equal(new Answer.Words(WordSet.Of("film-on")), Read("cover", typed).Value);

    [Theory]
    [InlineData("5", "There is no answer 5; give a number from 1 to 4.")]
    [InlineData("99999999999", "There is no answer 99999999999; give a number from 1 to 4.")]
    [InlineData("shadecloth", "\"shadecloth\" is not among the answers. Did you mean \"shade-cloth\"?")]
    [InlineData("tent", "\"tent\" is not among the answers; give a number from 1 to 4, or a word.")]
    [InlineData(" ", "Give the number or the word of an answer.")]
    public void A_wrong_answer_gets_one_clear_line(string typed, string error) =>
        Assert.Equal(error, Read("cover", typed).Error);

    [Theory]
    [InlineData("-")]
    [InlineData("don't know")]
    [InlineData("Don’t know")]
    [InlineData("not-known")]
    public void Not_known_is_an_answer(string typed) => Assert.Equal(new Answer.NotKnown(), Read("cover", typed).Value);

    [Theory]
    [InlineData("1, 3")]
    [InlineData("1 3")]
    [InlineData("hand-held spreader, mower")]
    public void Several_answers_are_picked_at_once(string typed) =>
        Assert.Equal(new Answer.Words(WordSet.Of("hand-spreader", "mower")), Read("equipment", typed).Value);

    [Fact]
    public void None_of_several_is_an_answer() =>
        Assert.Equal(new Answer.Words(WordSet.Empty), Read("equipment", "none").Value);

    [Theory]
    [InlineData("2.5")]
    [InlineData("2.5 cm")]
    public void A_number_may_carry_its_unit(string typed) =>
        Assert.Equal(new Answer.Number(2.5m), Read("mulch-depth", typed).Value);

    [Theory]
    [InlineData("31", "31 is out of range. Give a number of cm from 0 to 30.")]
    [InlineData("-1", "-1 is out of range. Give a number of cm from 0 to 30.")]
    [InlineData("2,5", "\"2,5\" is not a number. Give a number of cm from 0 to 30, with a point for the decimal.")]
    [InlineData("1e3", "\"1e3\" is not a number. Give a number of cm from 0 to 30.")]
    public void A_wrong_number_gets_one_clear_line(string typed, string error) =>
        Assert.Equal(error, Read("mulch-depth", typed).Error);

    // Trade classes and litre pots; the widths are from memory, as their record says.
    [Theory]
    [InlineData("#1", "16.5")]
    [InlineData("# 3", "25.4")]
    [InlineData("3 gal", "25.4")]
    [InlineData("#15", "43.2")]
    [InlineData("2 L", "17")]
    [InlineData("7.5 litre", "25")]
    [InlineData("17 cm", "17")]
    [InlineData("3", "3")]
    public void A_pot_may_be_told_by_its_class_its_litres_or_its_width(string typed, string width) =>
        Assert.Equal(
            new Answer.Number(decimal.Parse(width, System.Globalization.CultureInfo.InvariantCulture)),
            ReadWidth(typed).Value
        );

    [Theory]
    [InlineData("#4")]
    [InlineData("6 litre")]
    [InlineData("3 bags")]
    public void A_pot_whose_width_is_not_held_is_not_guessed(string typed) =>
        Assert.StartsWith(
            $"\"{typed}\" is not a number. Give a number of cm from 3 to 120, or a size: #1, #2, #3",
            ReadWidth(typed).Error,
            StringComparison.Ordinal
        );

    private static Typed<Answer> ReadWidth(string typed) =>
        TypedAnswer.Read(ShippedRules.Knowledge, ShippedRules.Knowledge.QuestionOf("pot-width")!, typed, s_day);

    [Theory]
    [InlineData("place")]
    [InlineData("cover")]
    [InlineData("stock")]
    public void A_bare_no_is_never_the_beginning_of_another_answer(string question)
    {
        foreach (string typed in new[] { "no", "No", "yes" })
        {
            Typed<Answer> answer = TypedAnswer.Read(
                ShippedRules.Knowledge,
                ShippedRules.Knowledge.QuestionOf(question)!,
                typed,
                s_day
            );
            Assert.StartsWith("This is not a question of yes or no", answer.Error, StringComparison.Ordinal);
        }

        Assert.NotNull(
            TypedAnswer.Read(ShippedRules.Knowledge, ShippedRules.Knowledge.QuestionOf("licensed")!, "no", s_day).Value
        );
    }

    [Fact]
    public void A_date_is_read_and_must_not_lie_after_the_visit()
    {
        Assert.Equal(new Answer.Date(new DateOnly(2026, 4, 1)), Read("potted-on", "2026-04-01").Value);
        Assert.Equal(new Answer.Date(new DateOnly(2026, 4, 13)), Read("potted-on", "yesterday").Value);
        Assert.Equal(
            "2026-04-15 lies after the visit of 2026-04-14. Give a date not after the visit, written 2026-04-30.",
            Read("potted-on", "2026-04-15").Error
        );
        Assert.Equal(
            "\"1 April\" is not a date. Give a date not after the visit, written 2026-04-30.",
            Read("potted-on", "1 April").Error
        );
    }

    [Theory]
    [InlineData("liver", "Liverwort (Marchantia polymorpha)")]
    [InlineData("milk", "Spotted spurge (milk purslane)")]
    [InlineData("maculata", "Spotted spurge (Euphorbia maculata)")]
    [InlineData("livrewort", "Liverwort (Marchantia polymorpha)")]
    [InlineData("bitercres", "Hairy bittercress (Cardamine hirsuta)")]
    public void Weeds_are_found_by_every_name_and_by_what_is_near(string typed, string found) =>
        Assert.Equal(found, NameSearch.Weeds(SmallTrade.Knowledge, typed, null)[0].ToString());

    [Fact]
    public void With_nothing_typed_the_weeds_of_the_place_come_first()
    {
        var hits = NameSearch.Weeds(SmallTrade.Knowledge, "", "propagation-house");
        Assert.Equal(["oxalis", "liverwort"], hits.Take(2).Select(hit => hit.Id));
        Assert.Equal(SmallTrade.Knowledge.Weeds.Count, hits.Length);
    }

    [Fact]
    public void A_weed_is_read_with_stage_and_cover()
    {
        Assert.Equal(new WeedSeen("liverwort", "mature", 20), Weed("liverwort, mature, 20").Value);
        Assert.Equal(new WeedSeen("liverwort", null, 2.5m), Weed("liverwort, -, 2.5 %").Value);
        Assert.Equal(new WeedSeen("liverwort", null, null), Weed("Liverwort").Value);
        var inPots = new WeedSeen("liverwort", "mature", 80) { PotsPercent = 20 };
        Assert.Equal(inPots, Weed("liverwort, mature, 80, in 20 % of pots").Value);
        Assert.Equal(inPots, Weed("liverwort, 20 % of the trays, mature, 80").Value);
        var beside = new WeedSeen("liverwort", "young", 10) { Stands = WeedSeen.InGround };
        Assert.Equal(beside, Weed("liverwort, young, 10, beside the pots").Value);
        Assert.Equal(beside, Weed("liverwort, not in the pots, young, 10").Value);
        Assert.Equal(beside with { Stands = WeedSeen.InPots }, Weed("liverwort, young, 10, in the pots").Value);
        Assert.Equal("\"spurge\" fits several: Prostrate spurge, Spotted spurge.", Weed("spurge").Error);
        Assert.Equal("\"120\" is not a cover. Give a percentage from 0 to 100.", Weed("liverwort, 120").Error);
        Assert.Equal("No weed is called \"dragon tree\".", Weed("dragon tree").Error);
    }

    [Fact]
    public void An_application_is_read_with_day_result_and_escapes()
    {
        Typed<PastApplication> past = TypedPast.Read(
            SmallTrade.Knowledge,
            "pendimethalin, 2026-03-01, escapes, liverwort, oxalis",
            s_day
        );
        Assert.Equal(
            new PastApplication(
                "pendimethalin-granules",
                new DateOnly(2026, 3, 1),
                "escapes",
                WordSet.Of("liverwort", "oxalis")
            ),
            past.Value
        );
        Assert.Equal(
            "2027-01-01 lies after the visit of 2026-04-14.",
            TypedPast.Read(SmallTrade.Knowledge, "pendimethalin, 2027-01-01", s_day).Error
        );
    }

    [Theory]
    [InlineData("/state", "/state/weedadvisor")]
    [InlineData("relative", "/home/g/.local/state/weedadvisor")]
    [InlineData("", "/home/g/.local/state/weedadvisor")]
    [InlineData(null, "/home/g/.local/state/weedadvisor")]
    public void State_is_kept_where_the_base_directories_say(string? variable, string folder) =>
        Assert.Equal(folder, StateFolder.Of(_ => variable, "/home/g"));

    [Fact]
    public void Text_is_wrapped_between_words_and_a_long_word_is_cut() =>
        Assert.Equal(["a: bb ccc", "   dddddd", "   ddd"], Wrapping.Lines("bb ccc ddddddddd", 9, "a: ", "   "));

    [Theory]
    [InlineData("house-2", "house-2")]
    [InlineData("House 2", "house-2")]
    [InlineData("  the Long  House! ", "the-long-house")]
    [InlineData("!!", null)]
    public void The_name_of_a_house_is_taken_as_it_is_typed_and_kept_in_one_form(string typed, string? kept)
    {
        Typed<Answer> answer = TypedAnswer.Read(
            ShippedRules.Knowledge,
            ShippedRules.Knowledge.QuestionOf("house")!,
            typed,
            s_day
        );
        if (kept is null)
            Assert.NotNull(answer.Error);
        else
            Assert.Equal(new Answer.Words(WordSet.Of([kept])), answer.Value);
    }

    [Theory]
    [InlineData("unnamed grass", "unnamed-grass")]
    [InlineData("unknown sedge, seedling, 5", "unnamed-sedge")]
    [InlineData("a broadleaf annual", "unnamed-broadleaf")]
    [InlineData("unknown creeping weed", "unnamed-creeper")]
    [InlineData("a woody seedling", "unnamed-woody")]
    [InlineData("unknown vine", "unnamed-vine")]
    [InlineData("unknown moss", "unnamed-moss")]
    [InlineData("unknown alga", "unnamed-alga")]
    [InlineData("pond weed", "unnamed-water-weed")]
    public void A_weed_without_a_name_is_told_by_its_kind(string typed, string weed) =>
        Assert.Equal(weed, TypedWeed.Read(ShippedRules.Knowledge, typed, null).Value?.Weed);

    [Fact]
    public void Who_types_a_weed_that_is_not_in_the_list_is_told_of_the_kinds() =>
        Assert.EndsWith(
            "If it is not in the list, or has no name yet, tell its kind: unnamed alga or slime, "
                + "unnamed broadleaf annual, unnamed creeping perennial, unnamed grass, unnamed moss or liverwort, "
                + "unnamed sedge, unnamed vine, unnamed water weed, unnamed woody seedling.",
            TypedWeed.Read(ShippedRules.Knowledge, "qqqqqq", null).Error
        );

    private static Typed<Answer> Read(string question, string typed) =>
        TypedAnswer.Read(SmallTrade.Knowledge, SmallTrade.Question(question), typed, s_day);

    private static Typed<WeedSeen> Weed(string typed) => TypedWeed.Read(SmallTrade.Knowledge, typed, null);
}

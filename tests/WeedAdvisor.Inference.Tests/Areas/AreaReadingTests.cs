using System.Collections.Immutable;
using System.Reflection;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Areas;

/// <summary>An area is read once: every sum and page goes by the same reading.</summary>
public sealed class AreaReadingTests
{
    private const string Region = "north-carolina-piedmont";
    private static readonly DateOnly s_day = new(2026, 4, 14);
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Theory]
    [InlineData(0, null)]
    [InlineData(0.4, 1)]
    [InlineData(2, 2)]
    [InlineData(2.5, 3)]
    [InlineData(3.4, 3)]
    [InlineData(80, 52)]
    public void Rounds_are_whole_weeks_halves_up_and_nobody_weeding_is_no_interval(double answered, int? weeks)
    {
        AreaReading area = Read(Number("weeding-interval", (decimal)answered));
        Assert.Equal(weeks, area.RoundsWeeks);
        Assert.Equal(
            weeks is null ? new Told<int>(4, Origin.Assumed) : new Told<int>(weeks.Value, Origin.Answer),
            area.Rounds(null)
        );
        Assert.Equal(new Told<int>(9, Origin.Set), area.Rounds(9));
    }

    [Theory]
    [InlineData("film-on", "heated-house")]
    [InlineData("glass-or-rigid", "heated-house")]
    [InlineData("open-sky", "us-southeast")]
    [InlineData("shade-cloth", "us-southeast")]
    public void Heat_counts_under_a_closed_roof_only(string cover, string zone) =>
        Assert.Equal(zone, Read(Word("cover", cover), Word("heated", "yes"), Word("region", Region)).EmergenceZone);

    [Fact]
    public void The_wage_is_that_set_else_that_answered_else_that_of_the_price_list()
    {
        Price? price = s_knowledge.Prices[QuestionIds.Wage];
        Assert.Equal(new Told<decimal>(21, Origin.Set), Read(Number("labour-rate", 17)).Wage(21, _ => price));
        Assert.Equal(new Told<decimal>(17, Origin.Answer), Read(Number("labour-rate", 17)).Wage(null, _ => price));
        Assert.Equal(new Told<decimal>(price.Value, Origin.PriceList), Read().Wage(null, _ => price));
        Assert.Null(Read().Wage(null, _ => null));
    }

    [Fact]
    public void What_contradicts_itself_is_not_told()
    {
        Assert.Null(Read(Word("stock", "none-present"), Word("crops", "boxwood")).Stock);
        Assert.Equal("none-present", Read(Word("stock", "none-present")).Stock);
    }

    [Fact]
    public void Nothing_answered_is_nothing_told()
    {
        AreaReading area = Read();
        string[] always =
        [
            nameof(AreaReading.Area),
            nameof(AreaReading.Crops),
            nameof(AreaReading.Equipment),
            nameof(AreaReading.InHand),
            nameof(AreaReading.UsualRoundsWeeks),
            nameof(AreaReading.UsualPots),
            nameof(AreaReading.PotWidthCm),
            nameof(AreaReading.Coming),
            nameof(AreaReading.Standing),
        ];
        foreach (
            PropertyInfo property in typeof(AreaReading)
                .GetProperties(BindingFlags.Public | BindingFlags.Instance)
                .Where(one => one.PropertyType != typeof(bool) && !always.Contains(one.Name))
        )
        {
            Assert.True(property.GetValue(area) is null, property.Name);
        }

        Assert.Equal(Origin.Assumed, area.PotWidthCm.From);
        Assert.Empty(area.Coming.Weeds);
        Assert.Null(area.Standing.Main);
        Assert.False(area.Standing.NamingComesFirst || area.Standing.AreMostlyMats || area.Standing.IsAnyAboutToSeed);
        Assert.True(area.HasPots);
        Assert.Equal(WordSet.Empty, area.Equipment);
        Assert.Equal(WordSet.Empty, area.Crops);
        Assert.Equal(WordSet.Empty, area.InHand);
    }

    [Fact]
    public void Each_question_that_code_knows_is_one_of_the_shipped_ones()
    {
        string[] known =
        [
            .. typeof(QuestionIds)
                .GetFields(BindingFlags.Public | BindingFlags.Static)
                .Select(field => (string)field.GetValue(null)!),
        ];
        Assert.Equal(known.Length, known.Distinct().Count());
        Assert.All(known, id => Assert.NotNull(s_knowledge.QuestionOf(id)));
    }

    private static AreaReading Read(params (string Question, Answer Answer)[] answers) =>
        AreaReading.Of(
            VisitArea.Blank("a", "A") with
            {
                Answers = answers.ToImmutableSortedDictionary(
                    one => one.Question,
                    one => one.Answer,
                    StringComparer.Ordinal
                ),
            },
            s_day,
            s_knowledge
        );

    private static (string, Answer) Word(string question, string word) =>
        (question, new Answer.Words(WordSet.Of(word)));

    private static (string, Answer) Number(string question, decimal number) => (question, new Answer.Number(number));
}

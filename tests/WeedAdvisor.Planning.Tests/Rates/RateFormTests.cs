using WeedAdvisor.Planning.Rates;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;

namespace WeedAdvisor.Planning.Tests.Rates;

public sealed class RateFormTests
{
    public static TheoryData<string, string> Forms =>
        [.. RateForms.Groups.SelectMany(group => group.Forms, (group, form) => (group.Id, form.Id))];

    [Theory]
    [MemberData(nameof(Forms))]
    public void The_example_of_a_form_without_an_area_gives_an_answer_with_its_working(string group, string id)
    {
        RateForm form = Sums.Form(group, id);
        Assert.Equal(group, form.Group);
        if (form.MayReadArea)
            return;
        RateAnswer answer = Sums.Answer(group, id, [.. form.Example.Select(entry => (entry.Key, entry.Value))]);
        Assert.NotEmpty(answer.Results);
        Assert.NotEmpty(answer.Working);
        Assert.NotEmpty(answer.Sources);
        Assert.Distinct(answer.Results.Select(result => result.Id));
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_form_with_nothing_entered_names_each_field_that_it_needs(string group, string id)
    {
        RateForm form = Sums.Form(group, id);
        if (form.MayReadArea)
            return;
        string[] needed = [.. form.Fields.Where(field => field.IsRequired).Select(field => field.Id)];
        if (needed.Length > 0)
            Assert.Equal(needed, Sums.Refusal(group, id).Select(problem => problem.Field));
    }

    [Theory]
    [InlineData("0 fl-oz", "it is zero")]
    [InlineData("-4 fl-oz", "-4 fl-oz is below zero")]
    [InlineData("40", "40 has no unit")]
    [InlineData("40 fluidoz", "no unit 'fluidoz'")]
    [InlineData("40 flz", "did you mean 'fl-oz'?")]
    [InlineData("40 ft", "ft does not measure this")]
    [InlineData("forty fl oz", "is not a number")]
    [InlineData("1/0 fl-oz", "divides by zero")]
    [InlineData("90000000 gal", "more than can be believed")]
    public void An_entry_that_cannot_be_is_named_and_never_becomes_a_number(string caught, string said)
    {
        RateProblem problem = Assert.Single(
            Sums.Refusal("sprayer", "test-strip", ("caught", caught), ("course", "57 ft"), ("width", "6 ft"))
        );
        Assert.Equal("caught", problem.Field);
        Assert.Contains(said, problem.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("40 fl-oz")]
    [InlineData("40 fl oz")]
    [InlineData("39, 41, 40 fl oz")]
    [InlineData("2 1/2 pt")]
    [InlineData("1.25 qt")]
    public void The_same_volume_may_be_typed_in_several_ways(string caught)
    {
        RateAnswer answer = Sums.Answer(
            "sprayer",
            "test-strip",
            ("caught", caught),
            ("course", "340.3125 ft"),
            ("width", "12 in")
        );
        Assert.Equal(40m, Math.Round(answer["volume-per-area"].Value.In("gal/acre"), 20));
    }
}

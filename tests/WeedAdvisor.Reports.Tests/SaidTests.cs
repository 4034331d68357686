using CsCheck;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Tests;

public sealed class SaidTests
{
    [Theory]
    [InlineData(
        "{action}: pull what it misses.",
        "Wash: pull what it misses.",
        "pull what it misses.",
        "pull what it misses."
    )]
    [InlineData(
        "{action} goes over cuttings.",
        "Wash goes over cuttings.",
        "Wash goes over cuttings.",
        "this chemical goes over cuttings."
    )]
    [InlineData(
        "Water {action} in, then rinse {action}.",
        "Water Wash in, then rinse Wash.",
        "Water Wash in, then rinse Wash.",
        "Water this chemical in, then rinse this chemical."
    )]
    [InlineData(
        "No name: nothing to leave out.",
        "No name: nothing to leave out.",
        "No name: nothing to leave out.",
        "No name: nothing to leave out."
    )]
    public void A_text_is_said_in_full_below_its_name_or_of_any(
        string template,
        string full,
        string under,
        string ofAny
    )
    {
        var said = Said.Of(template, "Wash");
        Assert.Equal((full, under, ofAny), (said.Text, said.UnderItsName, said.Of("this chemical")));
    }

    [Fact]
    public void Words_of_the_rule_that_look_like_the_name_stay() =>
        Assert.Equal(
            "Wash hands after this chemical.",
            Said.Of("Wash hands after {action}.", "Wash").Of("this chemical")
        );

    [Fact]
    public void Said_of_any_two_actions_read_the_same() =>
        Gen.Select(Gen.String[Gen.Char["ab: {}"], 0, 30], Gen.String, Gen.String)
            .Sample(
                (text, one, other) =>
                {
                    string template = "{action}: " + text + " {action}";
                    Assert.Equal(Said.Of(template, one).Of("it"), Said.Of(template, other).Of("it"));
                },
                iter: 100
            );
}

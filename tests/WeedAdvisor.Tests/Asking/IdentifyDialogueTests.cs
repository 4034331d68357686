using WeedAdvisor.Asking;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Identify;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Reports;
using WeedAdvisor.Tests.Interview;

namespace WeedAdvisor.Tests.Asking;

public sealed class IdentifyDialogueTests
{
    private static readonly FeatureList s_features = new(SmallTrade.Knowledge);

    [Fact]
    public void Identify_question_by_question() =>
        ExpectedText.Matches(Say("help\nyes\nmaybe\nback\nback\nyes\nno\nlist\n2\nyes\nyes\n"));

    [Fact]
    public void Identify_of_two_look_alikes() =>
        ExpectedText.Matches(IdentifyText.Of(Find(["milky-sap", "hairless"], ["purple-spot-on-leaf"]), s_features, 80));

    [Fact]
    public void Identify_as_json() =>
        ExpectedText.Matches(
            IdentifyJson.Of(Find(["milky-sap", "hairless"], ["purple-spot-on-leaf"]), SmallTrade.Knowledge, s_features)
        );

    [Fact]
    public void When_the_input_ends_what_is_known_so_far_is_told() =>
        Assert.Contains("2 WEEDS FIT ALL OF IT", Say("milky sap\n"), StringComparison.Ordinal);

    [Fact]
    public void Leaving_at_once_tells_nothing() =>
        Assert.DoesNotContain("FIT ALL", Say("quit\n"), StringComparison.Ordinal);

    [Fact]
    public void Who_can_tell_nothing_is_asked_every_feature_once()
    {
        string said = Say(string.Concat(Enumerable.Repeat("don't know\n", 20)));
        Assert.All(s_features.All, feature =>
            Assert.Equal(1, said.Split('\n').Count(line => line == $"Do you see this: {feature.Value}?"))
        );
        Assert.Contains("5 WEEDS FIT ALL OF IT", said, StringComparison.Ordinal);
    }

    private static Identification Find(string[] seen, string[] absent) =>
        new WeedKey(SmallTrade.Knowledge).Of(Sighting.Of(seen, absent));

    private static string Say(string typed)
    {
        using var input = new StringReader(typed);
        using var output = new StringWriter { NewLine = "\n" };
        new IdentifyDialogue(
            new Narrowing(SmallTrade.Knowledge),
            new Lines(input, output, echo: true),
            picks: false
        ).Run();
        return output.ToString();
    }
}

using System.Xml.Linq;
using CsCheck;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Reports.Money;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Tests.Money;

public class SwingBarsTests
{
    private static readonly Gen<UncertainInput> s_input = Gen.Select(
            Gen.Int[0, 1000],
            Gen.Int[0, 1000],
            Gen.Int[0, 1000],
            Gen.String[Gen.Char.AlphaNumeric, 0, 30]
        )
        .Select((low, up, more, name) => new UncertainInput(name, "usd/h", low, low + up, low + up + more));

    private static readonly Gen<Sensitivity> s_sensitivity = s_input
        .Array[1, 6]
        .Select(inputs => Sensitivity.Of([.. inputs], values => values.Sum() - 500));

    [Fact]
    public void Bars_stand_on_one_scale()
    {
        var sensitivity = Sensitivity.Of(
            [new UncertainInput("wage", "usd/h", 10, 15, 30), new UncertainInput("bark", "usd", 0, 5, 5)],
            values => values[0] + values[1]
        );
        var page = new Page(40);
        SwingBars.Write(page, sensitivity);
        // 36 columns from 15 to 35: 1.75 columns a dollar.
        Assert.Equal(
            """
              wage, 10 to 30 usd/h: $15 to $35
              =========|==========================
              bark, 0 to 5 usd: $15 to $20
              =========|..........................

            """.ReplaceLineEndings("\n"),
            page.ToString()
        );
    }

    [Fact]
    public void Bars_fit_the_page() =>
        Gen.Select(s_sensitivity, Gen.Int[Page.Narrowest, Page.Widest])
            .Sample(
                (sensitivity, width) =>
                {
                    var page = new Page(width);
                    SwingBars.Write(page, sensitivity);
                    string[] lines = page.ToString().Split('\n');
                    Assert.All(lines, line => Assert.True(line.Length <= width));
                    Assert.Equal(sensitivity.Swings.Length, lines.Count(line => line.Contains('|')));
                }
            );

    [Fact]
    public void The_picture_is_well_formed_and_loads_nothing() =>
        s_sensitivity.Sample(sensitivity =>
        {
            XElement svg = XElement.Parse(SwingSvg.Of(sensitivity, "What moves it & by <how> much"));
            string[] names = [.. svg.Descendants().Select(element => element.Name.LocalName).Distinct()];
            Assert.All(names, name => Assert.Contains(name, new[] { "title", "text", "rect", "line" }));
            Assert.Equal(sensitivity.Swings.Length, svg.Elements().Count(element => element.Name.LocalName == "rect"));
            Assert.All(svg.Descendants().Attributes(), attribute => Assert.DoesNotContain("url", attribute.Value));
        });

    [Fact]
    public void Names_are_escaped_in_the_picture()
    {
        var sensitivity = Sensitivity.Of([new UncertainInput("<script>&\"", "usd", 0, 1, 2)], values => values[0]);
        Assert.DoesNotContain("<script", SwingSvg.Of(sensitivity, "<script>"));
    }

    [Fact]
    public void Without_inputs_there_is_no_picture() =>
        Assert.Equal("", SwingSvg.Of(Sensitivity.Of([], _ => 3), "none"));
}

using System.Collections.Immutable;
using WeedAdvisor.Golden;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Rates;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Rates;

public sealed class RateReportTests
{
    private static readonly ImmutableSortedDictionary<string, Source> s_sources = SourceFile
        .Load(Repository.Rules)
        .Value!;

    // Made up for this test, so that every part of a report is there.
    private static readonly RateForm s_form = new(
        "bench",
        "trays",
        "Water for the trays",
        "Count the trays and pour the same into each.",
        [
            new(
                "poured",
                "Poured into each",
                new RateFieldKind.Measure([UnitTable.Of("L"), UnitTable.Of("pt")]) { IsList = true },
                "Pour it from a jug."
            ),
            new("trays", "Number of trays", new RateFieldKind.Number(1, 100, IsWhole: true), "Count them.")
            {
                Default = "3",
            },
            new(
                "how",
                "How it is poured",
                new RateFieldKind.Choice([
                    KeyValuePair.Create("jug", "from a jug"),
                    KeyValuePair.Create("hose", "from a hose"),
                ]),
                "The jug is slower."
            )
            {
                Default = "jug",
            },
            new("spare", "Spare water", new RateFieldKind.Measure([UnitTable.Of("%")]), "For what is spilt.")
            {
                IsOptional = true,
            },
        ],
        Work
    )
    {
        Example = [KeyValuePair.Create("poured", "1/3 L")],
    };

    [Fact]
    public void RateText_in_full() =>
        ExpectedText.Matches(DocumentText.Of(RateDocument.Of(Report(("poured", "1/3 L"), ("spare", "12.5 %"))), 80));

    [Fact]
    public void RateJson_in_full() => ExpectedText.Matches(RateJson.Of(Report(("poured", " 1/3 L "), ("how", "hose"))));

    [Fact]
    public void The_same_sum_gives_the_same_bytes_in_another_culture()
    {
        RateReport report = Report(("poured", "0.4 L"));
        string text = DocumentText.Of(RateDocument.Of(report), 80),
            json = RateJson.Of(report);
        using (new CommaCulture())
        {
            Assert.Equal(text, DocumentText.Of(RateDocument.Of(Report(("poured", "0.4 L"))), 80));
            Assert.Equal(json, RateJson.Of(Report(("poured", "0.4 L"))));
        }
    }

    [Theory]
    [InlineData(0, "unit: L or pt; several with commas between")]
    [InlineData(1, "a whole number from 1 to 100; 3 when left out")]
    [InlineData(2, "jug (from a jug), hose (from a hose); jug when left out")]
    [InlineData(3, "unit: %; may be left out")]
    public void A_field_says_what_may_be_entered(int field, string said) =>
        Assert.Equal(said, FieldText.Hint(s_form.Fields[field]));

    [Fact]
    public void A_command_is_quoted_for_the_shell()
    {
        string line = RateCommandLine.Of(
            s_form,
            [KeyValuePair.Create("poured", "1/3 L"), KeyValuePair.Create("spare", "5%")]
        );
        Assert.Equal("weedadvisor rate bench trays --poured \"1/3 L\" --spare 5%", line);
        Assert.Equal(
            ["weedadvisor", "rate", "bench", "trays", "--poured", "1/3 L", "--spare", "5%"],
            ShellWords.Of(line)
        );
    }

    private static RateReport Report(params (string Field, string Typed)[] entries)
    {
        Dictionary<string, string> typed = entries.ToDictionary(entry => entry.Field, entry => entry.Typed);
        RateAnswer? answer = s_form.Run(typed).Value;
        Assert.NotNull(answer);
        return new RateReport(s_form, RateEntry.AllOf(s_form, typed), answer, s_sources);
    }

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        var sheet = new WorkingSheet();
        Quantity each = sheet.Mean("Mean", inputs.List("poured"));
        decimal trays = inputs.Number("trays");
        Quantity all = sheet.Line("Water for all", $"{each} × {Figures.Of(trays, 6)}", each * trays, "L");
        return new RateAnswer
        {
            Results =
            [
                new("water", "Water to draw", all, [UnitTable.Of("gal")], IsMeasuredOut: true),
                new("trays", "Trays", Quantity.Number(trays), []),
            ],
            Working = sheet.Lines,
            Notes = ["Draw the water before you start."],
            Assumed = ["No tray leaks."],
            Cautions = ["Wet benches grow liverwort."],
            Sources = ["common-practice", "lsu-128", "no-such-key"],
        };
    }
}

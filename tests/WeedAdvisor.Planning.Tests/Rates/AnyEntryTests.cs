using System.Globalization;
using CsCheck;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;

namespace WeedAdvisor.Planning.Tests.Rates;

/// <summary>Whatever is entered in a form, from dust to oceans, it answers or names a field of its own.</summary>
public sealed class AnyEntryTests
{
    private static readonly string[] s_numbers =
    [
        "0",
        "0.000000001",
        "0.02",
        "1",
        "3",
        "20",
        "43.7",
        "600",
        "25000",
        "1000000000",
    ];

    public static TheoryData<string, string> Forms =>
        [
            .. RateForms
                .Groups.SelectMany(group => group.Forms, (group, form) => (form, Ids: (group.Id, form.Id)))
                .Where(pair => !pair.form.MayReadArea)
                .Select(pair => pair.Ids),
        ];

    [Theory]
    [MemberData(nameof(Forms))]
    public void A_form_answers_or_names_a_field_of_its_own(string group, string id)
    {
        RateForm form = Sums.Form(group, id);
        Gen.Int[0, 1_000_000]
            .Array[form.Fields.Length]
            .Sample(draws =>
            {
                var typed = form
                    .Fields.Zip(draws, (field, draw) => (field.Id, Text: Typed(field, draw)))
                    .Where(entry => entry.Text is not null)
                    .ToDictionary(entry => entry.Id, entry => entry.Text!);
                Outcome<RateAnswer, RateProblem> outcome = form.Run(typed, Sums.Nowhere);
                if (outcome.Value is { } answer)
                    Assert.All(answer.Results.SelectMany(result => result.Shown), shown =>
                        Assert.NotEqual("", shown.ToString())
                    );
                else
                    Assert.All(outcome.Refusals, problem =>
                        Assert.Contains(problem.Field, form.Fields.Select(field => field.Id))
                    );
            });
    }

    private static string? Typed(RateField field, int draw) =>
        field.Kind switch
        {
            _ when !field.IsRequired && draw % 3 == 0 => null,
            RateFieldKind.Measure { IsList: true } measure =>
                $"{Number(draw)}, {Number(draw / 7)}, {Measure(measure, draw)}",
            RateFieldKind.Measure measure => Measure(measure, draw),
            RateFieldKind.Number number => (draw % 2 == 0 ? number.Least : number.Most).ToString(
                CultureInfo.InvariantCulture
            ),
            RateFieldKind.Choice choice => choice.Words[draw % choice.Words.Length].Key,
            _ => null,
        };

    private static string Measure(RateFieldKind.Measure measure, int draw) =>
        $"{Number(draw / 11)} {measure.Units[draw / 131 % measure.Units.Length]}";

    private static string Number(int draw) => s_numbers[draw % s_numbers.Length];
}

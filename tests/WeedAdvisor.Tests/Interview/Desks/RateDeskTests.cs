using WeedAdvisor.Interview.Desks.Rates;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates;
using WeedAdvisor.Planning.Rates.Forms;

namespace WeedAdvisor.Tests.Interview.Desks;

public sealed class RateDeskTests
{
    public static TheoryData<string, string> Forms =>
        [.. RateForms.Groups.SelectMany(group => group.Forms, (group, form) => (group.Id, form.Id))];

    [Fact]
    public void The_answer_comes_with_the_last_entry_and_goes_when_an_entry_goes()
    {
        RateDesk desk = Strip();
        Assert.StartsWith("Still to enter: Spray caught; Length of the strip", Text(desk), StringComparison.Ordinal);
        Type(desk, "caught", "40 fl-oz");
        Type(desk, "course", "340.3125 ft");
        Assert.Equal("Still to enter: Width sprayed.", Text(desk));
        Type(desk, "width", "12 in");
        Assert.NotNull(desk.Answer);
        Assert.StartsWith("RESULT\n  Spray volume  40 gal/acre", Text(desk), StringComparison.Ordinal);
        Assert.Contains("\nWORKING\n", Text(desk), StringComparison.Ordinal);
        Type(desk, "width", "");
        Assert.Null(desk.Answer);
    }

    [Fact]
    public void A_problem_stands_beside_its_field_and_below_but_a_field_left_empty_has_none()
    {
        RateDesk desk = Strip();
        Assert.All(desk.Form.Fields, field => Assert.Null(desk.ProblemOf(field)));
        Type(desk, "course", "40");
        AdviceLine beside = desk.Beside(Field(desk, "course"));
        Assert.Equal(LineTone.Warning, beside.Tone);
        Assert.StartsWith("40 has no unit", beside.Text, StringComparison.Ordinal);
        Assert.StartsWith("40 has no unit", desk.About(Field(desk, "course")).Text, StringComparison.Ordinal);
        Assert.Equal(LineTone.Quiet, desk.Beside(Field(desk, "caught")).Tone);
        Assert.Contains("40 has no unit", Text(desk), StringComparison.Ordinal);
        Assert.DoesNotContain("not entered", Text(desk), StringComparison.Ordinal);
    }

    [Fact]
    public void The_words_of_a_choice_come_round()
    {
        RateDesk desk = Strip();
        RateField choice = desk.Form.Fields.First(field => field.Kind is RateFieldKind.Choice);
        string[] words = [.. ((RateFieldKind.Choice)choice.Kind).Words.Select(word => word.Key)];
        foreach (string word in words.Append(words[0]))
        {
            desk.NextWord(choice);
            Assert.Equal(word, desk.TextOf(choice));
        }

        RateField measure = Field(desk, "caught");
        desk.NextWord(measure);
        Assert.Equal("", desk.TextOf(measure));
    }

    [Fact]
    public void A_treatment_is_found_by_part_of_its_name()
    {
        var form = new RateForm(
            "test",
            "test",
            "Test",
            "A form made up for this test.",
            [new RateField("treatment", "Treatment", new RateFieldKind.TreatmentId(), "Its id.")],
            _ => throw new InvalidOperationException("not to be worked out")
        )
        {
            Example = [],
        };
        string id = SmallTrade.Knowledge.Treatments.Keys.Order(StringComparer.Ordinal).First();
        var desk = new RateDesk(form with { Work = _ => Refusal() }, Site());
        desk.Type(form.Fields[0], id[..5]);
        Assert.NotNull(desk.ProblemOf(form.Fields[0]));
        HashSet<string> found = [];
        for (int i = 0; i < SmallTrade.Knowledge.Treatments.Count; i++)
        {
            desk.NextWord(form.Fields[0]);
            found.Add(desk.TextOf(form.Fields[0]));
        }

        Assert.Contains(id, found);
    }

    [Theory]
    [MemberData(nameof(Forms))]
    public void The_example_of_every_form_without_knowledge_fills_in_and_clears(string group, string id)
    {
        RateForm form = RateForms.Groups.Single(one => one.Id == group).Forms.Single(one => one.Id == id);
        if (form.MayReadArea)
            return;
        var desk = new RateDesk(form, Site());
        desk.FillIn();
        Assert.True(desk.HasBegun);
        Assert.NotNull(desk.Answer);
        foreach (int width in new[] { 40, 78, 118 })
        {
            Assert.All(desk.Lines(width), line => Assert.True(line.Text.Length <= width, line.Text));
        }

        desk.Clear();
        Assert.False(desk.HasBegun);
        Assert.All(form.Fields, field => Assert.Equal("", desk.TextOf(field)));
    }

    [Fact]
    public void What_was_entered_stays_and_follows_the_interview_to_another_area()
    {
        var session = new InterviewSession(
            SmallTrade.Knowledge,
            new FakeAdvice(),
            VisitEdits.Begin(new DateOnly(2026, 4, 14))
        );
        var desks = new RateDesks(session);
        RateDesk desk = desks.At(StripForm);
        Assert.DoesNotContain(desks.Entries(), entry => entry.Text.EndsWith("(begun)", StringComparison.Ordinal));
        Type(desk, "caught", "40 fl-oz");
        Assert.Same(desk, desks.At(StripForm));
        Assert.Equal(desk.Form.Title + " (begun)", desks.Entries().ElementAt(desks.Forms.IndexOf(StripForm)).Text);
        Assert.Equal(
            RateForms.Groups.Select(group => group.Id),
            desks.Entries().Select(entry => entry.Mark.Trim()).Where(mark => mark.Length > 0)
        );
    }

    internal static RateDesk Strip() => new(StripForm, Site());

    internal static RateForm StripForm =>
        RateForms.Groups.Single(group => group.Id == "sprayer").Forms.Single(form => form.Id == "test-strip");

    private static Outcome<Planning.Rates.Answers.RateAnswer, Planning.Rates.Answers.RateProblem> Refusal() =>
        new Planning.Rates.Answers.RateProblem("treatment", "made up for this test");

    private static RateSite Site() => new(SmallTrade.Knowledge, null, null);

    private static void Type(RateDesk desk, string field, string text) => desk.Type(Field(desk, field), text);

    private static RateField Field(RateDesk desk, string id) => desk.Form.Fields.Single(field => field.Id == id);

    private static string Text(RateDesk desk) => string.Join('\n', desk.Lines(78).Select(line => line.Text));
}

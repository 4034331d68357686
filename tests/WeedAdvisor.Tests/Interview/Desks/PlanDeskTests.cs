using System.Globalization;
using System.Text.Json;
using WeedAdvisor.Interview.Desks.Plan;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Tests.Commands;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Interview.Desks;

/// <summary>The plan under the cursor, with the shipped rules and a visit that is planned in no time.</summary>
public sealed class PlanDeskTests
{
    private const string Visit = "nobody-licensed-and-no-tools";

    // What the first search of the visit comes to: the same for every desk without wishes.
    private static readonly Lazy<PlanAnswer> s_first = new(() =>
        Desk().Job!.Run(TestContext.Current.CancellationToken)
    );

    [Fact]
    public void Before_the_search_it_shows_todays_way_and_after_it_what_the_commands_print()
    {
        PlanDesk desk = Desk();
        decimal pots = desk.Year!.Pots / 1000m;
        Assert.Null(desk.Plan);
        Assert.Contains("This is today's way", desk.Status.Text, StringComparison.Ordinal);
        JsonElement plan = Told("plan");
        Assert.Equal(Usd(plan.GetProperty("today")), desk.Shown!.Usd, 2);
        JsonElement money = Told("money");
        Assert.Equal(
            money
                .GetProperty("ways")
                .EnumerateArray()
                .Single(way => way.GetProperty("isToday").GetBoolean())
                .GetProperty("usdPer1000Pots")
                .GetDecimal(),
            desk.Shown.Usd,
            2
        );
        Search(desk);
        Assert.Equal(Usd(plan.GetProperty("plan")), desk.Shown!.Usd, 2);
        Assert.Equal(plan.GetProperty("plan").GetProperty("hoursPer1000Pots").GetDecimal(), desk.Shown.Hours, 2);
        Assert.Contains($"${desk.Shown.Usd * pots:#,0} a year", desk.Money.Text, StringComparison.Ordinal);
        Assert.Contains("Planned:", desk.Status.Text, StringComparison.Ordinal);
        Assert.Contains("The label is the law", desk.Caution.Text, StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("--without", "oryzalin-spray")]
    [InlineData("--hours", "3")]
    [InlineData("--pots", "500")]
    public void A_wish_is_planned_as_the_command_plans_it(string option, string value)
    {
        PlanDesk desk = Searched();
        if (option == "--without")
            Point(desk, row => row.Product == value).Drop();
        else
            Typed(desk, option == "--hours" ? PlanRowKind.Hours : PlanRowKind.Pots, value);
        Search(desk);
        Assert.Equal(Usd(Told("plan", option, value).GetProperty("plan")), desk.Shown!.Usd, 2);
    }

    [Fact]
    public void What_is_asked_is_priced_at_once_and_what_the_search_finds_takes_its_place()
    {
        PlanDesk desk = Searched();
        decimal best = desk.Shown!.Usd;
        Point(desk, row => row is { Kind: PlanRowKind.Rounds, Part: PartOfYear.Summer }).Move(-1);
        Way asked = desk.Shown;
        Assert.Equal(2, asked.Plan.Rounds.Summer);
        Assert.Equal(WayCosting.Of(desk.Year!, asked.Plan).Value!.Usd, asked.Usd);
        Assert.Null(desk.Plan);
        Assert.Contains("Priced as you ask for it", desk.Status.Text, StringComparison.Ordinal);
        Assert.Contains("dearer than the plan without wishes", desk.Status.Text, StringComparison.Ordinal);
        Assert.StartsWith("*", desk.Lines(80)[1].Text, StringComparison.Ordinal);
        Search(desk);
        Assert.Equal(2, desk.Shown.Plan.Rounds.Summer);
        Assert.InRange(desk.Shown.Usd, best, asked.Usd);
        Assert.Contains("Planned anew", desk.Status.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void Every_change_is_taken_back_by_undo_without_a_search()
    {
        PlanDesk desk = Searched();
        PlanWishes free = desk.Wishes;
        decimal best = desk.Shown!.Usd;
        Action[] changes =
        [
            () => Point(desk, row => row.Kind == PlanRowKind.Rounds).Move(-1),
            () => Point(desk, row => row.Kind == PlanRowKind.Measure).Move(+1),
            () => Point(desk, row => row.Kind == PlanRowKind.Use).CloseWeek(),
            () => Point(desk, row => row.Kind == PlanRowKind.Use).Drop(),
            () => Point(desk, row => row.Kind == PlanRowKind.Use).Keep(),
            () => Point(desk, row => row.Kind == PlanRowKind.Use).Move(+1),
            () => Point(desk, row => row.Kind == PlanRowKind.Hours).Move(-1),
            () => Point(desk, row => row.Kind == PlanRowKind.Budget).Move(-1),
            () => Point(desk, row => row.Kind == PlanRowKind.Pots).Move(+1),
        ];
        foreach (Action change in changes)
        {
            change();
            Assert.NotEqual(free.Key, desk.Wishes.Key);
            Assert.NotNull(desk.Job);
            desk.Undo();
            Assert.Equal(free.Key, desk.Wishes.Key);
            Assert.Null(desk.Job);
            Assert.Equal(best, desk.Shown.Usd);
        }

        desk.Undo();
        Assert.Contains("no change to take back", desk.Status.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_closed_week_stays_free_and_a_row_opens_it_again()
    {
        PlanDesk desk = Searched();
        decimal best = desk.Shown!.Usd;
        PlanRow use = desk.Rows.First(row => row.Kind == PlanRowKind.Use);
        Point(desk, row => row == use).CloseWeek();
        Assert.DoesNotContain(desk.Rows, row => row.Kind == PlanRowKind.Use && row.Week == use.Week);
        Search(desk);
        Assert.DoesNotContain(desk.Rows, row => row.Kind == PlanRowKind.Use && row.Week == use.Week);
        Assert.True(desk.Shown.Usd >= best);
        Point(desk, row => row.Kind == PlanRowKind.Closed).Free();
        Assert.Equal(best, desk.Shown.Usd);
    }

    [Fact]
    public void A_product_in_place_of_another_is_in_the_plan_that_is_found()
    {
        PlanDesk desk = Searched();
        PlanRow use = desk.Rows.First(row => row.Kind == PlanRowKind.Use);
        Point(desk, row => row == use).Move(+1);
        string other = Assert.Single(desk.Wishes.Kept);
        Assert.Equal([use.Product], desk.Wishes.Dropped);
        Assert.Contains(desk.Rows, row => row.Product == other && row.Week == use.Week);
        Search(desk);
        Assert.Contains(desk.Rows, row => row.Kind == PlanRowKind.Use && row.Product == other);
        Assert.DoesNotContain(desk.Rows, row => row.Kind == PlanRowKind.Use && row.Product == use.Product);
    }

    [Fact]
    public void Wishes_that_no_year_keeps_are_told_and_undone()
    {
        PlanDesk desk = Searched();
        Typed(desk, PlanRowKind.Hours, "0");
        Assert.Contains("more than you allow", desk.Status.Text, StringComparison.Ordinal);
        Search(desk);
        Assert.Contains("No year keeps all these wishes", desk.Status.Text, StringComparison.Ordinal);
        desk.Undo();
        Assert.NotNull(desk.Plan!.Best);
    }

    [Theory]
    [InlineData(PlanRowKind.Pots, "0", "a whole number from 1 to 100000000, not '0'")]
    [InlineData(PlanRowKind.Pots, "1.5", "a whole number from 1")]
    [InlineData(PlanRowKind.Hours, "1..", "a number from 0")]
    public void A_number_that_is_none_is_told_and_changes_nothing(PlanRowKind kind, string typed, string told)
    {
        PlanDesk desk = Searched();
        Way before = desk.Shown!;
        Typed(desk, kind, typed);
        Assert.Contains(told, desk.Status.Text, StringComparison.Ordinal);
        Assert.Same(before, desk.Shown);
        desk.PointAt(0);
        Assert.DoesNotContain(told, desk.Status.Text, StringComparison.Ordinal);
    }

    [Fact]
    public void A_search_for_wishes_that_have_changed_since_replaces_nothing_and_is_kept_for_later()
    {
        PlanDesk desk = Searched();
        Point(desk, row => row.Kind == PlanRowKind.Rounds).Move(-1);
        PlanJob old = desk.Job!;
        PlanAnswer answer = old.Run(TestContext.Current.CancellationToken);
        desk.Move(-1);
        decimal asked = desk.Shown!.Usd;
        desk.Take(old, answer);
        Assert.Equal(asked, desk.Shown.Usd);
        Assert.NotNull(desk.Job);
        desk.Undo();
        Assert.Null(desk.Job);
        Assert.Equal(answer.Plan!.Best!.Way.Usd, desk.Shown.Usd);
    }

    [Fact]
    public void Whether_it_stands_is_what_the_command_says()
    {
        PlanDesk desk = Searched();
        Assert.Contains(desk.RobustPage(), block =>
            block.ToString().Contains("some seconds", StringComparison.Ordinal)
        );
        desk.Take(desk.RobustJob!(TestContext.Current.CancellationToken));
        Assert.Null(desk.RobustJob);
        string stays = Told("plan", "--robust")
            .GetProperty("staysCheapest")
            .GetInt32()
            .ToString("#,0", CultureInfo.InvariantCulture);
        Assert.Contains(desk.RobustPage().OfType<Reports.Documents.Paragraph>(), said =>
            said.Text.Text.StartsWith($"In {stays} of 1,000 draws", StringComparison.Ordinal)
        );
    }

    [Fact]
    public void An_area_without_pots_says_why_it_has_no_plan()
    {
        var desk = new PlanDesk(DemoInterview.At("bark-pile"));
        Assert.Empty(desk.Rows);
        Assert.Null(desk.Job);
        Assert.Contains("No pots stand here", desk.Money.Text, StringComparison.Ordinal);
        desk.Move(+1);
        desk.Free();
        desk.Undo();
        desk.Reset();
        Assert.Empty(desk.Rows);
    }

    [Fact]
    public void Wishes_stay_when_an_answer_changes()
    {
        InterviewSession session = Session();
        var desks = new PlanDesks(session);
        PlanDesk desk = desks.Here();
        Assert.Same(desk, desks.Here());
        Typed(desk, PlanRowKind.Hours, "7");
        session.Clear(session.Knowledge.QuestionOf("surface-moisture")!);
        Assert.NotSame(desk, desks.Here());
        Assert.Equal(7, desks.Here().Wishes.Hours);
    }

    private static InterviewSession Session() =>
        new(ShippedRules.Knowledge, new LiveAdviceSource(ShippedRules.Advisor), ShippedRules.Visit(Visit));

    private static PlanDesk Desk() => new(Session());

    private static PlanDesk Searched()
    {
        PlanDesk desk = Desk();
        desk.Take(Assert.IsType<PlanJob>(desk.Job), s_first.Value);
        return desk;
    }

    private static void Search(PlanDesk desk)
    {
        PlanJob job = Assert.IsType<PlanJob>(desk.Job);
        desk.Take(job, job.Run(TestContext.Current.CancellationToken));
    }

    private static PlanDesk Point(PlanDesk desk, Func<PlanRow, bool> isIt)
    {
        desk.PointAt(desk.Rows.ToList().FindIndex(row => isIt(row)));
        return desk;
    }

    private static void Typed(PlanDesk desk, PlanRowKind kind, string number)
    {
        Point(desk, row => row.Kind == kind);
        foreach (char letter in number)
            Assert.True(desk.Type(letter));
        Assert.True(desk.EndTyping());
    }

    private static decimal Usd(JsonElement way) => way.GetProperty("usdPer1000Pots").GetDecimal();

    private static JsonElement Told(string command, params string[] options)
    {
        CommandRun run = CommandRun.Told([
            command,
            Path.Combine(Repository.Rules, "visits", $"{Visit}.yaml"),
            .. options,
            .. command == "plan" ? ["--area", "yard"] : (string[])[],
            "--format",
            "json",
            "--knowledge",
            Repository.Rules,
        ]);
        using var json = JsonDocument.Parse(run.Out);
        return json.RootElement.GetProperty("areas")[0].Clone();
    }
}

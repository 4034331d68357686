using WeedAdvisor.Asking;
using WeedAdvisor.Golden;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Tests.Interview;

namespace WeedAdvisor.Tests.Asking;

public sealed class AskDialogueTests
{
    private readonly FakeStore _store = new();
    private readonly FakeKeeper _keeper = new();
    private AskEnding _outcome;

    [Fact]
    public void Ask_from_an_empty_start_to_a_saved_visit() =>
        ExpectedText.Matches(
            Run(
                """
                area name Mist house
                ?
                1
                film
                stock
                unrooted
                liverwort, mature, 20
                oxalis
                done
                warm-south
                wet
                open
                -
                advice
                save visits/mist.yaml
                quit
                """
            )
        );

    [Fact]
    public void Ask_tells_every_slip_in_one_line() =>
        ExpectedText.Matches(
            Run(
                """
                9
                walkwya
                walkway
                -
                newly-potted
                spurge
                done
                liverwort, mature, 120
                liverwort, matrue, 12
                list
                list spu
                remove liverwort
                none
                region
                2
                skip
                open
                2026-05-01
                yesterday
                45
                """
            )
        );

    [Fact]
    public void Ask_steers_by_commands() =>
        ExpectedText.Matches(
            Run(
                """
                back
                skip
                skip
                skip
                questions
                go 2
                shade-cloth
                clear
                area new Potting shed
                area
                walkway
                area 1
                area remove 2
                yes
                area remove 1
                date
                date 2026-05-02
                nursery Example Nursery (invented)
                units
                units mteric
                units us
                units none
                help
                save

                quti
                quit
                """
            )
        );

    [Fact]
    public void Ask_hears_earlier_applications() =>
        ExpectedText.Matches(
            Run(
                """
                go past
                list
                pendi, 2027-01-01
                pendi, 2026-03-01, escapes, liverwort
                pelargonic, -, clean
                remove 3
                remove 2
                done
                go past
                quit
                """
            )
        );

    [Fact]
    public void Ask_finds_a_weed_by_its_features() =>
        ExpectedText.Matches(
            Run(
                """
                go weeds
                identify
                list
                ?
                yes
                milky sop
                milky sap
                back
                not hairless
                yes
                no
                -
                no
                no hairs
                back
                7
                1
                identify
                help
                features
                quit
                spurge-prostrate, young, 10
                identify
                """
            )
        );

    [Fact]
    public void When_the_input_ends_the_answers_are_kept_and_the_place_is_told()
    {
        string said = Run("1\n");
        Assert.Equal(AskEnding.InputEnded, _outcome);
        Assert.EndsWith(
            "The input has ended before the visit was saved. The answers are kept in\n"
                + "/state/recovery.yaml and are offered at the next start.\n",
            said,
            StringComparison.Ordinal
        );
        Assert.Equal(new Answer.Words(WordSet.Of("propagation-house")), _keeper.Kept!.Areas[0].Answers["place"]);
    }

    [Fact]
    public void An_input_that_ends_at_once_changes_nothing()
    {
        Run("");
        Assert.Equal(AskEnding.Saved, _outcome);
        Assert.Null(_keeper.Kept);
    }

    [Fact]
    public void A_saved_visit_leaves_no_draft()
    {
        Run("1\nsave a.yaml\nquit\n");
        Assert.Equal(AskEnding.Saved, _outcome);
        Assert.Null(_keeper.Kept);
        Assert.Single(_store.Files);
    }

    [Fact]
    public void A_save_that_fails_is_told_and_the_interview_goes_on()
    {
        _store.Refuses = "a.yaml: no such folder";
        Assert.Contains("Not saved: a.yaml: no such folder", Run("1\nsave a.yaml\nquit\n"), StringComparison.Ordinal);
        Assert.Equal(AskEnding.Left, _outcome);
    }

    [Fact]
    public void The_culture_of_the_machine_changes_nothing()
    {
        const string typed = "1\n3\n1\nliverwort, mature, 2.5\ndone\n1\n3\n2\n2.5\nadvice\n";
        string plain = Run(typed);
        using (new CommaCulture())
            Assert.Equal(plain, Run(typed));
    }

    [Fact]
    public void Nothing_but_plain_lines_is_written() =>
        Assert.DoesNotContain(Run("?\n1\nadvice\nhelp\n"), c => char.IsControl(c) && c != '\n');

    private string Run(string typed)
    {
        using var input = new StringReader(typed);
        using var output = new StringWriter { NewLine = "\n" };
        var session = new InterviewSession(
            SmallTrade.Knowledge,
            new FakeAdvice(),
            VisitEdits.Begin(new DateOnly(2026, 4, 14)),
            _keeper
        );
        _outcome = new AskDialogue(session, _store, new Lines(input, output, echo: true)).Run();
        return output.ToString();
    }
}

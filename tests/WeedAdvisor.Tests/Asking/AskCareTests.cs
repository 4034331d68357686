using WeedAdvisor.Asking;
using WeedAdvisor.Golden;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Tests.Interview;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Asking;

/// <summary>Nothing is dropped, and no name is guessed, in the interview line by line.</summary>
public sealed class AskCareTests
{
    // The weeds and treatments that ship, under questions that stay as they are.
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge with
    {
        Questions = SmallTrade.Knowledge.Questions,
    };

    private static readonly string[] s_five =
    [
        "nutsedge-yellow",
        "spurge-spotted",
        "liverwort",
        "woodsorrel-creeping",
        "bittercress-hairy",
    ];

    [Fact]
    public void Ask_asks_back_before_it_drops_or_guesses() =>
        ExpectedText.Matches(
            Run(
                Five(),
                """
                go weeds
                none
                no
                nutgrass, young, 10
                2
                remove nutsedge
                1
                oxalis, mature
                creeping
                liverwort
                clear
                undo
                undo
                undo
                redo
                -
                yes
                undo
                go past
                oxad, 2026-03-01, clean
                1
                area remove 1
                area new Mist house
                area remove 1
                no
                area remove 1
                yes
                undo
                quit
                """
            ).Said
        );

    [Fact]
    public void None_takes_out_named_weeds_only_after_yes()
    {
        Assert.Equal(5, Run(Five(), "go weeds\nnone\nno\n").Area.Weeds?.Length);
        Assert.Equal(5, Run(Five(), "go weeds\nnone\n").Area.Weeds?.Length);
        Assert.Equal(0, Run(Five(), "go weeds\nnone\nyes\n").Area.Weeds?.Length);
        Assert.Equal(5, Run(Five(), "go weeds\nnone\nyes\nundo\n").Area.Weeds?.Length);
    }

    [Fact]
    public void A_line_that_is_no_answer_to_the_question_is_heard_as_the_next_one() =>
        Assert.Equal(6, Run(Five(), "go weeds\nnone\nmugwort, young, 5\n").Area.Weeds?.Length);

    [Fact]
    public void None_and_another_list_of_crops_ask_before_they_drop()
    {
        VisitArea area = Five()
            .WithAnswer("stock", Word("established"))
            .WithAnswer("crops", new Answer.Words(WordSet.Of("conifers", "junipers", "broadleaf-trees")));
        Assert.Equal(3, Crops(Run(area, "go crops\nnone\nno\n").Area));
        Assert.Equal(0, Crops(Run(area, "go crops\nnone\nyes\n").Area));
        Assert.Equal(3, Crops(Run(area, "go crops\njunipers\nno\n").Area));
        Assert.Equal(1, Crops(Run(area, "go crops\njunipers\nyes\n").Area));
        Assert.Equal(2, Crops(Run(area, "go crops\njunipers, conifers\n").Area));
    }

    [Theory]
    [InlineData("nutgrass", "1", "nutsedge-yellow")]
    [InlineData("nutgrass", "2", "nutsedge-purple")]
    [InlineData("oxalis", "creeping", "woodsorrel-creeping")]
    [InlineData("spurge", "1", "spurge-spotted")]
    public void A_name_of_several_weeds_asks_which(string typed, string which, string weed)
    {
        VisitArea blank = VisitArea.Blank("yard", "Yard");
        Assert.Null(Run(blank, $"go weeds\n{typed}, young, 10\n").Area.Weeds);
        Assert.Equal(
            [new WeedSeen(weed, "young", 10)],
            Run(blank, $"go weeds\n{typed}, young, 10\n{which}\n").Area.Weeds!.Value.AsEnumerable()
        );
    }

    [Fact]
    public void Questions_not_known_are_counted_apart_and_put_again()
    {
        VisitArea blank = VisitArea.Blank("yard", "Yard");
        (string said, VisitArea area) = Run(blank, string.Concat(Enumerable.Repeat("-\n", 45)) + "again\n1\nskip\n");
        Assert.Matches(@"\[Yard: 0 of (\d+) answered, \1 not known\]", said);
        Assert.DoesNotContain("No open answer", said, StringComparison.Ordinal);
        Assert.Equal("propagation-house", area.WordOf("place"));
    }

    private static VisitArea Five() =>
        s_five.Aggregate(VisitArea.Blank("yard", "Yard"), (area, weed) =>
            area.WithWeed(new WeedSeen(weed, "young", 5))
        );

    private static int Crops(VisitArea area) => ((Answer.Words)area.Answers["crops"]).Value.Count;

    private static Answer.Words Word(string word) => new(WordSet.Of(word));

    private static (string Said, VisitArea Area) Run(VisitArea area, string typed)
    {
        using var input = new StringReader(typed);
        using var output = new StringWriter { NewLine = "\n" };
        var session = new InterviewSession(
            s_knowledge,
            new FakeAdvice(),
            new Visit("visit", null, new DateOnly(2026, 4, 14), null, [area])
        );
        new AskDialogue(session, new FakeStore(), new Lines(input, output, echo: true)).Run();
        return (output.ToString(), session.Area);
    }
}

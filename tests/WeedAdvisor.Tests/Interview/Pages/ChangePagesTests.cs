using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Interview.Pages;

/// <summary>Why, what would change it, and what if, as pages of the screen.</summary>
public sealed class ChangePagesTests
{
    private static InterviewSession Mist() =>
        new(
            ShippedRules.Knowledge,
            new LiveAdviceSource(ShippedRules.Advisor),
            ShippedRules.Visit("mist-house-with-liverwort")
        );

    [Fact]
    public void What_would_change_an_action_is_told_as_the_command_tells_it()
    {
        string page = Text(UnlockPage.Of(Mist(), "rice-hull-mulch"));
        Assert.Contains("What would change it: Cover with parboiled rice hulls", page, StringComparison.Ordinal);
        Assert.Contains("Only time brings it.", page, StringComparison.Ordinal);
    }

    [Fact]
    public void What_if_is_asked_of_a_copy()
    {
        InterviewSession session = Mist();
        Visit before = session.Visit;
        string page = Text(
            WhatIfPage.Of(
                session,
                ShippedRules.Knowledge.QuestionOf("surface-moisture")!,
                AreaAnswers.Word("dry-between")
            )
        );
        Assert.Contains("WHAT GOES", page, StringComparison.Ordinal);
        Assert.Same(before, session.Visit);
        Assert.Equal(
            session.Advice.Clear.Length,
            new LiveAdviceSource(ShippedRules.Advisor).Of(session.Looked).Clear.Length
        );
    }

    [Fact]
    public void Why_on_the_screen_says_what_the_command_says()
    {
        InterviewSession session = Mist();
        string page = Text(
            ReasonPage.Of(session.Knowledge, session.Advice, session.Looked, "shorten-mist", full: false)
        );
        Assert.Contains("THE CASE FOR IT", page, StringComparison.Ordinal);
        Assert.Contains("Every condition with what it found: Space.", page, StringComparison.Ordinal);
    }

    private static string Text(IEnumerable<Block> page) => DocumentText.Of([.. page], 78);
}

using System.CommandLine;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports;
using WeedAdvisor.Reports.KnowledgePage;
using WeedAdvisor.Reports.Worked;

namespace WeedAdvisor.Commands;

/// <summary><c>knowledge test</c>, <c>coverage</c> and <c>doc</c>: what the worked visits say of the rules.</summary>
internal static class WorkedVisitCommands
{
    public static ExampleCommand Test(Surroundings surroundings)
    {
        var command = new ExampleCommand(
            "test",
            "Hold the advice on the worked visits against what they expect. A line for each miss; exit code 1.",
            "weedadvisor knowledge test"
        );
        command.SetAction(parsed =>
            RunTest(KnowledgeOption.Load(parsed, surroundings, KnowledgeScope.Whole), surroundings)
        );
        return command;
    }

    public static ExampleCommand Coverage(Surroundings surroundings)
    {
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "coverage",
            "List what no worked visit shows: rules that never hold, actions that are never clear. Exit code 1 with "
                + "any.",
            "weedadvisor knowledge coverage --knowledge my-rules"
        )
        {
            width,
        };
        command.SetAction(parsed =>
        {
            KnowledgeBase knowledge = KnowledgeOption.Load(parsed, surroundings, KnowledgeScope.Whole);
            var coverage = Reports.Worked.Coverage.Of(knowledge, surroundings.Compile(knowledge).Advise);
            var gaps = CoverageGaps.Of(coverage, knowledge.NotShown);
            surroundings.Out.Write(CoverageText.Full(coverage, gaps, parsed.GetValue(width)));
            return gaps.IsEmpty ? ExitCode.Done : ExitCode.Negative;
        });
        return command;
    }

    public static ExampleCommand Doc(Surroundings surroundings)
    {
        var command = new ExampleCommand(
            "doc",
            "Write a page, as Markdown, on what the knowledge holds and what it lacks.",
            "weedadvisor knowledge doc > docs/knowledge.md"
        );
        command.SetAction(parsed =>
        {
            KnowledgeBase knowledge = KnowledgeOption.Load(parsed, surroundings, KnowledgeScope.Whole);
            var coverage = Reports.Worked.Coverage.Of(knowledge, surroundings.Compile(knowledge).Advise);
            surroundings.Out.Write(KnowledgeDocument.Of(knowledge, coverage));
            return ExitCode.Done;
        });
        return command;
    }

    private static int RunTest(KnowledgeBase knowledge, Surroundings surroundings)
    {
        Func<Visit, VisitAdvice> advise = Once(surroundings.Compile(knowledge).Advise);
        ExpectationResult result = ExpectationCheck.Run(knowledge, advise);
        var coverage = Reports.Worked.Coverage.Of(knowledge, advise);
        foreach (ExpectationFailure failure in result.Failures)
            surroundings.Out.WriteLine(failure.ToString());
        surroundings.Out.WriteLine(CoverageText.Line(coverage, CoverageGaps.Of(coverage, knowledge.NotShown)));
        surroundings.Out.WriteLine($"{result.Passed} passed, {result.Failures.Length} failed");
        return result.Failures.IsEmpty ? ExitCode.Done : ExitCode.Negative;
    }

    // The same advice serves the test and the coverage.
    private static Func<Visit, VisitAdvice> Once(Func<Visit, VisitAdvice> advise)
    {
        var given = new Dictionary<Visit, VisitAdvice>(ReferenceEqualityComparer.Instance);
        return visit => given.TryGetValue(visit, out VisitAdvice? advice) ? advice : given[visit] = advise(visit);
    }
}

using System.CommandLine;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Commands;

/// <summary><c>demo</c>: the advice on the shipped, invented visit.</summary>
internal static class DemoCommand
{
    private const string File = "visits/demo-spring.yaml";
    private const int UsualWidth = 80;

    public static Command Of(Surroundings surroundings)
    {
        Option<bool> full = LayoutOptions.Full();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "demo",
            "Print the advice on an invented visit.",
            "weedadvisor demo",
            "weedadvisor demo --full | less"
        )
        {
            full,
            width,
        };
        command.SetAction(parsed => Run(parsed, surroundings, parsed.GetValue(width), parsed.GetValue(full)));
        return command;
    }

    /// <summary>Prints the advice on the demo visit of the knowledge.</summary>
    public static int Run(ParseResult parsed, Surroundings surroundings, int width = UsualWidth, bool full = false)
    {
        KnowledgeBase knowledge = LabelsOption.Load(parsed, null, KnowledgeScope.Whole, surroundings);
        WorkedVisit demo = knowledge.WorkedVisits.FirstOrDefault(worked => worked.File == File)
            ?? throw new RefusalException(
                ExitCode.BadKnowledge,
                $"the knowledge has no demo visit '{File}'. Give advise a visit of your own."
            );
        return Print(Advised(surroundings.Compile(knowledge), demo.Visit), knowledge, surroundings, width, full);
    }

    /// <summary>The advice for a visit, with what its next questions would settle.</summary>
    public static VisitAdvice Advised(Advisor advisor, Visit visit) => advisor.WithOutcomes(advisor.Advise(visit));

    /// <summary>Prints advice.</summary>
    public static int Print(
        VisitAdvice advice,
        KnowledgeBase knowledge,
        Surroundings surroundings,
        int width = UsualWidth,
        bool full = false
    )
    {
        Document document = AdviceDocument.Of(advice, knowledge, full);
        surroundings.Out.Write(DocumentText.Of(UnitsOption.Applied(document, null, advice.Visit, knowledge), width));
        return ExitCode.Done;
    }
}

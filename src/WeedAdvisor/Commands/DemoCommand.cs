using System.CommandLine;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports;

namespace WeedAdvisor.Commands;

/// <summary><c>demo</c>: the advice on the shipped, invented visit.</summary>
internal static class DemoCommand
{
    private const string File = "visits/demo-spring.yaml";

    public static Command Of(Surroundings surroundings)
    {
        Option<bool> full = LayoutOptions.Full();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "demo", "Print the advice on an invented visit.", "weedadvisor demo", "weedadvisor demo --full | less")
        {
            full, width,
        };
        command.SetAction(parsed => Run(
            parsed, surroundings, new TextLayout(parsed.GetValue(width), Full: parsed.GetValue(full))));
        return command;
    }

    /// <summary>Prints the advice on the demo visit of the knowledge.</summary>
    public static int Run(ParseResult parsed, Surroundings surroundings, TextLayout layout)
    {
        KnowledgeBase knowledge = LabelsOption.Over(KnowledgeOption.Load(parsed, surroundings), parsed, null, surroundings);
        WorkedVisit demo = knowledge.WorkedVisits.FirstOrDefault(worked => worked.File == File)
            ?? throw new RefusalException(
                ExitCode.BadKnowledge,
                $"the knowledge has no demo visit '{File}'. Give advise a visit of your own.");
        VisitAdvice advice = Advisor.Of(knowledge).Advise(demo.Visit);
        surroundings.Out.Write(TextReport.Of(advice, knowledge, layout));
        return ExitCode.Done;
    }
}

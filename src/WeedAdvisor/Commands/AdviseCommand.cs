using System.CommandLine;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports;
using WeedAdvisor.Reports.Advise;

namespace WeedAdvisor.Commands;

/// <summary><c>advise</c>: the advice on a visit.</summary>
internal static class AdviseCommand
{
    public static Command Of(Surroundings surroundings)
    {
        Argument<string> file = VisitArgument.File();
        Option<string?> area = VisitArgument.Area();
        Option<string> format = FormatOption.Of("How the advice is written.");
        var sources = new Option<bool>("--sources") { Description = "Cite the sources in full at the end." };
        Option<bool> full = LayoutOptions.Full();
        Option<string?> units = UnitsOption.Of();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "advise",
            "Print the advice on a visit.",
            "weedadvisor advise visit.yaml",
            "weedadvisor advise visit.yaml --area mist-house --full --sources",
            "weedadvisor advise visit.yaml --format json > advice.json")
        {
            file, area, format, units, full, sources, width,
        };
        command.SetAction(parsed =>
        {
            KnowledgeBase knowledge = LabelsOption.Over(
                KnowledgeOption.Load(parsed, surroundings), parsed, parsed.GetRequiredValue(file), surroundings);
            Visit visit = VisitArgument.Read(
                parsed.GetRequiredValue(file), parsed.GetValue(area), knowledge, surroundings);
            VisitAdvice advice = Advisor.Of(knowledge).Advise(visit);
            string? written = parsed.GetValue(format);
            if (written == FormatOption.Json)
                JsonReport.Write(surroundings.Out, advice, knowledge);
            else
                surroundings.Out.Write(FormatOption.Written(
                    written,
                    UnitsOption.Applied(
                        AdviceDocument.Of(
                            advice,
                            knowledge,
                            parsed.GetValue(full) || FormatOption.IsWhole(written),
                            parsed.GetValue(sources)
                        ),
                        parsed.GetValue(units),
                        visit,
                        knowledge),
                    parsed.GetValue(width)));
            return ExitCode.Done;
        });
        return command;
    }
}

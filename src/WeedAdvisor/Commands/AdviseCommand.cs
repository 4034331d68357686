using System.CommandLine;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports;

namespace WeedAdvisor.Commands;

/// <summary><c>advise</c>: the advice on a visit.</summary>
internal static class AdviseCommand
{
    public static Command Of(Surroundings surroundings)
    {
        Argument<string> file = VisitArgument.File();
        Option<string?> area = VisitArgument.Area();
        Option<string> format = LayoutOptions.OneOf("--format", "How the advice is written.", "text", "json");
        var sources = new Option<bool>("--sources") { Description = "Cite the sources in full at the end (text)." };
        Option<bool> full = LayoutOptions.Full();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "advise",
            "Print the advice on a visit.",
            "weedadvisor advise visit.yaml",
            "weedadvisor advise visit.yaml --area mist-house --full --sources",
            "weedadvisor advise visit.yaml --format json > advice.json")
        {
            file, area, format, full, sources, width,
        };
        command.SetAction(parsed =>
        {
            KnowledgeBase knowledge = LabelsOption.Over(
                KnowledgeOption.Load(parsed, surroundings), parsed, parsed.GetRequiredValue(file), surroundings);
            Visit visit = VisitArgument.Read(
                parsed.GetRequiredValue(file), parsed.GetValue(area), knowledge, surroundings);
            bool json = parsed.GetValue(format) == "json";
            var layout = new TextLayout(parsed.GetValue(width), parsed.GetValue(sources), parsed.GetValue(full));
            VisitAdvice advice = Advisor.Of(knowledge).Advise(visit);
            if (json)
                JsonReport.Write(surroundings.Out, advice, knowledge);
            else
                surroundings.Out.Write(TextReport.Of(advice, knowledge, layout));
            return ExitCode.Done;
        });
        return command;
    }
}

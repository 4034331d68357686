using System.CommandLine;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Why;

namespace WeedAdvisor.Commands;

/// <summary><c>why</c>: everything for an action, against it and in its way.</summary>
internal static class WhyCommand
{
    public static Command Of(Surroundings surroundings)
    {
        Argument<string> file = VisitArgument.File();
        Argument<string> action = ActionAsked.Argument();
        Option<string?> area = VisitArgument.Area();
        var full = new Option<bool>("--full")
        {
            Description = "Every condition of every rule with what it asked and what it found.",
        };
        Option<string> format = FormatOption.Of("How it is written.");
        Option<string?> units = UnitsOption.Of();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "why",
            "Say why an action is advised, and why not: what bars it and until when, what speaks for it and against "
                + "it, what is not known, and how the figures come about; where nothing speaks for it, what "
                + "nearly does.",
            "weedadvisor why visit.yaml scrape-off-liverwort",
            "weedadvisor why visit.yaml oxadiazon --area mist-house --full"
        )
        {
            file,
            action,
            area,
            full,
            format,
            units,
            width,
        };
        command.SetAction(parsed =>
        {
            bool isWhole = parsed.GetValue(full) || FormatOption.IsWhole(parsed.GetValue(format));
            (KnowledgeBase knowledge, Visit visit) = VisitArgument.Load(
                parsed,
                file,
                area,
                isWhole ? KnowledgeScope.WithoutWorkedVisits : KnowledgeScope.ForAdvice,
                surroundings
            );
            CatalogueAction asked = ActionAsked.Find(parsed.GetRequiredValue(action), knowledge);
            VisitAdvice advice = surroundings.Compile(knowledge).Advise(visit);
            surroundings.Out.Write(
                parsed.GetValue(format) == FormatOption.Json
                    ? WhyJson.Of(advice, asked, knowledge)
                    : FormatOption.Written(
                        parsed.GetValue(format),
                        UnitsOption.Applied(
                            WhyDocument.Of(advice, asked, knowledge, isWhole),
                            parsed.GetValue(units),
                            visit,
                            knowledge
                        ),
                        parsed.GetValue(width)
                    )
            );
            return ExitCode.Done;
        });
        return command;
    }
}

using System.CommandLine;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Unlock;

namespace WeedAdvisor.Commands;

/// <summary><c>unlock</c>: what would have to change before an action is clear, barred or first.</summary>
internal static class UnlockCommand
{
    public static Command Of(Surroundings surroundings)
    {
        Argument<string> file = VisitArgument.File();
        Argument<string> action = ActionAsked.Argument();
        Option<string?> area = VisitArgument.Area();
        Option<string> format = FormatOption.Of("How it is written.");
        Option<string?> units = UnitsOption.Of();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "unlock",
            "Say what would have to change before an action is clear, is barred or comes first: the fewest answers, "
                + "what you can change told apart from what only time changes and what nothing does.",
            "weedadvisor unlock visit.yaml rice-hull-mulch",
            "weedadvisor unlock visit.yaml oxadiazon-granule --area container-yard"
        )
        {
            file,
            action,
            area,
            format,
            units,
            width,
        };
        command.SetAction(parsed =>
        {
            (KnowledgeBase knowledge, Visit visit) = VisitArgument.Load(
                parsed,
                file,
                area,
                KnowledgeScope.ForAdvice,
                surroundings
            );
            CatalogueAction asked = ActionAsked.Find(parsed.GetRequiredValue(action), knowledge);
            Advisor advisor = surroundings.Compile(knowledge);
            VisitAdvice advice = advisor.Advise(visit);
            surroundings.Out.Write(
                parsed.GetValue(format) == FormatOption.Json
                    ? UnlockJson.Of(advisor, advice, asked)
                    : FormatOption.Written(
                        parsed.GetValue(format),
                        UnitsOption.Applied(
                            UnlockDocument.Of(advisor, advice, asked),
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

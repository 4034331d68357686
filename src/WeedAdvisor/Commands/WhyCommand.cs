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
        var action = new Argument<string>("ACTION") { Description = "A practice or treatment, by id or name." };
        Option<string?> area = VisitArgument.Area();
        Option<string> format = FormatOption.Of("How it is written.");
        Option<string?> units = UnitsOption.Of();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "why",
            "Show why an action is advised, waits or is barred: rules, what they matched, sources.",
            "weedadvisor why visit.yaml scrape-off-liverwort",
            "weedadvisor why visit.yaml \"Hand-weed now\" --area mist-house"
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
            KnowledgeBase knowledge = LabelsOption.Over(
                KnowledgeOption.Load(parsed, surroundings, KnowledgeScope.ForAdvice),
                parsed,
                parsed.GetRequiredValue(file),
                surroundings
            );
            CatalogueAction asked = Find(parsed.GetRequiredValue(action), knowledge);
            Visit visit = VisitArgument.Read(
                parsed.GetRequiredValue(file),
                parsed.GetValue(area),
                knowledge,
                surroundings
            );
            VisitAdvice advice = surroundings.Compile(knowledge).Advise(visit);
            surroundings.Out.Write(
                parsed.GetValue(format) == FormatOption.Json
                    ? WhyJson.Of(advice, asked, knowledge)
                    : FormatOption.Written(
                        parsed.GetValue(format),
                        UnitsOption.Applied(
                            WhyDocument.Of(advice, asked, knowledge),
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

    private static CatalogueAction Find(string asked, KnowledgeBase knowledge)
    {
        if (knowledge.ActionOf(asked) is null && knowledge.GoneAs(asked) is { } gone)
            throw new RefusalException(ExitCode.Usage, knowledge.WithdrawnText(gone));
        CatalogueAction[] all = [.. knowledge.Practices.Values, .. knowledge.Treatments.Values];
        return knowledge.ActionOf(asked)
            ?? all.FirstOrDefault(one => one.Name.Equals(asked, StringComparison.OrdinalIgnoreCase))
            ?? throw new RefusalException(
                ExitCode.Usage,
                $"no action '{asked}'{UsageError.DidYouMean(asked, all.Select(one => one.Id))}. "
                    + $"See '{CommandLine.Name} knowledge list practices' or '... list treatments'."
            );
    }
}

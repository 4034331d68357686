using System.CommandLine;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports;

namespace WeedAdvisor.Commands;

/// <summary><c>why</c>: everything for an action, against it and in its way.</summary>
internal static class WhyCommand
{
    public static Command Of(Surroundings surroundings)
    {
        Argument<string> file = VisitArgument.File();
        var action = new Argument<string>("ACTION") { Description = "A practice or treatment, by id or name." };
        Option<string?> area = VisitArgument.Area();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "why",
            "Show why an action is advised, waits or is barred: rules, what they matched, sources.",
            "weedadvisor why visit.yaml scrape-off-liverwort",
            "weedadvisor why visit.yaml \"Hand weeding\" --area mist-house")
        {
            file, action, area, width,
        };
        command.SetAction(parsed =>
        {
            KnowledgeBase knowledge = LabelsOption.Over(
                KnowledgeOption.Load(parsed, surroundings), parsed, parsed.GetRequiredValue(file), surroundings);
            CatalogueAction asked = Find(parsed.GetRequiredValue(action), knowledge);
            Visit visit = VisitArgument.Read(
                parsed.GetRequiredValue(file), parsed.GetValue(area), knowledge, surroundings);
            surroundings.Out.Write(Text(knowledge, visit, asked, parsed.GetValue(width)));
            return ExitCode.Done;
        });
        return command;
    }

    private static string Text(KnowledgeBase knowledge, Visit visit, CatalogueAction action, int width)
    {
        VisitAdvice advice = Advisor.Of(knowledge).Advise(visit);
        return string.Join('\n', advice.Areas.Select(area => WhyText.Of(advice, area, action, knowledge, width)));
    }

    private static CatalogueAction Find(string asked, KnowledgeBase knowledge)
    {
        CatalogueAction[] all = [.. knowledge.Practices.Values, .. knowledge.Treatments.Values];
        return knowledge.ActionOf(asked)
            ?? all.FirstOrDefault(one => one.Name.Equals(asked, StringComparison.OrdinalIgnoreCase))
            ?? throw new RefusalException(
                ExitCode.Usage,
                $"no action '{asked}'{UsageError.DidYouMean(asked, all.Select(one => one.Id))}. "
                + $"See '{CommandLine.Name} knowledge list practices' or '... list treatments'.");
    }
}

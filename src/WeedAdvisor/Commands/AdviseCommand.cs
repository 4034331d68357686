using System.CommandLine;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;

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
            "weedadvisor advise visit.yaml --format json > advice.json"
        )
        {
            file,
            area,
            format,
            units,
            full,
            sources,
            width,
        };
        command.SetAction(parsed =>
        {
            KnowledgeScope scope = parsed.GetValue(sources)
                ? KnowledgeScope.WithoutWorkedVisits
                : KnowledgeScope.ForAdvice;
            (KnowledgeBase knowledge, Visit visit) = VisitArgument.Load(parsed, file, area, scope, surroundings);
            Advisor advisor = surroundings.Compile(knowledge);
            switch (parsed.GetValue(format))
            {
                case FormatOption.Json:
                    JsonReport.Write(surroundings.Out, advisor.WithOutcomes(advisor.Advise(visit)), knowledge);
                    break;
                case FormatOption.Text or null:
                    AdviceInTurn.Write(
                        surroundings.Out,
                        visit,
                        visit.Areas.Length > QuestionOutcomes.MostAreas
                            ? advisor.AdviseInTurn(visit)
                            : [advisor.WithOutcomes(advisor.Advise(visit)).Areas],
                        knowledge,
                        parsed.GetValue(full),
                        parsed.GetValue(sources),
                        parsed.GetValue(width),
                        UnitsWords.Find(parsed.GetValue(units)) ?? VisitUnits.Of(visit, knowledge)
                    );
                    break;
                case var page:
                    bool isWhole = parsed.GetValue(full) || FormatOption.IsWhole(page);
                    Document document = AdviceDocument.Of(
                        advisor.WithOutcomes(advisor.Advise(visit)),
                        knowledge,
                        isWhole,
                        parsed.GetValue(sources)
                    );
                    surroundings.Out.Write(
                        FormatOption.Written(
                            page,
                            UnitsOption.Applied(document, parsed.GetValue(units), visit, knowledge),
                            parsed.GetValue(width)
                        )
                    );
                    break;
            }

            return ExitCode.Done;
        });
        return command;
    }
}

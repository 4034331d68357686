using System.Collections.Immutable;
using System.CommandLine;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Reports.Season;

namespace WeedAdvisor.Commands.Season;

/// <summary>
/// <c>season</c>: what goes on when through a year, and how far from the best it can be.
/// </summary>
internal static class SeasonCommand
{
    private const string Calendar = "ics";

    public static Command Of(Surroundings surroundings)
    {
        Argument<string> file = VisitArgument.File();
        Option<string?> area = VisitArgument.Area();
        var options = new SeasonOptions();
        Option<string> format = FormatOption.Of("How it is written.", Calendar);
        Option<bool> full = LayoutOptions.Full();
        Option<string?> units = UnitsOption.Of();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "season",
            "Plan a year: which preventives go on in which week, and how far from the best it can be.",
            "weedadvisor season visit.yaml --area container-yard",
            "weedadvisor season visit.yaml --area container-yard --applications 3 --closed "
                + "2026-07,2026-12-20..2027-01-04",
            "weedadvisor season visit.yaml --area container-yard --budget 80 --rotate 2 --without oryzalin-spray",
            "weedadvisor season visit.yaml --area container-yard --format ics > year.ics"
        )
        {
            file,
            area,
        };
        options.AddTo(command);
        var years = new Option<bool>("--year-after")
        {
            Description = "Plan the year after as well: it begins with what this year ended with.",
        };
        command.Add(years);
        command.Add(format);
        command.Add(units);
        command.Add(full);
        command.Add(width);
        command.SetAction(parsed =>
        {
            (KnowledgeBase knowledge, Visit visit) = VisitArgument.Load(
                parsed,
                file,
                area,
                KnowledgeScope.WithoutWorkedVisits,
                surroundings
            );
            SeasonReport report = Report(
                visit,
                surroundings.Compile(knowledge),
                options.Read(parsed, visit, knowledge, surroundings),
                parsed.GetValue(years)
            );
            surroundings.Out.Write(
                parsed.GetValue(format) switch
                {
                    FormatOption.Json => SeasonJson.Of(report),
                    Calendar => SeasonCalendar.Of(report),
                    var written => FormatOption.Written(
                        written,
                        UnitsOption.Applied(
                            SeasonDocument.Of(report, parsed.GetValue(full)),
                            parsed.GetValue(units),
                            visit,
                            knowledge
                        ),
                        parsed.GetValue(width),
                        surroundings.IsColoured
                    ),
                }
            );
            bool isPlanned = report.Areas.Any(one => one.Plan?.Plan is not null);
            return isPlanned ? ExitCode.Done : ExitCode.Negative;
        });
        return command;
    }

    private static SeasonReport Report(Visit visit, Advisor advisor, SeasonRequest request, bool withYearAfter)
    {
        KnowledgeBase knowledge = advisor.Knowledge;
        ImmutableArray<AreaSeason> areas =
        [
            .. visit.Areas.Select(
                (area, index) =>
                {
                    AreaCase found = AreaCase.Of(visit, index);
                    Outcome<SeasonCase, string> season = SeasonCase.Of(advisor, found, request);
                    if (!season.IsGood)
                        return new AreaSeason(area, null, season.Refusals);
                    YearPlan plan = SeasonPlanner.Full(season.Value, knowledge);
                    YearPlan? after =
                        withYearAfter && plan.Plan is not null && NextYear.Of(advisor, found, plan).Value is { } next
                            ? SeasonPlanner.Full(next, knowledge)
                            : null;
                    return new AreaSeason(area, plan, [], after);
                }
            ),
        ];
        // What cannot be planned anywhere is no report.
        if (areas.All(area => area.Plan is null))
            throw new RefusalException(
                ExitCode.Usage,
                string.Join(' ', areas.SelectMany(area => area.Refusals).Distinct())
            );
        return new SeasonReport(visit, knowledge, areas);
    }
}

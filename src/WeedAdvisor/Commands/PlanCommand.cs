using System.Collections.Immutable;
using System.CommandLine;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Nursery;
using WeedAdvisor.Reports.Plan;
using WeedAdvisor.Reports.Robust;

namespace WeedAdvisor.Commands;

/// <summary><c>plan</c>: the whole year of an area chosen together: rounds, covers, preventives.</summary>
internal static class PlanCommand
{
    private const string Calendar = "ics";
    private const int MostHours = 1_000_000,
        MostDollars = 1_000_000_000,
        UsualAnswers = 8,
        MostAnswers = 200,
        MostSeconds = 3600;

    public static Command Of(Surroundings surroundings)
    {
        Argument<string> file = VisitArgument.File();
        Option<string?> area = VisitArgument.Area();
        Option<decimal?> hours = NumberOptions.Number(
            "--hours",
            "N",
            "The most hours of work in any week, for all pots of the area, or of all areas together.",
            0,
            MostHours
        );
        Option<decimal?> budget = NumberOptions.Number(
            "--budget",
            "USD",
            "The most to spend on materials and tools in the year, for the area or all areas together.",
            0,
            MostDollars
        );
        Option<int?> pots = NumberOptions.Whole(
            "--pots",
            "N",
            "Pots of each area (else those answered, else the usual number).",
            1,
            YearCase.MostPots
        );
        Option<decimal?> wage = NumberOptions.Number(
            "--wage",
            "USD",
            "Cost of an hour (else the visit's answer, else the price list).",
            0,
            Wage.Highest
        );
        Option<string?> with = Ids("--with", "Actions that must be in the plan, by id.");
        Option<string?> without = Ids("--without", "Actions that must not be in it, by id.");
        Option<DateOnly?> from = NumberOptions.Day("--from", "The first day of the plan (else the day of the visit).");
        Option<int> answers = NumberOptions.Whole(
            "--answers",
            "N",
            "Answers to open questions that are tried in each area, to tell which would change the plan most.",
            0,
            MostAnswers,
            UsualAnswers
        );
        Option<int?> seconds = NumberOptions.Whole(
            "--seconds",
            "N",
            "Stops each area's search after so long and tells how far it is from proven.",
            1,
            MostSeconds
        );
        Option<string?> prices = PricesOption.Of();
        RobustOptions robust = new();
        Option<string> format = FormatOption.Of("How it is written.", Calendar);
        Option<string?> units = UnitsOption.Of();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "plan",
            "Plan a whole year together, for one area or for all that share hours: rounds, covers, preventives.",
            "weedadvisor plan visit.yaml --hours 40",
            "weedadvisor plan visit.yaml --area container-yard",
            "weedadvisor plan visit.yaml --area container-yard --pots 500 --hours 4",
            "weedadvisor plan visit.yaml --area container-yard --budget 300 --without bark-mulch",
            "weedadvisor plan visit.yaml --area container-yard --robust",
            "weedadvisor plan visit.yaml --area container-yard --format ics > year.ics"
        )
        {
            file,
            area,
            hours,
            budget,
            pots,
            wage,
            with,
            without,
            from,
            answers,
            seconds,
            prices,
            robust.Robust,
            robust.Draws,
            robust.Seed,
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
                KnowledgeScope.WithoutWorkedVisits,
                surroundings
            );
            var request = new PlanRequest
            {
                HoursPerWeek = parsed.GetValue(hours),
                BudgetUsd = parsed.GetValue(budget),
                Pots = parsed.GetValue(pots),
                WageUsdPerHour = parsed.GetValue(wage),
                With = Split(parsed.GetValue(with)),
                Without = Split(parsed.GetValue(without)),
                From = parsed.GetValue(from),
                Prices = PricesOption.Read(parsed.GetValue(prices), knowledge, surroundings),
            };
            // Figures are moved, and days are written, area by area.
            if (parsed.GetValue(area) is null && !robust.IsAsked(parsed) && parsed.GetValue(format) != Calendar)
            {
                NurseryReport nursery = NurseryRun.Of(
                    visit,
                    parsed.GetRequiredValue(file),
                    knowledge,
                    request,
                    surroundings
                );
                surroundings.Out.Write(
                    parsed.GetValue(format) == FormatOption.Json
                        ? NurseryJson.Of(nursery)
                        : FormatOption.Written(
                            parsed.GetValue(format),
                            UnitsOption.Applied(NurseryDocument.Of(nursery), parsed.GetValue(units), visit, knowledge),
                            parsed.GetValue(width)
                        )
                );
                return ExitCode.Done;
            }

            using var watch = PlanWatch.Start(surroundings, parsed.GetValue(seconds));
            PlanReport report = Report(visit, knowledge, request, parsed.GetValue(answers), watch, surroundings);
            RobustReport? moved = robust.Of(parsed, report);
            surroundings.Out.Write(
                parsed.GetValue(format) switch
                {
                    FormatOption.Json => moved is null ? PlanJson.Of(report) : RobustJson.Of(moved),
                    Calendar => PlanCalendar.Of(report),
                    var written => FormatOption.Written(
                        written,
                        UnitsOption.Applied(
                            moved is null ? PlanDocument.Of(report) : RobustDocument.Of(moved),
                            parsed.GetValue(units),
                            visit,
                            knowledge
                        ),
                        parsed.GetValue(width),
                        surroundings.IsColoured
                    ),
                }
            );
            return report.Areas.Any(one => one.Plan?.Best is not null) ? ExitCode.Done : ExitCode.Negative;
        });
        return command;
    }

    private static Option<string?> Ids(string name, string description) =>
        new(name) { Description = description, HelpName = "IDS" };

    private static ImmutableArray<string> Split(string? ids) =>
        ids is null
            ? []
            : [.. ids.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries).Distinct()];

    private static PlanReport Report(
        Visit visit,
        KnowledgeBase knowledge,
        PlanRequest request,
        int answers,
        PlanWatch watch,
        Surroundings surroundings
    )
    {
        Advisor advisor = surroundings.Compile(knowledge);
        ImmutableArray<AreaPlanned> areas =
        [
            .. visit.Areas.Select(
                (area, index) =>
                {
                    AreaCase found = AreaCase.Of(visit, index);
                    Outcome<PlanCase, string> asked = PlanCase.Of(advisor, found, request);
                    if (!asked.IsGood)
                        return new AreaPlanned(area, null, asked.Refusals);
                    watch.Begin(area.Name);
                    AreaPlan plan = PlanSearch.Of(asked.Value, new PlanEffort { Progress = watch }, watch.Stop);
                    watch.Trying();
                    return new AreaPlanned(area, plan, [])
                    {
                        Questions = PlanAnswers.Of(advisor, found, plan, answers, watch.StopAll),
                    };
                }
            ),
        ];
        watch.End();
        // What cannot be planned anywhere is no report.
        return areas.Any(area => area.Plan is not null)
            ? new PlanReport(visit, knowledge, areas)
            : throw new RefusalException(ExitCode.Usage, [.. areas.SelectMany(area => area.Refusals).Distinct()]);
    }
}

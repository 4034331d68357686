using System.Collections.Immutable;
using System.CommandLine;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rounds;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Weeding;

namespace WeedAdvisor.Commands.Weeding;

/// <summary><c>weeding</c>: hours and cost of hand weeding at several intervals, with the working.</summary>
internal static class WeedingCommand
{
    public static Command Of(Surroundings surroundings)
    {
        Argument<string> file = VisitArgument.File();
        Option<string?> area = VisitArgument.Area();
        Option<int?> pots = NumberOptions.Whole(
            "--pots",
            "N",
            "Pots in each area (else those answered, else the usual number).",
            1,
            YearCase.MostPots
        );
        Option<int[]> intervals = NumberOptions.Several(
            "--intervals",
            "WEEKS",
            $"Weeks between rounds to compare ({string.Join(',', IntervalComparison.UsualIntervals)} when not given).",
            1,
            WeedingPlan.LongestInterval
        );
        Option<decimal?> wage = NumberOptions.Number(
            "--wage",
            "USD",
            "Cost of an hour (else the visit's answer, else the price list).",
            0,
            Wage.Highest
        );
        Option<decimal?> missed = NumberOptions.Number(
            "--miss",
            "PERCENT",
            "Weeds that a round passes over, of a hundred.",
            0,
            100
        );
        Option<decimal?> control = NumberOptions.Number(
            "--control",
            "PERCENT",
            "Seedlings that your treatments stop, of a hundred.",
            0,
            100
        );
        Option<int> weeks = NumberOptions.Whole(
            "--weeks",
            "N",
            "Weeks looked at.",
            1,
            WeedingPlan.MostWeeks,
            usual: WeedTraits.WeeksInYear
        );
        var weeds = new Option<string?>("--weeds")
        {
            Description = "Count with these weeds, not with those of the visit.",
            HelpName = "IDS",
        };
        var uncertain = new Option<bool>("--uncertain") { Description = "Show how far the figures may be off." };
        Option<int> seed = NumberOptions.Whole(
            "--seed",
            "N",
            "Seed of the draws for --uncertain.",
            0,
            int.MaxValue,
            usual: 1
        );
        Option<string> format = FormatOption.Of("How the figures are written.");
        Option<string?> units = UnitsOption.Of();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "weeding",
            "Compare weeding by hand at several intervals: hours, cost, seeds shed, with the working.",
            "weedadvisor weeding visit.yaml",
            "weedadvisor weeding visit.yaml --area container-yard --pots 20000 --control 70",
            "weedadvisor weeding visit.yaml --weeds spurge-spotted,bittercress-hairy",
            "weedadvisor weeding visit.yaml --wage 22 --intervals 1,2,4 --uncertain"
        )
        {
            file,
            area,
            pots,
            intervals,
            wage,
            missed,
            control,
            weeks,
            weeds,
            uncertain,
            seed,
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
            int[] compared = parsed.GetValue(intervals) is { Length: > 0 } given
                ? given
                : [.. IntervalComparison.UsualIntervals];
            var terms = new YearTerms(parsed.GetValue(wage), parsed.GetValue(pots))
            {
                Missed = (double?)parsed.GetValue(missed) / 100,
                TodayControl = (double?)parsed.GetValue(control) / 100,
                Weeks = parsed.GetValue(weeks),
                Weeds = WeedsOf(parsed.GetValue(weeds), knowledge),
            };
            ulong? from = parsed.GetValue(uncertain) ? (ulong)parsed.GetValue(seed) : null;
            WeedingReport report = Worked(WeedingReport.Of(visit, knowledge, terms, compared, from));
            surroundings.Out.Write(
                parsed.GetValue(format) == FormatOption.Json
                    ? WeedingJson.Of(report, knowledge)
                    : FormatOption.Written(
                        parsed.GetValue(format),
                        UnitsOption.Applied(
                            WeedingDocument.Of(report, knowledge.Stamp),
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

    // An area without pots is told as such; areas with pots of which none gives figures are a refusal.
    private static WeedingReport Worked(WeedingReport report)
    {
        AreaWeedingReport[] withPots = [.. report.Areas.Where(area => area.HasPots)];
        if (withPots.Length == 0 || withPots.Any(area => area.Compared is not null))
            return report;
        throw new RefusalException(
            ExitCode.Usage,
            [.. withPots.SelectMany(area => area.Refusals.Select(refusal => $"area '{area.Area.Id}': {refusal}"))]
        );
    }

    private static ImmutableArray<string> WeedsOf(string? given, KnowledgeBase knowledge)
    {
        if (given is null)
            return [];
        string[] ids = given.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (ids.Length == 0)
            throw new RefusalException(
                ExitCode.Usage,
                "--weeds names no weed. See 'weedadvisor knowledge list weeds'."
            );
        if (ids.FirstOrDefault(id => !knowledge.Weeds.ContainsKey(id)) is { } unknown)
        {
            throw new RefusalException(
                ExitCode.Usage,
                $"no weed '{unknown}'{UsageError.DidYouMean(unknown, knowledge.Weeds.Keys)}. See 'weedadvisor "
                    + $"knowledge list weeds'."
            );
        }

        return [.. ids];
    }
}

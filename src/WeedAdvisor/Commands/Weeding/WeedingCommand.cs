using System.Collections.Immutable;
using System.CommandLine;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Weeding;

namespace WeedAdvisor.Commands.Weeding;

/// <summary><c>weeding</c>: hours and cost of hand weeding at several intervals, with the working.</summary>
internal static class WeedingCommand
{
    private const int MostPots = 100_000_000;

    public static Command Of(Surroundings surroundings)
    {
        Argument<string> file = VisitArgument.File();
        Option<string?> area = VisitArgument.Area();
        Option<string?> pots = Text("--pots", "Pots in each area; 1000 when not given.", "N");
        Option<string?> intervals = Text("--intervals", "Weeks between rounds to compare; 1,2,3,4,6,8 when not given.", "WEEKS");
        Option<string?> wage = Text("--wage", "Cost of an hour; else the visit's answer, else the price list.", "USD");
        Option<string?> missed = Text("--miss", "Weeds that a round passes over, of a hundred.", "PERCENT");
        Option<string?> control = Text("--control", "Seedlings that your treatments stop, of a hundred.", "PERCENT");
        Option<string?> weeks = Text("--weeks", "Weeks looked at; 52 when not given.", "N");
        Option<string?> weeds = Text("--weeds", "Count with these weeds, not with those of the visit.", "IDS");
        var uncertain = new Option<bool>("--uncertain") { Description = "Show how far the figures may be off." };
        Option<string?> seed = Text("--seed", "Seed of the draws for --uncertain; 1 when not given.", "N");
        Option<string> format = FormatOption.Of("How the figures are written.");
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "weeding",
            "Compare weeding by hand at several intervals: hours, cost, seeds shed, with the working.",
            "weedadvisor weeding visit.yaml",
            "weedadvisor weeding visit.yaml --area container-yard --pots 20000 --control 70",
            "weedadvisor weeding visit.yaml --weeds spurge-spotted,bittercress-hairy",
            "weedadvisor weeding visit.yaml --wage 22 --intervals 1,2,4 --uncertain")
        {
            file, area, pots, intervals, wage, missed, control, weeks, weeds, uncertain, seed, format, width,
        };
        command.SetAction(parsed =>
        {
            KnowledgeBase knowledge = LabelsOption.Over(
                KnowledgeOption.Load(parsed, surroundings), parsed, parsed.GetRequiredValue(file), surroundings);
            int[] compared = GivenNumbers.List("--intervals", parsed.GetValue(intervals), 1, WeedingPlan.LongestInterval)
                ?? [.. IntervalComparison.UsualIntervals];
            var wishes = new WeedingWishes
            {
                WageUsdPerHour = GivenNumbers.Number("--wage", parsed.GetValue(wage), 0, 10_000),
                Missed = GivenNumbers.Number("--miss", parsed.GetValue(missed), 0, 100) / 100,
                Control = GivenNumbers.Number("--control", parsed.GetValue(control), 0, 100) / 100 ?? 0,
                Weeks = GivenNumbers.Whole("--weeks", parsed.GetValue(weeks), 1, WeedingPlan.MostWeeks) ?? WeedTraits.WeeksInYear,
                Weeds = WeedsOf(parsed.GetValue(weeds), knowledge),
            };
            int count = GivenNumbers.Whole("--pots", parsed.GetValue(pots), 1, MostPots) ?? 1000;
            int from = GivenNumbers.Whole("--seed", parsed.GetValue(seed), 0, int.MaxValue) ?? 1;
            Visit visit = VisitArgument.Read(parsed.GetRequiredValue(file), parsed.GetValue(area), knowledge, surroundings);
            WeedingReport report = Worked(
                WeedingReport.Of(visit, knowledge, wishes, compared, count, parsed.GetValue(uncertain) ? (ulong)from : null));
            surroundings.Out.Write(parsed.GetValue(format) == FormatOption.Json
                ? WeedingJson.Of(report, knowledge)
                : FormatOption.Written(parsed.GetValue(format), WeedingDocument.Of(report), parsed.GetValue(width)));
            return ExitCode.Done;
        });
        return command;
    }

    // An area without pots is told as such; areas with pots of which none gives figures are a refusal.
    private static WeedingReport Worked(WeedingOutcome<WeedingReport> outcome)
    {
        if (!outcome.IsGood)
            throw new RefusalException(ExitCode.Usage, outcome.Refusals);
        AreaWeedingReport[] withPots = [.. outcome.Value.Areas.Where(area => area.HasPots)];
        if (withPots.Length == 0 || withPots.Any(area => area.Compared is not null))
            return outcome.Value;
        throw new RefusalException(
            ExitCode.Usage,
            [.. withPots.SelectMany(area => area.Refusals.Select(refusal => $"area '{area.Area.Id}': {refusal}"))]);
    }

    private static ImmutableArray<string> WeedsOf(string? given, KnowledgeBase knowledge)
    {
        if (given is null)
            return [];
        string[] ids = given.Split(',', StringSplitOptions.TrimEntries | StringSplitOptions.RemoveEmptyEntries);
        if (ids.Length == 0)
            throw new RefusalException(ExitCode.Usage, "--weeds names no weed. See 'weedadvisor knowledge list weeds'.");
        if (ids.FirstOrDefault(id => !knowledge.Weeds.ContainsKey(id)) is { } unknown)
        {
            throw new RefusalException(
                ExitCode.Usage,
                $"no weed '{unknown}'{UsageError.DidYouMean(unknown, knowledge.Weeds.Keys)}. See 'weedadvisor knowledge list weeds'.");
        }

        return [.. ids];
    }

    private static Option<string?> Text(string name, string description, string help) => new(name)
    {
        Description = description,
        HelpName = help,
    };
}

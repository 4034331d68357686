using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Nursery;
using WeedAdvisor.Planning.Plan;

namespace WeedAdvisor.Reports.Nursery;

/// <summary>Commands that show more of an area.</summary>
internal static class Commands
{
    /// <summary>The advice on an area.</summary>
    public static string Advise(NurseryReport report, VisitArea area) =>
        $"weedadvisor advise {Quoted(report.File)} --area {area.Id}";

    /// <summary>The plan of an area with its share, all wishes with it.</summary>
    public static string Plan(NurseryReport report, SharedArea area)
    {
        PlanRequest asked = report.Plan.Request;
        string command = $"weedadvisor plan {Quoted(report.File)} --area {area.Area.Id}";
        if (area.GivenUpUsd > 0)
        {
            command += $" --hours {NurseryWords.AskedHours(area.Share.HoursPerWeek)}";
            if (asked.BudgetUsd is not null)
                command += FormattableString.Invariant(
                    $" --budget {Math.Ceiling(area.Share.SpentUsd * 100) / 100:0.##}"
                );
        }

        if (asked.Pots is { } pots)
            command += FormattableString.Invariant($" --pots {pots}");
        if (asked.WageUsdPerHour is { } wage)
            command += FormattableString.Invariant($" --wage {wage}");
        if (asked.From is { } from)
            command += FormattableString.Invariant($" --from {from:yyyy-MM-dd}");
        if (!asked.With.IsEmpty)
            command += $" --with {string.Join(',', asked.With)}";
        if (!asked.Without.IsEmpty)
            command += $" --without {string.Join(',', asked.Without)}";
        return command;
    }

    private static string Quoted(string file) =>
        file == "-" ? "VISIT"
        : file.Any(char.IsWhiteSpace) ? $"\"{file}\""
        : file;
}

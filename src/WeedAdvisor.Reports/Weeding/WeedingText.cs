using System.Globalization;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Weeding;

/// <summary>The weeding figures of a visit as text.</summary>
public static class WeedingText
{
    /// <summary>Every area: the table of intervals, the present rounds, the working of one, what it rests on.</summary>
    public static string Of(WeedingReport report, int width)
    {
        var page = new Page(width);
        page.Write(0, $"Hand weeding, {report.Visit.Title ?? report.Visit.Id}, from {Figures.LongDay(report.Visit.Date)}");
        page.Write(0, $"Figures are for {Figures.Count(report.Pots, "pot", "pots")} in each area.");
        foreach (AreaWeedingReport area in report.Areas)
        {
            page.Gap();
            page.Rule('=');
            page.Write(0, $"{area.Area.Name} ({area.Area.Id})");
            foreach (string refusal in area.Refusals)
                page.Write(2, refusal);
            if (area is { Weeding: { } weeding, Compared: { } compared })
                WriteArea(page, report, area, weeding, compared);
        }

        return page.ToString();
    }

    private static void WriteArea(
        Page page, WeedingReport report, AreaWeedingReport area, AreaWeeding weeding, IntervalComparison compared)
    {
        IntervalTable.Write(page, report, area, compared);
        Saving(page, report, area, compared);
        Wages(page, compared);
        Bands(page, report, area);
        Rounds(page, report, area, compared);
        RoundWorking.Write(page, report, area.Present ?? compared.Cheapest, weeding);
        page.Heading("What this rests on");
        foreach (string line in weeding.Assumptions)
            page.Write(2, "- ", line);
    }

    private static void Saving(Page page, WeedingReport report, AreaWeedingReport area, IntervalComparison compared)
    {
        WeedingSeason best = compared.Cheapest;
        if (area.Present is not { } now)
        {
            page.Write(2, "How often you weed now is not known. Answer the question 'weeding-interval' to see what a change saves.");
            return;
        }

        if (now.IntervalWeeks == best.IntervalWeeks)
        {
            page.Write(2, $"You weed {Every(now)}, and that is the cheapest of these.");
            return;
        }

        double hours = (now.Hours - best.Hours) * report.Scale;
        double usd = (now.CostUsd(compared.WageUsdPerHour) - best.CostUsd(compared.WageUsdPerHour)) * report.Scale;
        page.Write(
            2,
            $"You weed {Every(now)}. Weeding {Every(best)} "
            + (hours >= 0 ? $"saves {Hours(hours)} and {Usd(usd)}." : $"takes {Hours(-hours)} more but saves {Usd(usd)}."));
        page.Write(2, $"Why: {Every(now)}, {Why(now, report)}; {Every(best)}, {Why(best, report)}.");
    }

    private static string Why(WeedingSeason season, WeedingReport report)
    {
        double handled = season.Pulled + season.Standing;
        double seconds = handled == 0 ? 0 : season.PullingHours * 3600 / handled;
        return $"{Whole(season.Weeds.Sum(weed => weed.Emerged) * report.Scale)} weeds come up and each takes "
            + $"{seconds.ToString("0.0", CultureInfo.InvariantCulture)} seconds to pull";
    }

    private static void Wages(Page page, IntervalComparison compared) => page.Write(2, CheapestAt(compared));

    /// <summary>Which interval is the cheapest, and from which to which wage, in a sentence.</summary>
    public static string CheapestAt(IntervalComparison compared)
    {
        // The other changes lie at wages that nobody is asking about; the JSON has them all.
        double? from = compared.WageChanges.LastOrDefault(change => change.WageUsdPerHour <= compared.WageUsdPerHour)?.WageUsdPerHour;
        double? to = compared.WageChanges.FirstOrDefault(change => change.WageUsdPerHour > compared.WageUsdPerHour)?.WageUsdPerHour;
        string wages = (from, to) switch
        {
            (null, null) => "at any wage",
            ({ } low, null) => $"at any wage from {Usd(low)} an hour up",
            (null, { } high) => $"at any wage up to {Usd(high)} an hour",
            ({ } low, { } high) => $"at wages from {Usd(low)} to {Usd(high)} an hour",
        };
        return $"{Figures.Sentence(Every(compared.Cheapest))} is the cheapest {wages}.";
    }

    private static void Bands(Page page, WeedingReport report, AreaWeedingReport area)
    {
        if (area.Bands.IsEmpty)
            return;
        page.Heading("If the working values are off");
        page.Write(2, "Nine draws in ten lie above the first number, half above the second, one in ten above the third.");
        foreach (UncertainInterval band in area.Bands)
        {
            page.Write(
                2,
                $"{Weeks(band.IntervalWeeks)}: ",
                $"{Three(band.Hours, report.Scale, Hours)}; {Three(band.CostUsd, report.Scale, Usd)}; "
                + $"cheapest in {Figures.Percent(band.CheapestShare)} of the draws");
        }
    }

    private static void Rounds(Page page, WeedingReport report, AreaWeedingReport area, IntervalComparison compared)
    {
        WeedingSeason season = area.Present ?? compared.Cheapest;
        page.Heading($"Hours of each round, {Every(season)}");
        page.Write(2, string.Join("; ", season.Rounds.Select(round =>
            $"{Figures.Day(report.Visit.Date.AddDays(7 * round.Week))} {Hours(round.Hours * report.Scale)}"))
            + $"; clearing at the end {Hours(season.Clearing.Hours * report.Scale)}");
    }

    internal static string Every(WeedingSeason season) => Weeks(season.IntervalWeeks);

    internal static string Weeks(int weeks) => weeks == 1 ? "every week" : $"every {weeks} weeks";

    internal static string Hours(double hours) => hours.ToString("#,0.0", CultureInfo.InvariantCulture) + " h";

    internal static string Usd(double usd) => Figures.Dollars((decimal)Math.Round(usd, 2));

    internal static string Whole(double count) => Math.Round(count).ToString("#,0", CultureInfo.InvariantCulture);

    private static string Three(DrawnBand band, double scale, Func<double, string> write) =>
        $"{write(band.Low * scale)}, {write(band.Middle * scale)}, {write(band.High * scale)}";
}

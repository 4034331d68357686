using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.InHand;

/// <summary>What a chemical does on the weeds of an area, by its published ratings.</summary>
internal static class OnWeeds
{
    private const int MostWeeds = 3;
    private const string Germinating = "germinating",
        Emerged = "emerged";

    private static readonly ImmutableArray<string> s_grades = ["good", "fair", "poor", "none"];

    /// <summary>A sentence or two; empty where no weed is known.</summary>
    public static string Of(Names names, AreaAdvice area, Treatment use)
    {
        string[] weeds =
        [
            .. (area.Reading.SeenOrToCome ?? [])
                .OrderByDescending(seen => seen.IsUp == true)
                .ThenByDescending(seen => seen.CoverOfAreaPercent ?? seen.PotsPercent ?? 0)
                .Select(seen => seen.Weed)
                .Distinct(StringComparer.Ordinal),
        ];
        if (weeds.Length == 0)
            return "";
        string?[] grades = [.. weeds.Select(weed => names.Grade(use, weed, area.Area))];
        string[] said =
        [
            .. s_grades
                .Select(grade => (Word: Word(grade), Weeds: On(names, weeds, grades, grade)))
                .Append((Word: "no rating published on", Weeds: On(names, weeds, grades, null)))
                .Where(one => one.Weeds.Length > 0)
                .Select(one => $"{one.Word} {one.Weeds}"),
        ];
        return $"{Scope(area, use)}{string.Join("; ", said)}.";
    }

    private static string On(Names names, string[] weeds, string?[] grades, string? grade)
    {
        string[] these = [.. weeds.Where((_, at) => grades[at] == grade).Select(names.Weed)];
        return these.Length <= MostWeeds + 1
            ? Listing.And(these)
            : string.Join(", ", these.Take(MostWeeds))
                + $" and {Figures.Count(these.Length - MostWeeds, "other", "others")}";
    }

    private static string Word(string grade) =>
        grade switch
        {
            "none" => "does nothing on",
            _ => $"{grade} on",
        };

    // A granule rated good on a weed does nothing to the plants of it that stand.
    private static string Scope(AreaAdvice area, Treatment use) =>
        use.ActsOn.Contains(Germinating)
        && !use.ActsOn.Contains(Emerged)
        && (area.Area.Weeds ?? []).Any(seen => seen.IsUp == true)
            ? "It stops seed, nothing that stands: "
            : "On the weeds here: ";
}

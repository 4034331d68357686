using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Advise.InHand;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>
/// How likely a grower reaches for a chemical in an area: for what is rated well on its weeds, and for the group that
/// the place brings to mind. The weights are working values of this program (common practice, no source).
/// </summary>
internal static class Reach
{
    private const double Good = 4;
    private const double Fair = 1;
    private const double OfTheMainWeed = 1.5;
    private const double OfWhatComes = 0.4;
    private const double BroughtToMind = 4;
    private const double ForEachOtherActive = 1;
    private const double OfAnotherPlace = 3;
    private const double Least = 0.1;
    private const string Current = "current",
        Germinating = "germinating",
        Emerged = "emerged";

    /// <summary>How likely; 0 or less for what nobody reaches for here.</summary>
    public static double Of(Names names, AreaAdvice area, BarredChemical chemical)
    {
        if (names.Treatment(chemical.Action) is not { Status: Current } use)
            return 0;
        WeedSeen[] up =
        [
            .. (area.Area.Weeds ?? [])
                .Where(seen => seen.IsUp != false)
                .DistinctBy(seen => seen.Weed, StringComparer.Ordinal),
        ];
        string? main = area.Reading.Standing.Main;
        double onStanding = up.Select(seen =>
                Grade(names, area, use, seen.Weed) * (seen.Weed == main ? OfTheMainWeed : 1)
            )
            .DefaultIfEmpty(0)
            .Max();
        if (!use.ActsOn.Contains(Emerged))
            onStanding *= OfWhatComes;
        double onComing = use.ActsOn.Contains(Germinating)
            ? area.Reading.Coming.Weeds.Select(weed => Grade(names, area, use, weed.Weed)).DefaultIfEmpty(0).Max()
                * (up.Length == 0 ? 1 : OfWhatComes)
            : 0;
        double rated = onStanding + onComing;
        bool isBroughtToMind = up.Length > 0 && IsBroughtToMind(names, area, use, up, chemical.Tier);
        return rated == 0 && !isBroughtToMind
            ? 0
            : Math.Max(
                Least,
                rated
                    + (isBroughtToMind ? BroughtToMind : 0)
                    - (chemical.IsOfAnotherPlace ? OfAnotherPlace : 0)
                    - (ForEachOtherActive * (use.Actives.Length - 1))
            );
    }

    private static double Grade(Names names, AreaAdvice area, Treatment use, string weed) =>
        names.Grade(use, weed, area.Area) switch
        {
            "good" => Good,
            "fair" => Fair,
            _ => 0,
        };

    // Grass among a crop: what kills grass. Broad leaves where no pots stand, or where drift and vapour are the bar:
    // what works like a hormone. Where no pots stand: what takes the whole plant.
    private static bool IsBroughtToMind(Names names, AreaAdvice area, Treatment use, WeedSeen[] up, BarTier tier)
    {
        ImmutableHashSet<string> kinds = [.. up.Select(seen => names.KindOfWeed(seen.Weed)).OfType<string>()];
        return use.Role switch
        {
            "grass-killer" => kinds.Contains("grass"),
            "broadleaf-killer" => use.Actives.Any(active => active.SiteOfAction == "auxin-mimic")
                && (!area.Reading.HasPots || tier is BarTier.Vapour or BarTier.WaterAndPeople)
                && !kinds.IsSubsetOf(["grass", "sedge", "bryophyte", "alga"]),
            _ => use.Actives is [{ SiteOfAction: "epsp-synthase" }] && !area.Reading.HasPots,
        };
    }
}

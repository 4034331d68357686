using System.Globalization;
using WeedAdvisor.Inference.Identify;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports;

/// <summary>Which weeds an unknown one may be, as text.</summary>
public static class IdentifyText
{
    private const int MostInFull = 5, MostNamed = 12, MostNear = 4;

    /// <summary>The weeds that fit, what to look at next, and what settles it.</summary>
    public static string Of(Identification found, FeatureList features, int width)
    {
        var page = new Page(width);
        Looked(page, "Seen: ", found.Sighting.Seen, features);
        Looked(page, "Not there: ", found.Sighting.Absent, features);
        Looked(page, "Could not tell: ", found.Sighting.Unsure, features);
        WeedFit[] fitting = [.. found.Fits.Where(fit => fit.FitsAll)];
        Fitting(page, fitting);
        Near(page, found, fitting.Length, features);
        Next(page, found, features);
        Tells(page, found);
        page.Gap();
        page.Write(
            0,
            "Records are not complete: a feature that a record leaves out may still be there. The score is the "
            + "number of features that match, less two for each that speaks against the weed.");
        return page.ToString();
    }

    /// <summary>The features that can be named: word and text, one after the other.</summary>
    public static string Of(FeatureList features, int width)
    {
        var page = new Page(width);
        int column = features.All.Select(feature => feature.Key.Length).DefaultIfEmpty(0).Max() + 2;
        foreach (KeyValuePair<string, string> feature in features.All)
            page.Write(0, feature.Key.PadRight(column), feature.Value);
        return page.ToString();
    }

    /// <summary>
    /// What speaks against a weed, and what its record leaves open; one line each, empty when it fits all.
    /// </summary>
    public static IEnumerable<string> Against(WeedFit fit, FeatureList features)
    {
        foreach (ShutOut shut in fit.ShutOut)
            yield return $"against it: {features.TextOf(shut.Recorded)}; you saw {features.TextOf(shut.Seen)}";
        foreach (string missing in fit.Missing)
            yield return $"against it: {features.TextOf(missing)}; you saw that this is not so";
        if (fit.NotRecorded.Count > 0)
            yield return $"not in its record: {Joined(features.TextsOf(fit.NotRecorded))}";
    }

    private static void Looked(Page page, string label, WordSet looked, FeatureList features)
    {
        if (looked.Count > 0)
            page.Write(0, label, Joined(features.TextsOf(looked)));
    }

    private static void Fitting(Page page, WeedFit[] fitting)
    {
        page.Heading(fitting.Length switch
        {
            0 => "No weed fits all of it",
            1 => "One weed fits all of it",
            int several => $"{several} weeds fit all of it",
        });
        foreach (WeedFit fit in fitting.Take(MostNamed))
        {
            page.Write(2, "- ", Named(fit.Weed));
            if (fitting.Length <= MostInFull)
                page.Write(4, fit.Weed.Identify);
        }

        if (fitting.Length > MostNamed)
            page.Write(2, "- ", $"and {fitting.Length - MostNamed} more; another feature narrows them down");
    }

    private static void Near(Page page, Identification found, int fitting, FeatureList features)
    {
        WeedFit[] near =
        [
            .. found.Fits
                .Skip(fitting)
                .Where(fit => fit.Matches.Count > 0 && (fitting == 0 || fit.Score >= 0))
                .Take(fitting > MostInFull ? 0 : MostNear),
        ];
        if (near.Length == 0)
            return;
        page.Heading(fitting == 0 ? "Nearest" : "Near misses");
        foreach (WeedFit fit in near)
        {
            page.Write(2, "- ", $"{Named(fit.Weed)}, score {Number(fit.Score)} of {Number(found.Sighting.Seen.Count)}");
            foreach (string line in Against(fit, features))
                page.Write(4, line);
        }
    }

    private static void Next(Page page, Identification found, FeatureList features)
    {
        if (found.Next is not { } next)
            return;
        page.Heading("Look at next");
        page.Write(2, $"{features.TextOf(next.Feature)} ({next.Feature})");
        page.Write(
            2,
            $"It parts those still in question: {Number(next.With)} with it, {Number(next.Without)} without it on "
            + "record.");
    }

    private static void Tells(Page page, Identification found)
    {
        if (found.Tells.IsEmpty)
            return;
        Dictionary<string, Weed> weeds = found.Fits.ToDictionary(fit => fit.Weed.Id, fit => fit.Weed);
        page.Heading("What settles it");
        foreach (WeedTell tell in found.Tells)
            page.Write(2, "- ", $"{NameOf(tell.Weed)} or {NameOf(tell.Other)}: {tell.Text}");

        string NameOf(string id) => weeds.TryGetValue(id, out Weed? weed) ? weed.Name : id;
    }

    private static string Named(Weed weed) => $"{weed.Name} ({weed.Scientific}), {weed.Id}";

    private static string Joined(IEnumerable<string> texts) => string.Join("; ", texts);

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}

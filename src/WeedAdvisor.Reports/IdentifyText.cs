using System.Globalization;
using WeedAdvisor.Inference.Identify;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports;

/// <summary>Which weeds an unknown one may be, as text.</summary>
public static class IdentifyText
{
    private const int MostInFull = 5,
        MostNamed = 12,
        MostNear = 4;

    /// <summary>The weeds that fit, what to look at next, and what settles it.</summary>
    public static string Of(Identification found, FeatureList features, int width)
    {
        WeedFit[] fitting = [.. found.Fits.Where(fit => fit.FitsAll)];
        return DocumentText.Of(
            [
                .. Looked("Seen: ", found.Sighting.Seen, features),
                .. Looked("Not there: ", found.Sighting.Absent, features),
                .. Looked("Could not tell: ", found.Sighting.Unsure, features),
                .. Fitting(fitting),
                .. Near(found, fitting.Length, features),
                .. Next(found, features),
                .. Tells(found),
                new Blank(),
                new Paragraph(
                    "Records are not complete: a feature that a record leaves out may still be there. The score is "
                        + "the number of features that match, less two for each that speaks against the weed."
                ),
            ],
            width
        );
    }

    /// <summary>The features that can be named: word and text, one after the other.</summary>
    public static string Of(FeatureList features, int width) =>
        DocumentText.Of(
            [
                new FieldList(
                    [.. features.All.Select(feature => new FieldEntry(feature.Key, [feature.Value]))],
                    features.All.Select(feature => feature.Key.Length).DefaultIfEmpty(0).Max()
                ),
            ],
            width
        );

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

    private static IEnumerable<Block> Looked(string label, WordSet looked, FeatureList features) =>
        looked.Count == 0 ? [] : [new Keyed(label, Joined(features.TextsOf(looked)))];

    private static IEnumerable<Block> Fitting(WeedFit[] fitting)
    {
        yield return Heading.Section(
            fitting.Length switch
            {
                0 => "No weed fits all of it",
                1 => "One weed fits all of it",
                int several => $"{several} weeds fit all of it",
            }
        );
        yield return new ItemList([
            .. fitting
                .Take(MostNamed)
                .Select(fit => new Item(Item.Dash, Named(fit.Weed))
                {
                    Below = fitting.Length <= MostInFull ? [new Paragraph(fit.Weed.Identify).At(2)] : [],
                }),
            .. fitting.Length > MostNamed
                ? [new Item(Item.Dash, $"and {fitting.Length - MostNamed} more; another feature narrows them down")]
                : (Item[])[],
        ]).At(2);
    }

    private static IEnumerable<Block> Near(Identification found, int fitting, FeatureList features)
    {
        WeedFit[] near =
        [
            .. found
                .Fits.Skip(fitting)
                .Where(fit => fit.Matches.Count > 0 && (fitting == 0 || fit.Score >= 0))
                .Take(fitting > MostInFull ? 0 : MostNear),
        ];
        if (near.Length == 0)
            yield break;
        yield return Heading.Section(fitting == 0 ? "Nearest" : "Near misses");
        yield return new ItemList([
            .. near.Select(fit => new Item(
                Item.Dash,
                $"{Named(fit.Weed)}, score {Number(fit.Score)} of {Number(found.Sighting.Seen.Count)}"
            )
            {
                Below = [.. Against(fit, features).Select(line => new Paragraph(line).At(2))],
            }),
        ]).At(2);
    }

    private static IEnumerable<Block> Next(Identification found, FeatureList features) =>
        found.Next is not { } next
            ? []
            :
            [
                Heading.Section("Look at next"),
                new Paragraph($"{features.TextOf(next.Feature)} ({next.Feature})").At(2),
                new Paragraph(
                    $"It parts those still in question: {Number(next.With)} with it, {Number(next.Without)} without it "
                        + $"on "
                        + "record."
                ).At(2),
            ];

    private static IEnumerable<Block> Tells(Identification found)
    {
        if (found.Tells.IsEmpty)
            yield break;
        Dictionary<string, Weed> weeds = found.Fits.ToDictionary(fit => fit.Weed.Id, fit => fit.Weed);
        yield return Heading.Section("What settles it");
        yield return ItemList
            .Dashes(
                found.Tells.Select(tell => Line.FromString($"{NameOf(tell.Weed)} or {NameOf(tell.Other)}: {tell.Text}"))
            )
            .At(2);

        string NameOf(string id) => weeds.TryGetValue(id, out Weed? weed) ? weed.Name : id;
    }

    private static string Named(Weed weed) => $"{weed.Name} ({weed.Scientific}), {weed.Id}";

    private static string Joined(IEnumerable<string> texts) => string.Join("; ", texts);

    private static string Number(int value) => value.ToString(CultureInfo.InvariantCulture);
}

using System.Text.Json;
using WeedAdvisor.Inference.Identify;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Json;

namespace WeedAdvisor.Reports;

/// <summary>Which weeds an unknown one may be, as JSON; <c>docs/identify.md</c> describes it.</summary>
public static class IdentifyJson
{
    /// <summary>Every weed with its score, the feature to look at next, and the tells.</summary>
    public static string Of(Identification found, KnowledgeBase knowledge, FeatureList features) =>
        JsonText.Of(json =>
        {
            json.WriteNumber("schemaVersion", JsonReport.SchemaVersion);
            StampJson.Write(json, knowledge.Stamp);
            json.WriteTexts("seen", found.Sighting.Seen);
            json.WriteTexts("absent", found.Sighting.Absent);
            json.WriteList("weeds", found.Fits, fit => WriteFit(json, fit));
            WriteNext(json, found.Next, features);
            json.WriteList("tells", found.Tells, tell =>
            {
                json.WriteString("weed", tell.Weed);
                json.WriteString("other", tell.Other);
                json.WriteString("text", tell.Text);
            });
        });

    /// <summary>The features that can be named.</summary>
    public static string Of(FeatureList features) =>
        JsonText.Of(json =>
        {
            json.WriteNumber("schemaVersion", JsonReport.SchemaVersion);
            json.WriteList("features", features.All, feature =>
            {
                json.WriteString("feature", feature.Key);
                json.WriteString("text", feature.Value);
            });
        });

    private static void WriteFit(Utf8JsonWriter json, WeedFit fit)
    {
        json.WriteString("id", fit.Weed.Id);
        json.WriteString("name", fit.Weed.Name);
        json.WriteString("scientific", fit.Weed.Scientific);
        json.WriteNumber("score", fit.Score);
        json.WriteBoolean("fitsAll", fit.FitsAll);
        json.WriteTexts("matches", fit.Matches);
        json.WriteTexts("notRecorded", fit.NotRecorded);
        json.WriteTexts("missing", fit.Missing);
        json.WriteList("shutOut", fit.ShutOut, shut =>
        {
            json.WriteString("seen", shut.Seen);
            json.WriteString("recorded", shut.Recorded);
        });
    }

    private static void WriteNext(Utf8JsonWriter json, NextFeature? next, FeatureList features)
    {
        if (next is null)
        {
            json.WriteNull("next");
            return;
        }

        json.WriteStartObject("next");
        json.WriteString("feature", next.Feature);
        json.WriteString("text", features.TextOf(next.Feature));
        json.WriteNumber("with", next.With);
        json.WriteNumber("without", next.Without);
        json.WriteFigure("expectedLeft", next.ExpectedLeft);
        json.WriteEndObject();
    }
}

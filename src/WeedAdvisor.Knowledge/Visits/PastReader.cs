using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>Reads an earlier application. A key that is left out, or says <c>not-known</c>, is not known.</summary>
internal static class PastReader
{
    private const decimal MostRate = 1_000_000;
    private const decimal MostSeasons = 50;

    // Written in old files and by people; it says no more than leaving the result out.
    private const string UnknownResult = "unknown";

    /// <summary>The application.</summary>
    public static PastApplication Read(MappingReader map, DateOnly visitDate)
    {
        string? treatment = Word(map, "treatment", "past-treatments");
        DateOnly? date = VisitReader.IsNotKnown(map, "date") ? null : map.OptionalDate("date");
        if (date > visitDate)
            map.Context.Report(map.Optional("date")!, ScalarGrammar.Write(date.Value), "a day not after the visit");
        string? result = Word(map, "result", $"{PastWords.Results}|{UnknownResult}");
        var past = new PastApplication(
            treatment,
            date,
            result == UnknownResult ? null : result,
            map.OptionalWordSet("escaped", "weeds")
        )
        {
            Actives = map.OptionalWordSet("actives", "actives"),
            Groups = map.OptionalWordSet("groups", "groups"),
            Kind = Word(map, "kind", PastWords.Kinds),
            Hour = VisitReader.IsNotKnown(map, "hour") ? null : map.OptionalTime("hour"),
            Rate = Number(map, "rate", 0, MostRate),
            RateUnit = map.OptionalWord("rate-unit", "rate-units"),
            Method = Word(map, "method", PastWords.Methods),
            PartOnly = Flag(map, "part-only"),
            WateredIn = Flag(map, "watered-in"),
            Aired = Flag(map, "aired"),
            Drifted = Flag(map, "drifted"),
            CameThrough = Word(map, "came-through", PastWords.Amounts),
            SeasonsRunning = Seasons(map),
        };
        Check(map, past);
        map.Finish();
        return past;
    }

    private static int? Seasons(MappingReader map)
    {
        const string Key = "seasons-running";
        if (Number(map, Key, 1, MostSeasons) is not { } seasons)
            return null;
        if (seasons == decimal.Truncate(seasons))
            return (int)seasons;
        map.Context.Report(map.Optional(Key)!, ScalarGrammar.Write(seasons), "whole seasons, such as 2");
        return null;
    }

    private static void Check(MappingReader map, PastApplication past)
    {
        bool isTold = past.Kind is not null || past.Actives.Count > 0 || past.Groups.Count > 0;
        if (past.Treatment is null && !isTold)
        {
            map.Context.Report(
                map.Node,
                "an earlier application of nothing",
                "'treatment'; or 'actives', 'groups' or 'kind' of a product that is not in the list"
            );
        }

        if (past.Treatment is not null && isTold)
            map.Context.Report(map.Node, "'treatment' beside 'actives', 'groups' or 'kind'", "one or the other");
        if ((past.Rate is null) != (past.RateUnit is null))
            map.Context.Report(map.Node, "a rate without its unit, or a unit without a rate", "'rate' and 'rate-unit'");
    }

    private static string? Word(MappingReader map, string key, string notation) =>
        VisitReader.IsNotKnown(map, key) ? null : map.OptionalWord(key, notation);

    private static decimal? Number(MappingReader map, string key, decimal low, decimal high) =>
        VisitReader.IsNotKnown(map, key) ? null : map.OptionalNumber(key, low, high);

    private static bool? Flag(MappingReader map, string key) =>
        Word(map, key, "words:yes|no") switch
        {
            "yes" => true,
            "no" => false,
            _ => null,
        };
}

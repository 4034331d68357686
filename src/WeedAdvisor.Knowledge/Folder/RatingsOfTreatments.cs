using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.Folder;

/// <summary>Gives each treatment what the tables of all sources say of it.</summary>
internal static class RatingsOfTreatments
{
    private const string Field = "ratings";

    /// <summary>
    /// The treatments with their ratings: by scale, in the order of the list of scales, then by table and row.
    /// </summary>
    public static ImmutableSortedDictionary<string, Treatment> Put(
        ImmutableSortedDictionary<string, Treatment> treatments,
        IEnumerable<RatingTable> tables,
        IEnumerable<WordList> lists
    )
    {
        string[] scales =
        [
            .. lists.Where(list => list.Id == "rating-scale").SelectMany(list => list.Words).Select(word => word.Key),
        ];
        var rated = treatments.ToBuilder();
        foreach (
            IGrouping<string, RatedPair> rows in tables
                .SelectMany(table => table.Rows)
                .GroupBy(row => row.Treatment, StringComparer.Ordinal)
        )
        {
            // An unknown treatment has been reported where it stands.
            if (treatments.TryGetValue(rows.Key, out Treatment? treatment))
                rated[rows.Key] = With(
                    treatment,
                    [.. rows.Select(row => row.Rating).OrderBy(rating => Array.IndexOf(scales, rating.Scale))]
                );
        }

        return rated.ToImmutable();
    }

    /// <summary>
    /// One problem for each pair of treatment and weed that a source rates twice, where the row doesn't say that the
    /// page does so itself.
    /// </summary>
    public static IEnumerable<Problem> Repeated(IEnumerable<RatingTable> tables)
    {
        Placed[] rows =
        [
            .. from table in tables
            from row in table.Rows
            select new Placed(new Pair(table.Source, row.Treatment, row.Rating.On), row),
        ];
        var first = new Dictionary<Pair, RatedPair>();
        var figures = new HashSet<Figure>();
        foreach ((Pair key, RatedPair row) in rows.OrderBy(row => row.Row.IsAgain))
        {
            bool isFirst = first.TryAdd(key, row);
            bool isNewFigure = figures.Add(new Figure(key, row.Rating.Raw));
            string pair = $"'{key.Treatment}' on '{key.On}'";
            if (isFirst && row.IsAgain)
                yield return new Problem(row.Where, $"'again' for {pair}, which stands once", "no 'again'");
            else if (!isFirst && !(row.IsAgain && isNewFigure))
                yield return new Problem(
                    row.Where,
                    $"{pair} a second time in the table of '{key.Source}'",
                    $"each pair once: it stands at {first[key].Where}; 'again: true' where the page prints two figures"
                );
        }
    }

    private static Treatment With(Treatment treatment, ImmutableArray<Rating> ratings)
    {
        ImmutableArray<string> sources =
        [
            .. ratings.SelectMany(rating => rating.Sources).Distinct(StringComparer.Ordinal),
        ];
        return treatment with
        {
            Ratings = ratings,
            From = treatment.From.WithRows(new FieldSource(Field, sources), ValueFields.Treatment.Rows),
        };
    }

    private sealed record Pair(string Source, string Treatment, string On);

    private sealed record Placed(Pair Key, RatedPair Row);

    private sealed record Figure(Pair Key, string Raw);
}

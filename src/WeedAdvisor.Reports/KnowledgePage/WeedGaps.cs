using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Reports.KnowledgePage;

/// <summary>Weeds of which little is published.</summary>
internal static class WeedGaps
{
    public static void Write(Markdown page, KnowledgeBase knowledge)
    {
        page.Heading(2, "Weeds of which little is published");
        page.Paragraph(
            "Weeds that no table rates from seed, that no table rates when up, not even by their kind, or for which no "
                + "practice has a figure. Ratings are counted under the weed's own id and the ids it is rated as."
        );
        page.Table(
            "None.",
            ["weed", "ratings from seed", "ratings when up", "ratings of its kind when up", "practices with a figure"],
            knowledge
                .Weeds.Values.Where(weed => !weed.IsUnnamed)
                .Select(weed => Of(weed, knowledge))
                .Where(IsPoor)
                .Select(known =>
                    new[]
                    {
                        known.Weed,
                        Mark(known.FromSeed),
                        Mark(known.WhenUp),
                        KnowledgeDocument.Number(known.OfKind),
                        Mark(known.Practices),
                    }
                )
        );
        page.Paragraph(
            "What the first hard frosts do to it is not known of: "
                + string.Join(
                    ", ",
                    knowledge
                        .Weeds.Values.Where(weed => !weed.IsUnnamed && weed.Frost == FrostFate.NotKnown)
                        .Select(weed => weed.Id)
                        .DefaultIfEmpty("none")
                )
                + "."
        );
    }

    private static Known Of(Weed weed, KnowledgeBase knowledge)
    {
        string[] names = [weed.Id, .. weed.RatedAs];
        return new Known(
            weed.Id,
            Count("germinating", rating => names.Contains(rating.On)),
            Count("emerged", rating => names.Contains(rating.On)),
            Count("emerged", rating => rating.On == weed.Kind),
            knowledge.Practices.Values.Count(one =>
                one.Effects.Any(effect => effect.On == weed.Id || effect.On == weed.Kind)
            )
        );

        int Count(string actsOn, Func<Rating, bool> isMeant) =>
            knowledge
                .Treatments.Values.Where(one => one.ActsOn.Contains(actsOn))
                .Sum(one => one.Ratings.Count(isMeant));
    }

    private static bool IsPoor(Known known) =>
        known.FromSeed == 0 || known.WhenUp + known.OfKind == 0 || known.Practices == 0;

    private static string Mark(int count) => count == 0 ? "**none**" : KnowledgeDocument.Number(count);

    private sealed record Known(string Weed, int FromSeed, int WhenUp, int OfKind, int Practices);
}

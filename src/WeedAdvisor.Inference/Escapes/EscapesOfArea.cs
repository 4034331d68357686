using System.Collections.Immutable;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Escapes;

/// <summary>Finds what came through, and may have come through, without an explanation in the ratings.</summary>
public static class EscapesOfArea
{
    private const string Good = "good";

    /// <summary>
    /// Every weed with every site of action that it came through, in ordinal order; and, for each site, that some weed
    /// may have come through it where a use does not tell. Where the past is not known some weed may have come through
    /// any.
    /// </summary>
    public static ImmutableArray<Escape> Of(ImmutableArray<PastApplication>? past, KnowledgeBase knowledge)
    {
        if (past is null)
            return [Hidden(null, "an earlier application")];
        Use[] uses = [.. past.Value.Select(use => new Use(use, PastProduct.Of(use, knowledge)))];
        Case[] told = [.. uses.SelectMany(use => CasesOf(use, knowledge))];
        var escapes = ImmutableArray.CreateBuilder<Escape>();
        foreach (
            var same in told.GroupBy(one => new { one.Weed, one.Site })
                .OrderBy(one => one.Key.Weed, StringComparer.Ordinal)
                .ThenBy(one => one.Key.Site, StringComparer.Ordinal)
        )
        {
            bool isOnRecord = IsOnRecord(same.Key.Weed, same.Key.Site, knowledge);
            int times = same.Sum(one => one.Use.Told.SeasonsRunning ?? 1) + (isOnRecord ? 1 : 0);
            bool mayBeMore =
                same.Any(one => one.Use.Told.SeasonsRunning is null) || uses.Any(use => use.MayHide(same.Key.Site));
            escapes.Add(
                new Escape(
                    same.Key.Weed,
                    same.Key.Site,
                    times,
                    mayBeMore,
                    WordSet.Of(told.Where(one => one.Weed == same.Key.Weed).Select(one => one.Site)),
                    isOnRecord,
                    same.Last().Use.Product.Name
                )
            );
        }

        foreach (
            string? site in uses.SelectMany(use => use.HiddenSites)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
        )
            escapes.Add(Hidden(site, uses.Last(use => use.HiddenSites.Contains(site)).Product.Name));
        return escapes.ToImmutable();
    }

    private static Escape Hidden(string? site, string product) =>
        new(null, site, 0, true, site is null ? WordSet.Empty : WordSet.Of([site]), false, product);

    private static IEnumerable<Case> CasesOf(Use use, KnowledgeBase knowledge)
    {
        if (use.Product.Record is not { } record)
            yield break;
        foreach (string weed in use.Told.Escaped)
        {
            if (TreatmentControl.GradeOf(record, knowledge.Weeds[weed], knowledge) != Good)
                continue;
            foreach (string site in PastProduct.SitesOf(record))
                yield return new Case(weed, site, use);
        }
    }

    private static bool IsOnRecord(string weed, string site, KnowledgeBase knowledge) =>
        knowledge.Resistance.Values.Any(known => known.Weed == weed && known.Groups.Contains(site));

    private sealed record Case(string Weed, string Site, Use Use);

    /// <summary>
    /// A use with its product. One whose result or weeds are not told may hide an escape of any weed; of a product
    /// without a record nobody can say whether what came through was to be expected.
    /// </summary>
    private sealed record Use(PastApplication Told, PastProduct Product)
    {
        /// <summary>The sites that may have let something through untold; a null among them stands for any.</summary>
        public IEnumerable<string?> HiddenSites =>
            IsTold ? []
            : Product.Groups is { } groups ? groups
            : [null];

        private bool IsTold => Told.Result == "clean" || (Told.Escaped.Count > 0 && Product.Record is not null);

        public bool MayHide(string site) => HiddenSites.Contains(null) || HiddenSites.Contains(site);
    }
}

using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Reports.Catalogue;

/// <summary>Every source that a record rests on: its own first, then those of its single figures.</summary>
internal static class RecordSources
{
    /// <summary>The keys, each once.</summary>
    public static IEnumerable<string> Of(Record record) =>
        record.Sources.Concat(Inside(record)).Distinct(StringComparer.Ordinal);

    private static IEnumerable<string> Inside(Record record) =>
        record switch
        {
            Practice practice => CostOf(practice).Concat(practice.Effects.SelectMany(effect => effect.Sources)),
            Treatment treatment => CostOf(treatment)
                .Concat(treatment.Rates.SelectMany(rate => rate.Sources))
                .Concat(treatment.Ratings.SelectMany(rating => rating.Sources)),
            ActiveIngredient active => active.HalfLives.SelectMany(life => life.Sources),
            _ => [],
        };

    private static IEnumerable<string> CostOf(CatalogueAction action) =>
        action.Cost is { } cost ? cost.Sources.AsEnumerable() : [];
}

using System.Collections.Immutable;
using WeedAdvisor.Inference.Ratings;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>The facts that are the same in every area: what the catalogue of practices and treatments says.</summary>
internal static class CatalogueFacts
{
    /// <summary>One fact for each practice and treatment, in ordinal order of id.</summary>
    public static ImmutableArray<ActionFact> Of(KnowledgeBase knowledge) =>
    [
        .. knowledge.Practices.Values.Select(OfPractice)
            .Concat<ActionFact>(knowledge.Treatments.Values.Select(treatment => OfTreatment(treatment, knowledge)))
            .OrderBy(fact => fact.Id, StringComparer.Ordinal),
    ];

    private static PracticeFact OfPractice(Practice practice)
    {
        Dictionary<string, Reading> readings = Common(practice, "practice");
        readings["kind"] = Reading.Of(practice.Kind);
        readings["works-on"] = Reading.Of(practice.WorksOn);
        readings["enclosed-ok"] = Reading.Of(practice.EnclosedOk);
        return new PracticeFact(practice.Id, practice.Name, readings);
    }

    private static TreatmentFact OfTreatment(Treatment treatment, KnowledgeBase knowledge)
    {
        Dictionary<string, Reading> readings = Common(treatment, "treatment");
        readings["role"] = Reading.Of(treatment.Role);
        readings["acts-on"] = Reading.Of(treatment.ActsOn);
        readings["applied"] = Reading.Of(treatment.Applied);
        readings["formulation"] = Reading.Of(treatment.Formulation);
        readings["reaches-crop"] = Reading.Of(treatment.ReachesCrop);
        readings["allowed-under"] = Reading.Of(treatment.AllowedUnder);
        readings["enclosed-use"] = Reading.Of(treatment.EnclosedUse);
        readings["crops-tolerant"] = Reading.Of(treatment.CropsTolerant);
        readings["crops-hurt"] = Reading.Of(treatment.CropsHurt);
        readings["edible-ok"] = Reading.Of(treatment.EdibleOk);
        readings["organic-ok"] = Reading.Of(treatment.OrganicOk);
        readings["not-at"] = Reading.Of(treatment.NotAt);
        readings["volatile"] = Reading.Of(treatment.Volatile);
        readings["root-inhibitor"] = Reading.Of(treatment.RootInhibitor);
        readings["water-hazard"] = Reading.Of(treatment.WaterHazard);
        readings["drift-hazard"] = Reading.Of(treatment.DriftHazard);
        readings["restricted-use"] = Reading.Of(treatment.RestrictedUse);
        readings["wants"] = Reading.Of(treatment.Wants);
        readings["water-in"] = Reading.Of(WateringIn.WordsOf(treatment) ?? "as its label says");
        readings["status"] = Reading.Of(treatment.Status);
        readings["groups"] = Reading.Of(PastProduct.SitesOf(treatment));
        readings["sole-site"] = SoleSite(treatment);
        readings["actives"] = Reading.Of(PastProduct.ActivesOf(treatment));
        readings["signal-word"] = treatment.SignalWord is { } word
            ? Reading.Of(word)
            : LabelTells(treatment, "signal-word");
        readings["wait-after-potting-days"] = NumberOrLabel(treatment, "wait-after-potting-days", treatment.WaitAfterPottingDays);
        readings["wait-bare-root-days"] = NumberOrLabel(treatment, "wait-bare-root-days", treatment.WaitBareRootDays);
        readings["days-before-covering"] = NumberOrLabel(treatment, "days-before-covering", treatment.DaysBeforeCovering);
        readings["repeat-after-days"] = NumberOrLabel(treatment, "repeat-after-days", treatment.RepeatAfterDays);
        readings["uses-per-year"] = NumberOrLabel(treatment, "uses-per-year", treatment.UsesPerYear);
        readings["residual-weeks-low"] = NumberOrAbsent(treatment.ResidualWeeks?.Low);
        readings["residual-weeks-high"] = NumberOrAbsent(treatment.ResidualWeeks?.High);

        RatedWeeds rated = RatedWeeds.Of(treatment, knowledge);
        readings["controls-well"] = Reading.Of(rated.ControlsWell);
        readings["controls-partly"] = Reading.Of(rated.ControlsPartly);
        readings["misses"] = Reading.Of(rated.Misses);
        readings["unrated"] = Reading.Of(rated.Unrated);
        return new TreatmentFact(treatment.Id, treatment.Name, readings);
    }

    // A mixture with an active of no known site has more than the one that is known.
    private static Reading SoleSite(Treatment treatment) =>
        PastProduct.SitesOf(treatment) is { Count: 1 } sites && treatment.Actives.All(active => sites.Contains(active.Group ?? ""))
            ? Reading.Of(sites)
            : Reading.Absent;

    private static Dictionary<string, Reading> Common(CatalogueAction action, string kind) => new(StringComparer.Ordinal)
    {
        ["id"] = Reading.Of(action.Id),
        ["is"] = Reading.Of(kind),
        ["when"] = Reading.Of(action.When),
        ["places"] = Reading.Of(action.Places),
        ["stock-stages"] = Reading.Of(action.StockStages),
        ["needs-equipment"] = Reading.Of(action.NeedsEquipment),
        ["enters"] = Reading.Of(action is not Practice { Entry: not EntryNeed.Worker }),
    };

    // A figure that the record leaves out is not "no limit": only the label can tell, so it never clears a treatment.
    private static Reading NumberOrLabel(Treatment treatment, string field, decimal? value) =>
        value is { } number ? Reading.Of(number) : LabelTells(treatment, field);

    private static Reading LabelTells(Treatment treatment, string field) =>
        Reading.NotKnown(Need.Record(treatment.Id, field));

    private static Reading NumberOrAbsent(decimal? value) => value is { } number ? Reading.Of(number) : Reading.Absent;
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads treatments.</summary>
/// <param name="ingredients">The actives, by id.</param>
internal sealed class TreatmentReader(IReadOnlyDictionary<string, ActiveIngredient> ingredients)
{
    private const decimal MostDays = 3650;
    private const decimal MostWeeks = 520;

    /// <summary>A treatment.</summary>
    public Treatment Read(MappingReader map)
    {
        map.Moved("ratings", "them in ratings/, in the table of the source that prints them");
        (ImmutableArray<Active> actives, Inheritance inherited) = TreatmentParts.Actives(map, ingredients);
        Treatment treatment = Fields(map, actives, inherited);
        TreatmentParts.CheckShares(map, treatment);
        return treatment;
    }

    private static Treatment Fields(MappingReader map, ImmutableArray<Active> actives, Inheritance inherited) =>
        new()
        {
            Id = map.Id(),
            Name = ActionParts.Name(map),
            What = map.Text("what"),
            When = map.Word("when", "list:when"),
            Actives = actives,
            Formulation = map.Word("formulation", "list:formulation"),
            Role = map.Word("role", "list:role"),
            ActsOn = map.WordSet("acts-on", "list:acts-on"),
            Applied = map.WordSet("applied", "list:application"),
            ReachesCrop = map.Flag("reaches-crop"),
            Places = map.WordSet("places", "answers:place"),
            AllowedUnder = map.WordSet("allowed-under", "answers:cover"),
            EnclosedUse = map.Word("enclosed-use", "list:enclosed-use"),
            StockStages = ActionParts.StockStages(map),
            CropsTolerant = map.WordSet("crops-tolerant", "crops"),
            CropsHurt = map.WordSet("crops-hurt", "crops"),
            EdibleOk = map.FlagIfKnown("edible-ok"),
            OrganicOk = map.FlagIfKnown("organic-ok"),
            WaitAfterPottingDays = map.OptionalNumber("wait-after-potting-days", 0, MostDays),
            WaitBareRootDays = map.OptionalNumber("wait-bare-root-days", 0, MostDays),
            DaysBeforeCovering = map.OptionalNumber("days-before-covering", 0, MostDays),
            NotAt = map.OptionalWordSet("not-at", "answers:growth-state"),
            WaterInMm = map.OptionalRange("water-in-mm", 0, 200),
            WaterInWithinDays = map.OptionalNumber("water-in-within-days", 0, MostDays),
            RainFreeHours = map.OptionalRange("rain-free-hours", 0, 24 * 14),
            NotAboveC = map.OptionalNumber("not-above-c", -10, 50),
            NotBelowC = map.OptionalNumber("not-below-c", -10, 50),
            Wants = map.OptionalWordSet("wants", "words:warmth|light"),
            DryLeaves = map.OptionalFlag("dry-leaves"),
            ResidualWeeks = map.OptionalRange("residual-weeks", 0, MostWeeks),
            RepeatAfterDays = map.OptionalNumber("repeat-after-days", 0, MostDays),
            UsesPerYear = map.OptionalNumber("uses-per-year", 0, 366),
            YearlyLimitKgAiHa = map.OptionalNumber("yearly-limit-kg-ai-ha", 0, 10_000),
            Rates = map.Each("rates", "a rate", TreatmentParts.Rate),
            Strength = TreatmentParts.Strength(map),
            Volatile = inherited.Volatile(),
            RootInhibitor = inherited.Flag("root-inhibitor", active => active.RootInhibitor),
            WaterHazard = inherited.Flag("water-hazard", active => active.WaterHazard),
            DriftHazard = map.Flag("drift-hazard"),
            ReiHours = map.OptionalRange("rei-hours", 0, 24 * 60),
            SignalWord = map.OptionalWord("signal-word", "list:signal-word"),
            ProtectiveEquipment = map.OptionalText("protective-equipment"),
            NeedsEquipment = map.WordSet("needs-equipment", "answers:equipment"),
            RestrictedUse = map.Flag("restricted-use"),
            Status = map.Word("status", "list:status"),
            Cost = ActionParts.Cost(map, hasTool: true),
            Cautions = map.Texts("cautions"),
            Checked = map.Date("checked"),
            Where = map.Where,
            From = inherited.With(map.FinishWithOrigins(ValueFields.Treatment)),
        };
}

using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads treatments.</summary>
internal static class TreatmentReader
{
    private const decimal MostDays = 3650;
    private const decimal MostWeeks = 520;

    /// <summary>A treatment.</summary>
    public static Treatment Read(MappingReader map)
    {
        map.Moved("ratings", "them in ratings/, in the table of the source that prints them");
        Treatment treatment = Fields(map);
        TreatmentParts.CheckShares(map, treatment);
        return treatment;
    }

    private static Treatment Fields(MappingReader map) =>
        new()
        {
            Id = map.Id(),
            Name = ActionParts.Name(map),
            What = map.Text("what"),
            When = map.Word("when", "list:when"),
            Actives = TreatmentParts.Actives(map),
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
            Volatile = map.Word("volatile", "list:volatility"),
            RootInhibitor = map.Flag("root-inhibitor"),
            WaterHazard = map.Flag("water-hazard"),
            DriftHazard = map.Flag("drift-hazard"),
            ReiHours = map.OptionalRange("rei-hours", 0, 24 * 60),
            SignalWord = map.OptionalWord("signal-word", "list:signal-word"),
            ProtectiveEquipment = map.OptionalText("protective-equipment"),
            NeedsEquipment = map.WordSet("needs-equipment", "answers:equipment"),
            RestrictedUse = map.Flag("restricted-use"),
            Status = map.Word("status", "list:status"),
            Cost = ActionParts.Cost(map),
            Cautions = map.Texts("cautions"),
            Checked = map.Date("checked"),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.Treatment),
        };
}

using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads actives.</summary>
internal static class ActiveReader
{
    /// <summary>An active.</summary>
    public static ActiveIngredient Read(MappingReader map) =>
        new()
        {
            Id = map.Id(),
            Name = map.Text("name"),
            AlsoCalled = map.Texts("also-called"),
            Group = map.OptionalText("group"),
            Was = map.OptionalText("was"),
            WasNumber = map.OptionalText("was-number"),
            SiteOfAction = map.OptionalWord("site-of-action", "list:site-of-action"),
            Volatile = map.OptionalWord("volatile", "list:volatility"),
            RootInhibitor = map.FlagIfKnown("root-inhibitor"),
            WaterHazard = map.FlagIfKnown("water-hazard"),
            HalfLives = map.Each("half-lives", "a half-life", HalfLife),
            Checked = map.Date("checked"),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.Active),
        };

    private static HalfLife HalfLife(MappingReader map)
    {
        var life = new HalfLife(map.Number("at-c", -10, 60), map.Range("days", 0, 3650), map.Sources());
        map.Finish();
        return life;
    }
}

using WeedAdvisor.Knowledge.Readings;
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
            Checked = map.CheckedDay(),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.Active),
        };

    /// <summary>A line of what may not be used any more.</summary>
    public static WithdrawnActive Withdrawn(MappingReader map)
    {
        var row = new WithdrawnActive
        {
            Id = map.Id(),
            Active = map.Word("active", "active-ids"),
            Countries = map.WordSet("countries", Region.Countries),
            Since = map.OptionalDate("since"),
            Bag = map.Text("bag"),
            Formerly = WordSet.Of(map.Words("formerly", null, isRequired: false)),
            Checked = map.CheckedDay(),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.Withdrawn),
        };
        if (row.Since is { } since && row.Checked is { } day && since > day)
            map.Context.Report(
                map.Optional("since")!,
                ScalarGrammar.Write(since),
                $"a day not after the check, {ScalarGrammar.Write(day)}: until then it may be used up"
            );
        return row;
    }

    private static HalfLife HalfLife(MappingReader map)
    {
        var life = new HalfLife(map.Number("at-c", -10, 60), map.Range("days", 0, 3650), map.Sources());
        map.Finish();
        return life;
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads the records that have only a few fields.</summary>
internal static class SmallReaders
{
    // Stands where "emergence-zone" would: the climate has no months of its own.
    private const string MonthsOf = "months-of";

    /// <summary>A region.</summary>
    public static Region Region(MappingReader map) =>
        new()
        {
            Id = map.Id(),
            Name = map.Text("name"),
            Country = map.Word("country", Records.Region.Countries),
            Units = UnitsWords.Find(map.OptionalWord("units", UnitsWords.Notation)),
            Hemisphere =
                map.OptionalWord("hemisphere", SeasonMonths.Words) == "south" ? Hemisphere.South : Hemisphere.North,
            BorrowsMonths = map.Has(MonthsOf),
            EmergenceZone = map.Word(map.Has(MonthsOf) ? MonthsOf : "emergence-zone", "list:emergence-zone"),
            MeanTemperatureC = TwelveMonths(map),
            TimeZone = map.OptionalText("time-zone"),
            LastFrost = map.OptionalDayOfYear("last-frost"),
            FirstFrost = map.OptionalDayOfYear("first-frost"),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.Region),
        };

    /// <summary>A finding.</summary>
    public static FindingText Finding(MappingReader map) =>
        new()
        {
            Id = map.Id(),
            Text = map.Text("text"),
            Sources = map.Sources(),
            Where = map.Where,
            Memory = map.FinishWithMemory(),
        };

    /// <summary>A step of the rating scale.</summary>
    public static ScaleStep ScaleStep(MappingReader map) =>
        new()
        {
            Id = map.Id(),
            ReductionPercent = map.Range("reduction-percent", 0, 100),
            Sources = map.Sources(),
            Where = map.Where,
            Memory = map.FinishWithMemory(),
        };

    /// <summary>A price.</summary>
    public static Price Price(MappingReader map)
    {
        (decimal value, Span? range) = RangedNumber.Read(map, 0, 1_000_000);
        return new Price
        {
            Id = map.Id(),
            Name = map.Text("name"),
            Value = value,
            Range = range,
            Unit = map.Text("unit"),
            Checked = map.CheckedDay(),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.Number),
        };
    }

    /// <summary>A yearly limit of an active: an amount, a number of uses, or both.</summary>
    public static ActiveLimit ActiveLimit(MappingReader map)
    {
        var limit = new ActiveLimit
        {
            Id = map.Id(),
            Active = map.Word("active", "actives"),
            KgAiHaPerYear = map.OptionalNumber("yearly-limit-kg-ai-ha", 0, 1000),
            UsesPerYear = map.OptionalNumber("uses-per-year", 1, 366),
            IntervalDays = map.OptionalNumber("interval-days", 1, 366),
            IsCalendarYear = map.OptionalWord("per", "words:any-12-months|calendar-year") == "calendar-year",
            Form = map.OptionalWord("form", "words:spray|granule"),
            IsUnlimited = map.OptionalFlag("unlimited"),
            Checked = map.CheckedDay(),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.ActiveLimit),
        };
        bool hasFigure =
            limit.KgAiHaPerYear is not null || limit.UsesPerYear is not null || limit.IntervalDays is not null;
        if (!hasFigure && !limit.IsUnlimited)
        {
            map.Context.Report(
                map.Node,
                "a limit without a figure",
                "'yearly-limit-kg-ai-ha', 'uses-per-year' or 'interval-days', one or several; or 'unlimited'"
            );
        }

        if (hasFigure && limit.IsUnlimited)
            map.Context.Report(map.Node, "'unlimited' beside a figure", "one or the other");
        return limit;
    }

    /// <summary>A resistance on record.</summary>
    public static KnownResistance KnownResistance(MappingReader map) =>
        new()
        {
            Id = map.Id(),
            Weed = map.Word("weed", "weeds"),
            Groups = map.WordSet("groups", "groups"),
            Note = map.OptionalText("note"),
            Checked = map.CheckedDay(),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.KnownResistance),
        };

    /// <summary>What the worked visits need not show.</summary>
    public static NotShown NotShown(MappingReader map)
    {
        var exception = new NotShown
        {
            Actions = map.Words("actions", "actions", isRequired: false),
            Judgements = map.Words("judgements", "judgements", isRequired: false),
            Lacks = map.Word("lacks", Records.NotShown.Words),
            Because = map.Text("because"),
            Where = map.Where,
        };
        map.Finish();
        return exception;
    }

    private static ImmutableArray<decimal> TwelveMonths(MappingReader map)
    {
        ImmutableArray<decimal> months = map.Numbers("mean-temperature-c", -60, 60);
        if (months.Length != 12 && map.Has("mean-temperature-c"))
            map.Context.Report(map.Node, $"{months.Length} monthly temperatures", "twelve, from January");
        return months;
    }
}

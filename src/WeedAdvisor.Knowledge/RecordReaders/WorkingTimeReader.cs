using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads how long the work takes: exactly the ids of <see cref="WorkingTimeIds"/>.</summary>
internal static class WorkingTimeReader
{
    private const string Value = "value";
    private const string ByPotWidth = "by-pot-width";
    private const decimal WidestPotCm = 300;

    /// <summary>One working time: one range, or one for each of several pot widths.</summary>
    public static WorkingTime Read(MappingReader map)
    {
        string id = map.Id();
        bool isKnown = WorkingTimeIds.All.TryGetValue(id, out Bounds? limits);
        if (limits is null)
        {
            limits = new Bounds(0, decimal.MaxValue);
            if (map.Has("id"))
                map.Context.Report(
                    map.Optional("id")!,
                    $"'{id}'",
                    "the id of a working time",
                    NearestWord.Of(id, WorkingTimeIds.All.Keys)
                );
        }

        var time = new WorkingTime
        {
            Id = id,
            Name = map.Text("name"),
            Value = map.OptionalRange(Value, limits.Low, limits.High),
            ByPotWidth = map.Each(ByPotWidth, "the time at a pot width", row => Row(row, limits)),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.WorkingTime),
        };
        bool isByWidth = WorkingTimeIds.PerPot.Contains(id);
        if (map.Has(ByPotWidth) && isKnown && !isByWidth)
            map.Context.Report(
                map.Optional(ByPotWidth)!,
                $"'{ByPotWidth}' of '{id}'",
                $"'{Value}': pots do not matter"
            );
        else if (map.Has(Value) == map.Has(ByPotWidth))
            map.Context.Report(
                map.Node,
                map.Has(Value) ? $"'{Value}' beside '{ByPotWidth}'" : $"a working time without '{Value}'",
                isByWidth ? $"'{Value}' or '{ByPotWidth}'" : $"'{Value}'"
            );
        CheckOrder(map, time.ByPotWidth);
        return time;
    }

    /// <summary>
    /// One problem for each that a file of working times leaves out; none when there is no such file.
    /// </summary>
    public static IEnumerable<Problem> MissingFrom(IReadOnlyCollection<WorkingTime> read) =>
        read.Count == 0
            ? []
            : WorkingTimeIds
                .All.Keys.Except(read.Select(time => time.Id), StringComparer.Ordinal)
                .Select(id => new Problem(
                    Place.Whole(read.First().Where.File),
                    $"no working time '{id}'",
                    "every working time that costs are reckoned with"
                ));

    private static TimeAtWidth Row(MappingReader map, Bounds limits)
    {
        var row = new TimeAtWidth(map.Number("cm", 1, WidestPotCm), map.Range("takes", limits.Low, limits.High));
        map.Finish();
        return row;
    }

    private static void CheckOrder(MappingReader map, ImmutableArray<TimeAtWidth> rows)
    {
        if (rows.Zip(rows.Skip(1)).Any(pair => pair.First.WidthCm >= pair.Second.WidthCm))
            map.Context.Report(
                map.Optional(ByPotWidth)!,
                "pot widths out of order",
                "the narrowest pot first, each once"
            );
    }
}

using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads a number and the range in which it may lie.</summary>
internal static class RangedNumber
{
    private const string Value = "value",
        Range = "range";

    /// <summary>The value, and the range where the record gives one; the value must lie within it.</summary>
    /// <param name="map">The record.</param>
    /// <param name="low">The least that is taken.</param>
    /// <param name="high">The most.</param>
    public static (decimal Value, Span? Range) Read(MappingReader map, decimal low, decimal high)
    {
        decimal value = map.Number(Value, low, high);
        Span? range = map.OptionalRange(Range, low, high);
        if (range is { } told && map.Has(Value) && told.Low <= told.High && (value < told.Low || value > told.High))
            map.Context.Report(
                map.Optional(Value)!,
                $"the value {ScalarGrammar.Write(value)} outside its range",
                "a value within 'range'"
            );
        return (value, range);
    }
}

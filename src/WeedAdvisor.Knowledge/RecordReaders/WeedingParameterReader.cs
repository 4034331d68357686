using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads a parameter of the hand-weeding model.</summary>
internal static class WeedingParameterReader
{
    /// <summary>A parameter. A range that is left out is the value alone.</summary>
    public static WeedingParameter Read(MappingReader map)
    {
        string id = map.Id();
        bool isKnown = WeedingParameterLimits.All.TryGetValue(id, out Bounds? limits);
        if (!isKnown && map.Has("id"))
        {
            map.Context.Report(
                map.Optional("id")!,
                $"'{id}'",
                "the id of a parameter of the hand-weeding model",
                NearestWord.Of(id, WeedingParameterLimits.All.Keys)
            );
            limits = new Bounds(0, decimal.MaxValue);
        }

        limits ??= new Bounds(0, 0);
        (decimal value, Span? range) = RangedNumber.Read(map, limits.Low, limits.High);
        return new WeedingParameter
        {
            Id = id,
            Name = map.Text("name"),
            Value = value,
            Range = range ?? new Span(value, value),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.Number),
        };
    }

    /// <summary>
    /// One problem for each parameter that a file of parameters leaves out; none when there is no such file.
    /// </summary>
    public static IEnumerable<Problem> MissingFrom(IReadOnlyCollection<WeedingParameter> read) =>
        read.Count == 0
            ? []
            : WeedingParameterLimits
                .All.Keys.Except(read.Select(parameter => parameter.Id), StringComparer.Ordinal)
                .Select(id => new Problem(
                    Place.Whole(read.First().Where.File),
                    $"no parameter '{id}'",
                    "every parameter of the hand-weeding model"
                ));
}

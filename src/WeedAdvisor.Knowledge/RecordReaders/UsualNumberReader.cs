using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads what is taken for usual where nobody says it: exactly the ids of <see cref="UsualIds"/>.</summary>
internal static class UsualNumberReader
{
    private const decimal Most = 10_000;

    /// <summary>A number, in the unit that its id names.</summary>
    public static UsualNumber Read(MappingReader map)
    {
        string id = map.Id();
        if (map.Has("id") && !UsualIds.All.Contains(id))
            map.Context.Report(
                map.Optional("id")!,
                $"'{id}'",
                "the id of a usual value",
                NearestWord.Of(id, UsualIds.All)
            );
        (decimal value, Span? range) = RangedNumber.Read(map, id == UsualIds.YearLate ? -Most : 0, Most);
        return new UsualNumber
        {
            Id = id,
            Name = map.Text("name"),
            Value = value,
            Range = range,
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.Number),
        };
    }

    /// <summary>One problem for each usual value that the folder leaves out.</summary>
    /// <param name="file">The file in which it should stand.</param>
    /// <param name="read">What was read of it.</param>
    public static IEnumerable<Problem> MissingFrom(string file, IEnumerable<UsualNumber> read) =>
        UsualIds
            .All.Except(read.Select(number => number.Id), StringComparer.Ordinal)
            .Select(id => new Problem(
                Place.Whole(file),
                $"no usual value '{id}'",
                "every value that is taken where nobody says it"
            ));
}

using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Catalogue;

/// <summary>
/// Where the values of a record come from, in lines: fields that rest on the same sources stand together.
/// </summary>
internal static class ValueSources
{
    /// <summary>A line for each set of sources, in the order of the record.</summary>
    public static IEnumerable<string> Of(Record record) => Of(record.From.Values);

    /// <summary>The same of some of its fields.</summary>
    /// <param name="record">The record.</param>
    /// <param name="fields">The fields; those that it does not hold are passed over.</param>
    public static IEnumerable<string> Of(Record record, IReadOnlySet<string> fields) =>
        Of(record.From.Values.Where(value => fields.Contains(value.Field)));

    private static IEnumerable<string> Of(IEnumerable<FieldSource> values) =>
        values
            .GroupBy(value => string.Join(", ", value.Sources), StringComparer.Ordinal)
            .Select(group => $"{string.Join(", ", group.Select(value => Names.Field(value.Field)))}: {group.Key}");
}

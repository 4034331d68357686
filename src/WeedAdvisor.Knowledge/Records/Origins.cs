using System.Collections.Immutable;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>Where the value of one field comes from.</summary>
/// <param name="Field">The field, as the file spells it.</param>
/// <param name="Sources">
/// Keys of the sources that say it, at least one; <c>memory</c>, <c>common-practice</c> and <c>invented</c> are keys
/// too.
/// </param>
public sealed record FieldSource(string Field, ImmutableArray<string> Sources);

/// <summary>Where each value of a record comes from.</summary>
public sealed class Origins
{
    /// <summary>The key of what was written from memory and is not confirmed.</summary>
    public const string FromMemory = "memory";

    // What stands in the place of a source where there is none that could be read again.
    private static readonly string[] s_unread = [FromMemory, "common-practice", "invented"];

    /// <summary>The origins of a record.</summary>
    /// <param name="values">One for each value, in the order of the file.</param>
    /// <param name="rows">One for each field whose rows name sources of their own: the sources of all its rows.</param>
    public Origins(ImmutableArray<FieldSource> values, ImmutableArray<FieldSource> rows)
    {
        Values = values;
        Rows = rows;
        Memory =
        [
            .. values.Concat(rows).Where(origin => origin.Sources.Contains(FromMemory)).Select(origin => origin.Field),
        ];
        ImmutableArray<string> all = [.. values.SelectMany(origin => origin.Sources).Distinct(StringComparer.Ordinal)];
        // That a field is from memory is told with the field; as a source of the record it counts where nothing else
        // is.
        Sources = all.Length > 1 ? all.Remove(FromMemory) : all;
    }

    /// <summary>Whether a key stands for a text that somebody can hold a value against.</summary>
    public static bool CanBeRead(string source) => !s_unread.Contains(source);

    /// <summary>No value, no source.</summary>
    public static Origins None { get; } = new([], []);

    /// <summary>One for each value, in the order of the file.</summary>
    public ImmutableArray<FieldSource> Values { get; }

    /// <summary>One for each field whose rows name sources of their own.</summary>
    public ImmutableArray<FieldSource> Rows { get; }

    /// <summary>Fields whose value the record has from another one, which names it first.</summary>
    public ImmutableArray<string> Inherited { get; private init; } = [];

    /// <summary>What the record says itself, its rows included.</summary>
    public IEnumerable<FieldSource> Own => Values.Where(value => !Inherited.Contains(value.Field)).Concat(Rows);

    /// <summary>Keys of the sources that were looked through in vain for the gates that are from memory.</summary>
    public ImmutableArray<string> Searched { get; init; } = [];

    /// <summary>Every source that a value rests on, each once.</summary>
    public ImmutableArray<string> Sources { get; }

    /// <summary>The fields of which something is from memory.</summary>
    public ImmutableArray<string> Memory { get; }

    /// <summary>The same with what the record has from others.</summary>
    /// <param name="values">One for each inherited field.</param>
    public Origins Inheriting(ImmutableArray<FieldSource> values) =>
        new([.. Values, .. values], Rows)
        {
            Searched = Searched,
            Inherited = [.. Inherited, .. values.Select(value => value.Field)],
        };

    /// <summary>The same with one source in the place of whatever some fields named.</summary>
    public Origins With(IReadOnlySet<string> fields, string source) =>
        new(
            [
                .. Values.Where(origin => !fields.Contains(origin.Field)),
                .. fields.Order(StringComparer.Ordinal).Select(field => new FieldSource(field, [source])),
            ],
            Rows
        )
        {
            Searched = Searched,
            Inherited = [.. Inherited.Where(field => !fields.Contains(field))],
        };

    /// <summary>The same with the sources of one more field whose rows name their own.</summary>
    /// <param name="more">The field and the sources of all its rows.</param>
    /// <param name="order">The fields with rows, in the order in which they are told.</param>
    public Origins WithRows(FieldSource more, ImmutableArray<string> order) =>
        new(Values, [.. Rows.Add(more).OrderBy(row => order.IndexOf(row.Field))])
        {
            Searched = Searched,
            Inherited = Inherited,
        };

    /// <summary>The sources of a field; none when the record does not hold it.</summary>
    public ImmutableArray<string> Of(string field)
    {
        foreach (FieldSource origin in Values)
        {
            if (origin.Field == field)
                return origin.Sources;
        }

        return [.. Rows.Where(origin => origin.Field == field).SelectMany(origin => origin.Sources)];
    }
}

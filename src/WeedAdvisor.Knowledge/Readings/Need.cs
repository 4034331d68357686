namespace WeedAdvisor.Knowledge.Readings;

/// <summary>What kind of thing has to be found out.</summary>
public enum NeedKind
{
    /// <summary>A question to the grower.</summary>
    Question,

    /// <summary>A field that a catalogue record leaves open: only the label can tell.</summary>
    Record,
}

/// <summary>Something that has to be known before a condition can be decided.</summary>
/// <param name="Kind">Whether a question or a catalogue record leaves it open.</param>
/// <param name="Id">The question's id, or <c>record-id.field</c>.</param>
public sealed record Need(NeedKind Kind, string Id) : IComparable<Need>
{
    /// <summary>A question to the grower.</summary>
    public static Need Question(string id) => new(NeedKind.Question, id);

    /// <summary>A field that the record of an action leaves open.</summary>
    public static Need Record(string recordId, string field) => new(NeedKind.Record, $"{recordId}.{field}");

    /// <inheritdoc/>
    public int CompareTo(Need? other) =>
        other is null ? 1
        : Kind != other.Kind ? Kind.CompareTo(other.Kind)
        : string.CompareOrdinal(Id, other.Id);

    /// <summary>Ordinal order of needs.</summary>
    public static bool operator <(Need left, Need right) => left.CompareTo(right) < 0;

    /// <summary>Ordinal order of needs.</summary>
    public static bool operator >(Need left, Need right) => left.CompareTo(right) > 0;

    /// <summary>Ordinal order of needs.</summary>
    public static bool operator <=(Need left, Need right) => left.CompareTo(right) <= 0;

    /// <summary>Ordinal order of needs.</summary>
    public static bool operator >=(Need left, Need right) => left.CompareTo(right) >= 0;
}

using System.Collections.Immutable;

namespace WeedAdvisor.Reports.Catalogue;

/// <summary>One record of the knowledge, ready to be shown.</summary>
/// <param name="Kind">The catalogue it stands in, such as <c>weeds</c>.</param>
/// <param name="Id">Its id.</param>
/// <param name="Name">Its name, or what it says in a line.</param>
/// <param name="Read">Reads its fields; only called when they are shown.</param>
public sealed record CatalogueEntry(string Kind, string Id, string Name, Func<ImmutableArray<Field>> Read);

/// <summary>A field of a record in words.</summary>
/// <param name="Label">What it is.</param>
/// <param name="Value">What it holds.</param>
public readonly record struct Field(string Label, string Value);

/// <summary>Collects the fields of a record; a field without a value is left out.</summary>
internal sealed class Fields
{
    private readonly ImmutableArray<Field>.Builder _fields = ImmutableArray.CreateBuilder<Field>();

    public Fields Add(string label, string? value)
    {
        if (!string.IsNullOrEmpty(value))
            _fields.Add(new Field(label, value));
        return this;
    }

    public Fields Add(string label, IEnumerable<string> values) => Add(label, string.Join(", ", values));

    public Fields AddEach(string label, IEnumerable<string> values)
    {
        foreach (string value in values)
            Add(label, value);
        return this;
    }

    public ImmutableArray<Field> Done() => _fields.ToImmutable();
}

using System.Collections.Immutable;

namespace WeedAdvisor.Reports.Documents;

/// <summary>Labels with their values in a column of their own.</summary>
/// <param name="Entries">Labels and values.</param>
/// <param name="WidestLabel">The columns that a label may take; a longer one stands above its value.</param>
public sealed record FieldList(ImmutableArray<FieldEntry> Entries, int WidestLabel) : Block;

/// <summary>A label with its values.</summary>
/// <param name="Label">The label.</param>
/// <param name="Values">One value or several, each on a line of its own.</param>
public sealed record FieldEntry(Line Label, ImmutableArray<Line> Values);

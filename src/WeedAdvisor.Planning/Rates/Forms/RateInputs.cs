using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Forms;

/// <summary>What was entered in a form, read and within bounds.</summary>
/// <param name="values">Values by field id.</param>
/// <param name="site">The knowledge and the area; null when the form needs none.</param>
public sealed class RateInputs(IReadOnlyDictionary<string, object> values, RateSite? site)
{
    /// <summary>The knowledge and the area.</summary>
    /// <exception cref="InvalidOperationException">The form was run without.</exception>
    public RateSite Site => site ?? throw new InvalidOperationException("the form was run without the knowledge");

    /// <summary>Whether a field was entered or has a usual value.</summary>
    public bool Has(string field) => values.ContainsKey(field);

    /// <summary>A quantity.</summary>
    /// <exception cref="KeyNotFoundException">It was not entered.</exception>
    public Quantity Measure(string field) => List(field)[0];

    /// <summary>A quantity; null when it was not entered.</summary>
    public Quantity? MeasureOrNull(string field) => Has(field) ? Measure(field) : null;

    /// <summary>Several quantities, at least one.</summary>
    /// <exception cref="KeyNotFoundException">They were not entered.</exception>
    public ImmutableArray<Quantity> List(string field) => (ImmutableArray<Quantity>)values[field];

    /// <summary>A plain number.</summary>
    /// <exception cref="KeyNotFoundException">It was not entered.</exception>
    public decimal Number(string field) => (decimal)values[field];

    /// <summary>A plain number; null when it was not entered.</summary>
    public decimal? NumberOrNull(string field) => Has(field) ? Number(field) : null;

    /// <summary>A word, or the id of a treatment.</summary>
    /// <exception cref="KeyNotFoundException">It was not entered.</exception>
    public string Word(string field) => (string)values[field];

    /// <summary>A word, or the id of a treatment; null when it was not entered.</summary>
    public string? WordOrNull(string field) => Has(field) ? Word(field) : null;
}

using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Answers;

/// <summary>Collects the working while it is done, so that what is shown is what was worked out.</summary>
public sealed class WorkingSheet
{
    private readonly ImmutableArray<WorkingLine>.Builder _lines = ImmutableArray.CreateBuilder<WorkingLine>();

    /// <summary>The lines so far.</summary>
    public ImmutableArray<WorkingLine> Lines => _lines.ToImmutable();

    /// <summary>Writes a line and gives its result in the unit in which it is written.</summary>
    /// <param name="label">What is worked out.</param>
    /// <param name="arithmetic">The sum with its units.</param>
    /// <param name="result">What comes out.</param>
    /// <param name="unit">The unit to write it in.</param>
    public Quantity Line(string label, string arithmetic, Quantity result, string unit)
    {
        Quantity shown = result.To(unit);
        _lines.Add(new WorkingLine(label, arithmetic, shown.ToString()));
        return shown;
    }

    /// <summary>Writes a line whose result is a plain number and gives the number.</summary>
    public decimal Line(string label, string arithmetic, decimal result)
    {
        _lines.Add(new WorkingLine(label, arithmetic, Figures.Of(Quantity.Number(result))));
        return result;
    }

    /// <summary>
    /// A quantity in another unit, with a line that shows the factor; no line when it has that unit already.
    /// </summary>
    /// <param name="label">What is converted.</param>
    /// <param name="quantity">The quantity.</param>
    /// <param name="unit">The unit wanted.</param>
    public Quantity Convert(string label, Quantity quantity, string unit)
    {
        Quantity converted = quantity.To(unit);
        if (quantity.Unit == converted.Unit)
            return quantity;
        decimal factor = quantity.Unit.Factor / converted.Unit.Factor;
        string arithmetic =
            factor >= 1
                ? $"{quantity} × {Figures.Of(factor, 8)} {converted.Unit} in {WithArticle(quantity.Unit)}"
                : $"{quantity} ÷ {Figures.Of(1 / factor, 8)} {quantity.Unit} in {WithArticle(converted.Unit)}";
        _lines.Add(new WorkingLine(label, arithmetic, converted.ToString()));
        return converted;
    }

    /// <summary>The mean, with a line when there is more than one.</summary>
    /// <param name="label">What the mean is of.</param>
    /// <param name="values">The values, at least one, all measuring the same.</param>
    public Quantity Mean(string label, ImmutableArray<Quantity> values)
    {
        if (values is [var only])
            return only;
        Quantity sum = values.Skip(1).Aggregate(values[0], (total, value) => total + value);
        return Line(
            label,
            $"({string.Join(" + ", values)}) ÷ {values.Length}",
            sum / values.Length,
            values[0].Unit.Symbol
        );
    }

    private static string WithArticle(Unit unit) =>
        (unit.Symbol is "h" or "mph" || "aeio".Contains(unit.Symbol[0], StringComparison.Ordinal) ? "an " : "a ")
        + unit;
}

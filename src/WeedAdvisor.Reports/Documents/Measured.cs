using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Reports.Documents;

/// <summary>A quantity in one unit or several: the first, and the others in brackets behind it.</summary>
/// <param name="Shown">The same quantity, or what a scale can show of it, in each unit; at least one.</param>
/// <param name="Significant">How many significant figures are written.</param>
public sealed record Measured(ImmutableArray<Quantity> Shown, int Significant) : TextPart
{
    /// <summary>Whether each is as good as the others: <c>41 g or 1.4 oz</c>.</summary>
    public bool IsChoice { get; init; }

    /// <inheritdoc/>
    public override string Text => Written(figure => figure);

    /// <summary>The quantity with each figure written as a medium writes figures.</summary>
    public string Written(Func<string, string> write)
    {
        string[] said = [.. Shown.Select(quantity => write(Figures.Of(quantity, Significant)))];
        return IsChoice ? string.Join(" or ", said)
            : said is [var own, .. { Length: > 0 } also] ? $"{own} ({string.Join(", ", also)})"
            : said[0];
    }

    /// <summary>In other units: those wanted of the ones at hand, else the first turned into them.</summary>
    public Measured In(UnitsWanted units)
    {
        ImmutableArray<Quantity> metric = Only(UnitFamily.Us),
            us = Only(UnitFamily.Metric);
        return this with
        {
            Shown = units switch
            {
                UnitsWanted.Metric => metric,
                UnitsWanted.Us => us,
                _ => [.. Shown, .. metric.Concat(us).Except(Shown)],
            },
        };
    }

    private ImmutableArray<Quantity> Only(UnitFamily unwanted)
    {
        ImmutableArray<Quantity> left = [.. Shown.Where(one => OtherUnits.FamilyOf(one.Unit) != unwanted)];
        return !left.IsEmpty ? left
            : OtherUnits.Of(Shown[0].Unit) is { } other ? [Shown[0].To(other)]
            : Shown;
    }
}

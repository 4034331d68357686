using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Robust;

/// <summary>A figure behind the price of a year that is not sure, and the range in which it may lie.</summary>
/// <param name="Id">Names it: the record and what of it.</param>
/// <param name="Name">What it is, in plain words.</param>
/// <param name="Unit">Its unit, in plain words.</param>
/// <param name="Kind">What it is about.</param>
/// <param name="Low">The low end.</param>
/// <param name="Usual">What is reckoned with, from low to high.</param>
/// <param name="High">The high end.</param>
/// <param name="Sources">Where the range comes from.</param>
public sealed record MovedFigure(
    string Id,
    string Name,
    string Unit,
    FigureKind Kind,
    decimal Low,
    decimal Usual,
    decimal High,
    ImmutableArray<string> Sources
)
{
    private static readonly string[] s_assumptions = ["invented", "common-practice", Origins.FromMemory];

    /// <summary>Whether nobody has published the range: it is a working value.</summary>
    public bool IsAssumed => Sources.All(s_assumptions.Contains);

    /// <summary>Puts a value in its place; what else is moved does not matter.</summary>
    internal Action<MovedYear, decimal> Put { get; init; } = (_, _) => { };

    /// <summary>The same with a range of no width.</summary>
    public MovedFigure Certain() => this with { Low = Usual, High = Usual };

    internal bool IsCertain => Low >= High;
}

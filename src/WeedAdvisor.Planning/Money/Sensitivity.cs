using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Money;

/// <summary>An input that is not known for sure.</summary>
/// <param name="Name">What it is.</param>
/// <param name="Unit">Its unit, in plain words.</param>
/// <param name="Low">Its low end.</param>
/// <param name="Base">What is reckoned with, from low to high.</param>
/// <param name="High">Its high end.</param>
public sealed record UncertainInput(string Name, string Unit, decimal Low, decimal Base, decimal High);

/// <summary>What one input alone does to the result.</summary>
/// <param name="Input">The input.</param>
/// <param name="AtLow">The result with the input at its low end.</param>
/// <param name="AtHigh">The result with the input at its high end.</param>
public sealed record Swing(UncertainInput Input, decimal AtLow, decimal AtHigh)
{
    /// <summary>How far the result moves.</summary>
    public decimal Size => Math.Abs(AtHigh - AtLow);
}

/// <summary>One input after the other from its low to its high end, the others at their base.</summary>
/// <param name="Base">The result with every input at its base.</param>
/// <param name="Swings">What each input does, the largest swing first, then by name.</param>
public sealed record Sensitivity(decimal Base, ImmutableArray<Swing> Swings)
{
    /// <summary>Runs the inputs through a function.</summary>
    /// <param name="inputs">The inputs; the base lies within each range.</param>
    /// <param name="result">The result for one value of each input, in the order of the inputs.</param>
    /// <exception cref="ArgumentException">When a base lies outside its range.</exception>
    public static Sensitivity Of(ImmutableArray<UncertainInput> inputs, Func<ImmutableArray<decimal>, decimal> result)
    {
        if (inputs.FirstOrDefault(input => input.Base < input.Low || input.Base > input.High) is { } outside)
            throw new ArgumentException($"the base of '{outside.Name}' lies outside its range", nameof(inputs));
        ImmutableArray<decimal> bases = [.. inputs.Select(input => input.Base)];
        return new Sensitivity(
            result(bases),
            [
                .. inputs
                    .Select(
                        (input, i) =>
                            new Swing(input, result(bases.SetItem(i, input.Low)), result(bases.SetItem(i, input.High)))
                    )
                    .OrderByDescending(swing => swing.Size)
                    .ThenBy(swing => swing.Input.Name, StringComparer.Ordinal),
            ]
        );
    }
}

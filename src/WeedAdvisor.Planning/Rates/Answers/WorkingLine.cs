namespace WeedAdvisor.Planning.Rates.Answers;

/// <summary>One line of the working, such as a person would write with a pencil.</summary>
/// <param name="Label">What is worked out.</param>
/// <param name="Arithmetic">The sum with its units, such as <c>40 fl-oz ÷ 128 fl-oz/gal</c>.</param>
/// <param name="Result">What comes out, with its unit.</param>
public sealed record WorkingLine(string Label, string Arithmetic, string Result)
{
    /// <summary>The line in one piece.</summary>
    public override string ToString() => $"{Label} = {Arithmetic} = {Result}";
}

using System.Globalization;

namespace WeedAdvisor.Interview;

/// <summary>A number that can be typed or stepped.</summary>
/// <param name="label">What it is.</param>
/// <param name="unit">Its unit.</param>
/// <param name="low">The least.</param>
/// <param name="high">The most.</param>
/// <param name="step">How far one step goes.</param>
/// <param name="shownTo">The number at which the bar is full.</param>
/// <param name="isWhole">Whether it must be whole.</param>
/// <param name="start">Where it starts.</param>
public sealed class CostField(
    string label, string unit, decimal low, decimal high, decimal step, decimal shownTo, bool isWhole, decimal start)
{
    private const int BarColumns = 16;

    /// <summary>What it is.</summary>
    public string Label { get; } = label;

    /// <summary>Its unit.</summary>
    public string Unit { get; } = unit;

    /// <summary>What is typed.</summary>
    public string Text { get; private set; } = Written(start);

    /// <summary>The last good number.</summary>
    public decimal Value { get; private set; } = start;

    /// <summary>What is wrong with what is typed; null when nothing is.</summary>
    public string? Problem { get; private set; }

    /// <summary>Types it. The last good number stays while something is wrong.</summary>
    /// <returns>Whether the number changed.</returns>
    public bool Type(string text)
    {
        Text = text;
        const NumberStyles style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        bool isNumber = decimal.TryParse(text.Trim(), style, CultureInfo.InvariantCulture, out decimal typed);
        bool isGood = isNumber && typed >= low && typed <= high && (!isWhole || typed == decimal.Truncate(typed));
        Problem = isGood ? null : $"{(isWhole ? "a whole number" : "a number")} from {Written(low)} to {Written(high)}";
        if (!isGood || typed == Value)
            return false;
        Value = typed;
        return true;
    }

    /// <summary>Steps up or down, within its bounds.</summary>
    /// <returns>Whether the number changed.</returns>
    public bool Step(int steps) => Type(Written(Math.Clamp(Value + (steps * step), low, high)));

    /// <summary>A bar of its size, and what is wrong with it.</summary>
    public AdviceLine Beside
    {
        get
        {
            if (Problem is { } problem)
                return new AdviceLine($"! {problem}", LineTone.Warning);
            int full = (int)Math.Round(Math.Clamp(Value / shownTo, 0, 1) * BarColumns, MidpointRounding.AwayFromZero);
            return new AdviceLine($"{Unit,-9}{new string('=', full)}{new string('-', BarColumns - full)}", LineTone.Quiet);
        }
    }

    private static string Written(decimal value) => value.ToString("0.####", CultureInfo.InvariantCulture);
}

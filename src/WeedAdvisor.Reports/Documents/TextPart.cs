using System.Globalization;

namespace WeedAdvisor.Reports.Documents;

/// <summary>A part of a line.</summary>
public abstract record TextPart
{
    /// <summary>The part in plain letters.</summary>
    public abstract string Text { get; }
}

/// <summary>Plain words.</summary>
/// <param name="Text">The words.</param>
public sealed record Words(string Text) : TextPart
{
    /// <inheritdoc/>
    public override string Text { get; } = Text;
}

/// <summary>What something is called.</summary>
/// <param name="Text">The name.</param>
public sealed record Named(string Text) : TextPart
{
    /// <inheritdoc/>
    public override string Text { get; } = Text;
}

/// <summary>A figure.</summary>
/// <param name="Value">The value, not rounded.</param>
/// <param name="Unit">Its unit: <c>$</c> stands before the number, every other behind it; empty for a bare
/// number.</param>
/// <param name="Digits">How its digits are written, as a .NET number format.</param>
public sealed record Amount(decimal Value, string Unit, string Digits) : TextPart
{
    /// <summary>The unit of money.</summary>
    public const string Dollar = "$";

    /// <inheritdoc/>
    public override string Text
    {
        get
        {
            string number = Math.Abs(Value).ToString(Digits, CultureInfo.InvariantCulture);
            string sign = Value < 0 ? "-" : "";
            return Unit switch
            {
                Dollar => sign + Dollar + number,
                "" => sign + number,
                _ => $"{sign}{number} {Unit}",
            };
        }
    }
}

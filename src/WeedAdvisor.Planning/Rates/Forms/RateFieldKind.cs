using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Forms;

/// <summary>What may be entered in a field.</summary>
public abstract record RateFieldKind
{
    private RateFieldKind() { }

    /// <summary>A number with a unit, above zero unless said otherwise.</summary>
    /// <param name="Units">Units to offer, the usual one first; any unit that measures the same is taken.</param>
    public sealed record Measure(ImmutableArray<Unit> Units) : RateFieldKind
    {
        /// <summary>The least that is believed; null for no bound but zero.</summary>
        public Quantity? Least { get; init; }

        /// <summary>The most that is believed; null for no bound.</summary>
        public Quantity? Most { get; init; }

        /// <summary>Whether zero is allowed.</summary>
        public bool MayBeZero { get; init; }

        /// <summary>Whether several may be entered, set apart by commas.</summary>
        public bool IsList { get; init; }

        /// <summary>The unit taken when none is written; null when one must be written.</summary>
        public Unit? Fallback { get; init; }
    }

    /// <summary>A plain number.</summary>
    /// <param name="Least">The least allowed.</param>
    /// <param name="Most">The most allowed.</param>
    /// <param name="IsWhole">Whether it must be whole.</param>
    public sealed record Number(decimal Least, decimal Most, bool IsWhole) : RateFieldKind;

    /// <summary>One of a few words.</summary>
    /// <param name="Words">The words with their plain text, the usual one first.</param>
    public sealed record Choice(ImmutableArray<KeyValuePair<string, string>> Words) : RateFieldKind;

    /// <summary>The id of a treatment in the knowledge.</summary>
    public sealed record TreatmentId : RateFieldKind;
}

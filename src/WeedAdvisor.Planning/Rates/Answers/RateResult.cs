using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Answers;

/// <summary>One figure of an answer.</summary>
/// <param name="Id">Its id, kebab-case, unique in the answer.</param>
/// <param name="Label">What it is.</param>
/// <param name="Value">The figure, not rounded.</param>
/// <param name="AlsoIn">Other units to show it in, as a rule one of the other system.</param>
/// <param name="IsMeasuredOut">Whether somebody weighs or pours it, so that it is also given as a scale or a jug can
/// show it.</param>
public sealed record RateResult(
    string Id,
    string Label,
    Quantity Value,
    ImmutableArray<Unit> AlsoIn,
    bool IsMeasuredOut = false
)
{
    /// <summary>The figure in its own unit and the others.</summary>
    public IEnumerable<Quantity> Shown
    {
        get
        {
            Quantity value = Value;
            return AlsoIn.Select(unit => value.To(unit)).Prepend(value);
        }
    }
}

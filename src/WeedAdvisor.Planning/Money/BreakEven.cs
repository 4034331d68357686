using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Money;

/// <summary>Where two ways cost the same. A closed family: the nested types are all there are.</summary>
public abstract record BreakEven
{
    private BreakEven() { }

    /// <summary>They cost the same at one value.</summary>
    /// <param name="Value">The value, more than 0.</param>
    /// <param name="FirstIsCheaperAbove">Whether the first way is the cheaper one above it.</param>
    public sealed record At(decimal Value, bool FirstIsCheaperAbove) : BreakEven;

    /// <summary>One way is the cheaper at every value above 0.</summary>
    /// <param name="FirstIsCheaper">Whether that is the first.</param>
    public sealed record Never(bool FirstIsCheaper) : BreakEven;

    /// <summary>They cost the same at every value.</summary>
    public sealed record Everywhere : BreakEven;
}

/// <summary>Break-even points and payback.</summary>
public static class BreakEvens
{
    /// <summary>
    /// Units to be sold before a fixed cost is earned: fixed / (price - variable). Null when every unit loses money or
    /// earns nothing: then no number of units helps. Sources: psu-breakeven, higgins-breakeven.
    /// </summary>
    /// <param name="fixedUsd">Fixed cost, US dollars, at least 0.</param>
    /// <param name="priceUsd">Price of a unit, US dollars.</param>
    /// <param name="variableUsd">What each unit costs by itself, US dollars.</param>
    public static decimal? Units(decimal fixedUsd, decimal priceUsd, decimal variableUsd)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(fixedUsd);
        return priceUsd > variableUsd ? fixedUsd / (priceUsd - variableUsd) : null;
    }

    /// <summary>The same in whole units: the first number that does not lose.</summary>
    public static decimal? WholeUnits(decimal fixedUsd, decimal priceUsd, decimal variableUsd) =>
        Units(fixedUsd, priceUsd, variableUsd) is { } units ? Math.Ceiling(units) : null;

    /// <summary>The wage, US dollars an hour, at which two ways cost the same.</summary>
    public static BreakEven Wage(CostAtWage first, CostAtWage second)
    {
        decimal moreHours = second.Hours - first.Hours;
        decimal moreOther = second.OtherUsd - first.OtherUsd;
        if (moreHours == 0)
            return moreOther == 0 ? new BreakEven.Everywhere() : new BreakEven.Never(FirstIsCheaper: moreOther > 0);
        decimal wage = -moreOther / moreHours;
        return wage > 0
            ? new BreakEven.At(wage, FirstIsCheaperAbove: moreHours > 0)
            : new BreakEven.Never(FirstIsCheaper: moreHours > 0);
    }

    /// <summary>
    /// The area, in the unit of the saving, above which something bought earns its yearly cost. Null when nothing is
    /// saved.
    /// </summary>
    /// <param name="yearlyUsd">Yearly cost of what is bought, US dollars, at least 0.</param>
    /// <param name="savingUsdPerArea">Saved on each unit of area, US dollars a year.</param>
    public static decimal? Area(decimal yearlyUsd, decimal savingUsdPerArea) => Units(yearlyUsd, savingUsdPerArea, 0);

    /// <summary>
    /// Years until an outlay is earned back, interest left aside; 0 without an outlay, null when nothing is saved.
    /// </summary>
    /// <param name="outlayUsd">Paid at the start, US dollars, at least 0.</param>
    /// <param name="savingUsdPerYear">Saved each year before any share of the outlay, US dollars.</param>
    public static decimal? PaybackYears(decimal outlayUsd, decimal savingUsdPerYear)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(outlayUsd);
        if (outlayUsd == 0)
            return 0;
        return savingUsdPerYear > 0 ? outlayUsd / savingUsdPerYear : null;
    }
}

namespace WeedAdvisor.Planning.OneYear;

/// <summary>What a way costs, split into what the wage moves and what it does not.</summary>
/// <param name="OtherUsd">Everything but labour, US dollars a year.</param>
/// <param name="Hours">Hours of work a year.</param>
public readonly record struct CostAtWage(decimal OtherUsd, decimal Hours)
{
    /// <summary>The whole cost, US dollars a year.</summary>
    /// <param name="wageUsd">The wage, US dollars an hour.</param>
    public decimal TotalUsd(decimal wageUsd) => OtherUsd + (Hours * wageUsd);

    /// <summary>The two parts of a list of items.</summary>
    public static CostAtWage Of(IEnumerable<CostItem> items)
    {
        decimal other = 0;
        decimal hours = 0;
        foreach (CostItem item in items)
        {
            hours += item.Hours;
            other += item.Kind is CostKind.Labour or CostKind.NextYear ? 0 : item.Usd;
        }

        return new CostAtWage(other, hours);
    }
}

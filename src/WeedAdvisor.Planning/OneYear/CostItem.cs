namespace WeedAdvisor.Planning.OneYear;

/// <summary>What kind of money an item is.</summary>
public enum CostKind
{
    /// <summary>Something bought and used up.</summary>
    Material,

    /// <summary>Paid hours.</summary>
    Labour,

    /// <summary>The yearly share of something that lasts for years.</summary>
    Equipment,

    /// <summary>Income that does not come: plants that cannot be sold.</summary>
    LostReturn,

    /// <summary>Work of the year after that this year leaves: its hours are not hours of this year.</summary>
    NextYear,
}

/// <summary>One thing that costs money in a year, with how the amount comes about.</summary>
/// <param name="Id">Names the same thing in different ways, so that they can be set against each other.</param>
/// <param name="Name">What it is, in plain words.</param>
/// <param name="Kind">What kind of money it is.</param>
/// <param name="Usd">US dollars a year, at least 0.</param>
/// <param name="Hours">Hours of work a year in it, at least 0.</param>
/// <param name="Working">The sum that gives the amount.</param>
public sealed record CostItem(string Id, string Name, CostKind Kind, decimal Usd, decimal Hours, string Working)
{
    /// <summary>Id of the action whose use it is; null for rounds, tools and what comes of the weeds.</summary>
    public string? Action { get; init; }

    /// <summary>
    /// Whether the weeds that come up cause it, so that it falls as fewer do; what is walked and bought is the same
    /// whatever comes up.
    /// </summary>
    public bool IsOfWeeds { get; init; }
}

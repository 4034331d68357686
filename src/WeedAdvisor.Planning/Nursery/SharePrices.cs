using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Nursery;

/// <summary>
/// A price on each hour and each dollar that is spent. At any prices of 0 or more, what all areas cost at least when
/// each takes what is cheapest for it, less the price of the limits, is a floor under every choice that keeps them;
/// these are prices at which it is high.
/// </summary>
/// <param name="Hour">US dollars for an hour a week.</param>
/// <param name="Dollar">US dollars for a dollar spent.</param>
/// <param name="OfLimits">What the limits are worth at the prices, US dollars.</param>
internal sealed record SharePrices(decimal Hour, decimal Dollar, decimal OfLimits)
{
    private const int Turns = 6,
        Halvings = 60;

    /// <summary>An offer with its hours and money at the prices, US dollars.</summary>
    public decimal Of(Offer offer) => offer.Usd + (Hour * offer.HoursPerWeek) + (Dollar * offer.SpentUsd);

    /// <summary>Prices for some areas and limits.</summary>
    public static SharePrices Of(ImmutableArray<ImmutableArray<Offer>> areas, decimal? hours, decimal? usd)
    {
        decimal hour = 0,
            dollar = 0;
        int turns =
            hours is null && usd is null ? 0
            : hours is null || usd is null ? 1
            : Turns;
        for (int turn = 0; turn < turns; turn++)
        {
            if (hours is { } most)
                hour = Balanced(areas, most, price => At(price, dollar), offer => offer.HoursPerWeek);
            if (usd is { } money)
                dollar = Balanced(areas, money, price => At(hour, price), offer => offer.SpentUsd);
        }

        return At(hour, dollar) with
        {
            OfLimits = (hour * (hours ?? 0)) + (dollar * (usd ?? 0)),
        };
    }

    private static SharePrices At(decimal hour, decimal dollar) => new(hour, dollar, 0);

    // The floor bends down along one price: it is highest where what the areas take meets the limit.
    private static decimal Balanced(
        ImmutableArray<ImmutableArray<Offer>> areas,
        decimal limit,
        Func<decimal, SharePrices> at,
        Func<Offer, decimal> takes
    )
    {
        if (Taken(areas, at(0), takes) <= limit)
            return 0;
        decimal low = 0,
            high = 1;
        while (Taken(areas, at(high), takes) > limit && high < 1e9m)
            high *= 4;
        for (int i = 0; i < Halvings && high - low > 1e-6m; i++)
        {
            decimal middle = (low + high) / 2;
            if (Taken(areas, at(middle), takes) > limit)
                low = middle;
            else
                high = middle;
        }

        return Math.Round(high, 6);
    }

    private static decimal Taken(
        ImmutableArray<ImmutableArray<Offer>> areas,
        SharePrices prices,
        Func<Offer, decimal> takes
    ) => areas.Sum(offers => takes(offers.MinBy(prices.Of)));
}

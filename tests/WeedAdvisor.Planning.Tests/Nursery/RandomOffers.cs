using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Planning.Nursery;

namespace WeedAdvisor.Planning.Tests.Nursery;

/// <summary>
/// Nurseries drawn from a number: areas with a few ways each, in whole cents and hundredths of an hour.
/// </summary>
internal static class RandomOffers
{
    public static ImmutableArray<ImmutableArray<Offer>> Areas(int seed, int areas, int most)
    {
        var random = new Draws(seed);
        return
        [
            .. Enumerable
                .Range(0, areas)
                .Select(_ =>
                    Enumerable
                        .Range(0, random.Next(1, most + 1))
                        .Select(_ =>
                        {
                            // Fewer hours and less money mostly cost more, as they do.
                            int hours = random.Next(0, 4000),
                                spent = random.Next(0, 90_000);
                            int usd = random.Next(50_000, 400_000) + (600_000_000 / (hours + 900)) - (spent * 2);
                            return new Offer(hours / 100m, spent / 100m, usd / 100m);
                        })
                        .ToImmutableArray()
                ),
        ];
    }

    /// <summary>A limit between what the areas take at least and at most; null one time in four.</summary>
    public static decimal? Limit(Draws random, ImmutableArray<ImmutableArray<Offer>> areas, Func<Offer, decimal> of) =>
        random.Next(4) == 0
            ? null
            : decimal.Round(
                areas.Sum(offers => offers.Min(of))
                    + (
                        (areas.Sum(offers => offers.Max(of)) - areas.Sum(offers => offers.Min(of)))
                        * random.Next(-5, 100)
                        / 100
                    ),
                2
            );
}

/// <summary>Whole numbers drawn one after another from a seed.</summary>
internal sealed class Draws(int seed)
{
    private readonly PCG _numbers = new(1, (ulong)seed);

    /// <summary>A number from 0 to one below the most.</summary>
    public int Next(int most) => (int)_numbers.Next((uint)most);

    /// <summary>A number from the least to one below the most.</summary>
    public int Next(int least, int most) => least + Next(most - least);
}

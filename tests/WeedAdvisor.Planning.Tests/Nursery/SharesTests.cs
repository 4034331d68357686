using System.Collections.Immutable;
using WeedAdvisor.Golden;
using WeedAdvisor.Planning.Nursery;

namespace WeedAdvisor.Planning.Tests.Nursery;

/// <summary>The shares of a nursery, held against going through all of them and against CP-SAT.</summary>
public sealed class SharesTests
{
    private const double Seconds = 120;

    // The oracle goes through every choice of one offer of each area.
    [Fact]
    public void The_shares_cost_what_the_cheapest_of_all_choices_does()
    {
        for (int seed = 0; seed < Sizes.Of(few: 60, many: 500); seed++)
        {
            var random = new Draws(seed);
            ImmutableArray<ImmutableArray<Offer>> areas = RandomOffers.Areas(seed, random.Next(1, 7), 5);
            decimal? hours = RandomOffers.Limit(random, areas, offer => offer.HoursPerWeek),
                usd = RandomOffers.Limit(random, areas, offer => offer.SpentUsd);
            decimal? least = null;
            foreach (int[] choice in Choices([.. areas.Select(offers => offers.Length)]))
            {
                Offer[] taken = [.. choice.Select((offer, area) => areas[area][offer])];
                if (taken.Sum(one => one.HoursPerWeek) > hours || taken.Sum(one => one.SpentUsd) > usd)
                    continue;
                decimal cost = taken.Sum(one => one.Usd);
                least = least is { } best && best <= cost ? best : cost;
            }

            Shares? shares = Shares.Of(areas, hours, usd);
            Assert.Equal(least, shares?.Usd);
            if (shares is null)
                continue;
            Offer[] chosen = [.. shares.Chosen.Select((offer, area) => areas[area][offer])];
            Assert.Equal(chosen.Sum(one => one.Usd), shares.Usd);
            Assert.Equal(chosen.Sum(one => one.HoursPerWeek), shares.HoursPerWeek);
            Assert.Equal(chosen.Sum(one => one.SpentUsd), shares.SpentUsd);
            Assert.False(shares.HoursPerWeek > hours);
            Assert.False(shares.SpentUsd > usd);
        }
    }

    [Fact]
    public void CP_SAT_proves_the_same_cost_of_nurseries_that_share_hours()
    {
        for (int seed = 0; seed < Sizes.Of(few: 3, many: 30); seed++)
        {
            var random = new Draws(seed);
            ImmutableArray<ImmutableArray<Offer>> areas = RandomOffers.Areas(seed, random.Next(10, 41), 20);
            decimal hours = Middle(random, areas, offer => offer.HoursPerWeek);
            decimal? usd = random.Next(2) == 0 ? null : Middle(random, areas, offer => offer.SpentUsd);
            Assert.Equal(CpSatShares.Solve(areas, hours, usd, Seconds), Shares.Of(areas, hours, usd)?.Usd);
        }
    }

    [Fact]
    public void More_hours_or_money_never_cost_more()
    {
        for (int seed = 0; seed < Sizes.Of(few: 20, many: 500); seed++)
        {
            ImmutableArray<ImmutableArray<Offer>> areas = RandomOffers.Areas(seed, 12, 8);
            decimal before = decimal.MaxValue;
            for (int step = 0; step <= 10; step++)
            {
                decimal all = areas.Sum(offers => offers.Max(offer => offer.HoursPerWeek)) * step / 10;
                decimal? money =
                    seed % 2 == 0 ? null : areas.Sum(offers => offers.Max(one => one.SpentUsd)) * step / 10;
                if (Shares.Of(areas, all, money) is not { } shares)
                {
                    Assert.Equal(decimal.MaxValue, before);
                    continue;
                }

                Assert.True(shares.Usd <= before);
                before = shares.Usd;
            }

            Assert.Equal(areas.Sum(offers => offers.Min(offer => offer.Usd)), before);
        }
    }

    [Fact]
    public void What_is_left_of_the_ways_is_what_no_other_beats()
    {
        for (int seed = 0; seed < Sizes.Of(few: 100, many: 5000); seed++)
        {
            ImmutableArray<Offer> all = RandomOffers.Areas(seed, 1, 40)[0];
            ImmutableArray<Offer> kept = Offer.Undominated(all, offer => offer);
            Offer[] unbeaten =
            [
                .. all.Distinct()
                    .Where(one =>
                        !all.Any(other =>
                            other != one
                            && other.HoursPerWeek <= one.HoursPerWeek
                            && other.SpentUsd <= one.SpentUsd
                            && other.Usd <= one.Usd
                        )
                    ),
            ];
            Assert.Equal(unbeaten.ToHashSet(), kept.ToHashSet());
            Assert.Equal(kept.Select(offer => offer.HoursPerWeek).Order(), kept.Select(offer => offer.HoursPerWeek));
        }
    }

    [Fact]
    public void The_first_hours_go_where_an_hour_saves_most()
    {
        // Neglect costs 1,000. Two hours save 300, five 400, twelve 600: 150 an hour against 80 and 50.
        ImmutableArray<Offer> offers = [new Offer(2, 0, 700), new Offer(5, 0, 600), new Offer(12, 0, 400)];
        Assert.Equal(new FirstHours(1000, 2, 300), FirstHours.Of(1000, offers));
        Assert.Equal(150, FirstHours.Of(1000, offers).UsdAnHour);
        Assert.Equal(0, FirstHours.Of(400, offers).UsdAnHour);
    }

    private static decimal Middle(Draws random, ImmutableArray<ImmutableArray<Offer>> areas, Func<Offer, decimal> of)
    {
        decimal least = areas.Sum(offers => offers.Min(of)),
            most = areas.Sum(offers => of(offers.MinBy(offer => offer.Usd)));
        return decimal.Round(least + (Math.Max(0, most - least) * random.Next(20, 90) / 100), 2);
    }

    private static IEnumerable<int[]> Choices(int[] sizes)
    {
        int[] choice = new int[sizes.Length];
        while (true)
        {
            yield return [.. choice];
            int area = 0;
            while (area < sizes.Length && ++choice[area] == sizes[area])
                choice[area++] = 0;
            if (area == sizes.Length)
                yield break;
        }
    }
}

using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Nursery;

/// <summary>
/// Chooses one offer of each area, exactly: area by area it keeps all sums of hours, money and cost of which none is
/// beaten by another, and drops those that cannot become cheaper than the best choice known. What the rest must cost at
/// least is told by a price on each hour and dollar, at which every area takes what is cheapest for it.
/// </summary>
internal sealed class ShareSearch
{
    // A first, narrow pass finds a good choice, by which the exact one drops nearly everything.
    private const int Narrow = 400;

    private readonly ImmutableArray<ImmutableArray<Offer>> _areas;
    private readonly int[] _order;
    private readonly decimal? _hours;
    private readonly decimal? _usd;
    private readonly SharePrices _prices;
    private readonly decimal[] _restAtPrices;
    private readonly decimal[] _restHours;
    private readonly decimal[] _restUsd;

    public ShareSearch(ImmutableArray<ImmutableArray<Offer>> areas, decimal? hours, decimal? usd)
    {
        (_areas, _hours, _usd) = (areas, hours, usd);
        _order =
        [
            .. Enumerable
                .Range(0, areas.Length)
                .OrderByDescending(area => areas[area].Max(one => one.Usd) - areas[area].Min(one => one.Usd)),
        ];
        _prices = SharePrices.Of(areas, hours, usd);
        _restAtPrices = Rest(one => _prices.Of(one));
        _restHours = Rest(one => one.HoursPerWeek);
        _restUsd = Rest(one => one.SpentUsd);
    }

    public Shares? Best()
    {
        Shares? good = Through(Narrow, best: null);
        return Through(int.MaxValue, good) ?? good;
    }

    // What the areas from a place on take at least.
    private decimal[] Rest(Func<Offer, decimal> of)
    {
        decimal[] rest = new decimal[_order.Length + 1];
        for (int i = _order.Length - 1; i >= 0; i--)
            rest[i] = rest[i + 1] + _areas[_order[i]].Min(of);
        return rest;
    }

    // The best choice that is cheaper than one known, among as many sums as are kept; null for none.
    private Shares? Through(int width, Shares? best)
    {
        var steps = new List<Sum[]>(_order.Length);
        Sum[] sums = [new Sum(default, -1, -1)];
        for (int i = 0; i < _order.Length; i++)
        {
            sums = Kept(Longer(sums, i, best), i + 1, width);
            steps.Add(sums);
        }

        return sums.Length == 0 ? null : Told(steps, Array.IndexOf(sums, sums.MinBy(sum => sum.All.Usd)!));
    }

    private IEnumerable<Sum> Longer(Sum[] sums, int place, Shares? best)
    {
        ImmutableArray<Offer> offers = _areas[_order[place]];
        for (int from = 0; from < sums.Length; from++)
        {
            Offer so = sums[from].All;
            for (int offer = 0; offer < offers.Length; offer++)
            {
                Offer one = offers[offer];
                var all = new Offer(so.HoursPerWeek + one.HoursPerWeek, so.SpentUsd + one.SpentUsd, so.Usd + one.Usd);
                if (
                    all.HoursPerWeek + _restHours[place + 1] <= (_hours ?? decimal.MaxValue)
                    && all.SpentUsd + _restUsd[place + 1] <= (_usd ?? decimal.MaxValue)
                    && !(AtLeast(all, place + 1) >= best?.Usd)
                )
                    yield return new Sum(all, from, offer);
            }
        }
    }

    private decimal AtLeast(Offer all, int place) =>
        Math.Max(
            _prices.Of(all) + _restAtPrices[place] - _prices.OfLimits,
            // Without a price on anything.
            all.Usd
        );

    private Sum[] Kept(IEnumerable<Sum> sums, int place, int width)
    {
        var stairs = new Stairs();
        IEnumerable<Sum> kept = sums.OrderBy(sum => sum.All.Usd)
            .ThenBy(sum => sum.All.HoursPerWeek)
            .Where(sum => stairs.Add(HoursOf(sum), UsdOf(sum)));
        return width == int.MaxValue ? [.. kept] : [.. kept.OrderBy(sum => AtLeast(sum.All, place)).Take(width)];
    }

    // What is not limited does not count when sums are held against each other.
    private decimal HoursOf(Sum sum) => _hours is null ? 0 : sum.All.HoursPerWeek;

    private decimal UsdOf(Sum sum) => _usd is null ? 0 : sum.All.SpentUsd;

    private Shares Told(List<Sum[]> steps, int last)
    {
        int[] chosen = new int[_order.Length];
        Offer all = steps.Count == 0 ? default : steps[^1][last].All;
        for (int place = steps.Count - 1, at = last; place >= 0; place--)
        {
            Sum sum = steps[place][at];
            chosen[_order[place]] = sum.Taken;
            at = sum.From;
        }

        return new Shares([.. chosen], all.HoursPerWeek, all.SpentUsd, all.Usd);
    }

    // The areas so far together, and how it came about.
    private sealed record Sum(Offer All, int From, int Taken);
}

using System.Collections.Immutable;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Season.Support;

/// <summary>Invented problems of two sizes: small ones that can be searched through, and full years.</summary>
internal static class RandomSeasons
{
    private static readonly double[] s_ratings = [0, 0, 0.3, 0.5, 0.7, 0.85, 0.95];

    /// <summary>A few weeks and candidates, with every kind of limit now and then.</summary>
    public static SeasonProblem Small(ulong seed)
    {
        var draw = new Draw(seed);
        int weeks = draw.Between(3, 7),
            weeds = draw.Between(1, 3),
            candidates = draw.Between(2, 4);
        SeasonCandidate Candidate(string name) =>
            new(
                name,
                [.. Enumerable.Range(0, weeks).Select(_ => draw.Chance(90) ? draw.Between(1, 12) : (decimal?)null)],
                [.. Enumerable.Range(0, weeds).Select(_ => RandomControl(draw, draw.Between(1, 5)))],
                [.. Some(draw, ["a", "b", "c"]).Select(active => new ActiveDose(active, draw.Between(1, 4)))],
                [.. Some(draw, ["1", "2", "3"])]
            )
            {
                MinWeeksBetween = draw.Between(0, 3),
                MaxUsesPerYear = draw.Chance(30) ? draw.Between(0, 2) : null,
                UsesBefore = draw.Between(0, 1),
            };

        ImmutableArray<SeasonCandidate> all = [.. Enumerable.Range(0, candidates).Select(i => Candidate($"c{i}"))];
        int[] pastWeeks =
        [
            .. Enumerable.Range(0, draw.Between(0, 2)).Select(_ => -draw.Between(1, 5)).Distinct().Order(),
        ];
        return new SeasonProblem(
            [
                .. Enumerable
                    .Range(0, weeds)
                    .Select(weed => new SeasonWeed(
                        $"w{weed}",
                        [.. Enumerable.Range(0, weeks).Select(_ => (decimal)draw.Between(0, 30))]
                    )),
            ],
            all,
            new SeasonLimits
            {
                Yearly =
                [
                    .. Some(draw, ["a", "b"])
                        .Select(active => new ActiveLimit(active, draw.Between(2, 9), draw.Between(0, 2))),
                ],
                MaxRunOfSite = draw.Chance(60) ? draw.Between(1, 2) : null,
                MaxShareOfSite = draw.Chance(30) ? draw.Of(0.25m, 0.5m, 0.7m) : null,
                MinWeeksBetweenAny = draw.Between(1, 2),
                Spending = draw.Chance(25) ? Spending(draw, all, 2, 20) : null,
            },
            RandomWishes(draw, all, weeks, weeds)
        )
        {
            Weeks = weeks,
            History =
            [
                .. pastWeeks.Select(week => new PastUse(week, draw.Chance(70) ? draw.Of([.. all]) : Candidate("old"))),
            ],
            Gaps = [.. RandomGaps(draw, all, 4)],
        };
    }

    /// <summary>
    /// A year of 52 weeks as a nursery might see it; costs, intervals and residual lives in the usual ranges.
    /// </summary>
    /// <param name="seed">Says which.</param>
    /// <param name="candidates">How many candidates.</param>
    /// <param name="weeds">How many weeds.</param>
    /// <param name="openPercent">In how many of a hundred weeks a candidate may go on.</param>
    public static SeasonProblem Year(ulong seed, int candidates = 30, int weeds = 12, int openPercent = 92)
    {
        const int weeks = 52;
        var draw = new Draw(seed);
        int actives = Math.Max(3, candidates / 2);
        string[] siteOf = [.. Enumerable.Range(0, actives).Select(_ => $"group {draw.Between(1, 7)}")];
        ImmutableArray<SeasonCandidate> all =
        [
            .. Enumerable.Range(0, candidates).Select(i => YearCandidate(draw, i, weeks, weeds, siteOf, openPercent)),
        ];
        return new SeasonProblem(
            [.. Enumerable.Range(0, weeds).Select(weed => new SeasonWeed($"weed {weed}", Pressure(draw, weeks)))],
            all,
            new SeasonLimits
            {
                Yearly =
                [
                    .. all.SelectMany(one => one.Actives)
                        .GroupBy(one => one.Active)
                        .Select(group => new ActiveLimit(
                            group.Key,
                            group.Max(one => one.KgPerHa) * draw.Of(2m, 2.5m, 3m)
                        )),
                ],
                MaxRunOfSite = draw.Of(1, 2),
                MinWeeksBetweenAny = draw.Between(1, 3),
                Spending = draw.Chance(25) ? Spending(draw, all, 100, 700) : null,
            },
            new SeasonWishes
            {
                ClosedWeeks = draw.Chance(50) ? [.. Enumerable.Range(draw.Between(10, 40), 3)] : [],
                AtMost = draw.Chance(40) ? draw.Between(3, 5) : null,
                Budget = draw.Chance(30) ? draw.Between(500, 1100) : null,
            }
        )
        {
            Weeks = weeks,
            History = draw.Chance(50) ? [new PastUse(-draw.Between(1, 6), draw.Of([.. all]))] : [],
            Gaps = [.. RandomGaps(draw, all, 20)],
        };
    }

    private static SeasonCandidate YearCandidate(
        Draw draw,
        int number,
        int weeks,
        int weeds,
        string[] siteOf,
        int openPercent
    )
    {
        int cost = draw.Between(50, 400),
            residual = draw.Between(6, 16),
            risky = draw.Between(0, 51);
        int[] actives =
        [
            .. Enumerable.Range(0, draw.Chance(30) ? 2 : 1).Select(_ => draw.Between(0, siteOf.Length - 1)).Distinct(),
        ];
        return new SeasonCandidate(
            $"treatment {number}",
            [
                .. Enumerable
                    .Range(0, weeks)
                    .Select(week =>
                        draw.Chance(100 - openPercent)
                            ? (decimal?)null
                            : cost + (Math.Abs(week - risky) < 4 ? draw.Between(20, 90) : 0)
                    ),
            ],
            [.. Enumerable.Range(0, weeds).Select(_ => Fading(draw.Of(s_ratings), residual))],
            [.. actives.Select(active => new ActiveDose($"active {active}", draw.Between(5, 40) / 10m))],
            [.. actives.Select(active => siteOf[active]).Distinct()]
        )
        {
            MinWeeksBetween = draw.Between(6, 10),
            MaxUsesPerYear = draw.Chance(60) ? draw.Between(1, 3) : null,
        };
    }

    // Full for half its life, then down to a third.
    private static ImmutableArray<double> Fading(double rating, int residual) =>
        [
            .. Enumerable
                .Range(0, residual)
                .Select(age =>
                    age < residual / 2
                        ? rating
                        : Math.Round(rating * (1 - (0.66 * (age - (residual / 2)) / Math.Max(1, residual / 2))), 3)
                ),
        ];

    private static ImmutableArray<decimal> Pressure(Draw draw, int weeks)
    {
        int peak = draw.Between(8, 42),
            width = draw.Between(4, 14);
        double height = draw.Between(5, 40);
        bool twice = draw.Chance(40);
        return
        [
            .. Enumerable
                .Range(0, weeks)
                .Select(week =>
                    (decimal)
                        Math.Round(
                            height
                                * (
                                    Hump(week, peak, width) + (twice ? 0.7 * Hump(week, (peak + 24) % weeks, width) : 0)
                                ),
                            2
                        )
                ),
        ];
    }

    private static SpendingLimit Spending(Draw draw, ImmutableArray<SeasonCandidate> all, int each, int most) =>
        new(
            all.ToImmutableDictionary(one => one.Name, _ => (decimal)draw.Between(0, 4) * each / 2),
            draw.Between(0, most)
        );

    private static double Hump(int week, int peak, int width) =>
        Math.Max(0, 1 - (Math.Abs(week - peak) / (double)width));

    private static ImmutableArray<double> RandomControl(Draw draw, int ages) =>
        [.. Enumerable.Range(0, ages).Select(_ => draw.Of(s_ratings))];

    private static SeasonWishes RandomWishes(Draw draw, ImmutableArray<SeasonCandidate> all, int weeks, int weeds)
    {
        int from = draw.Between(0, weeks - 1);
        return new SeasonWishes
        {
            Budget = draw.Chance(25) ? draw.Between(0, 50) : null,
            AtLeast = draw.Chance(20) ? draw.Between(1, 3) : null,
            AtMost = draw.Chance(15) ? draw.Between(0, 3) : null,
            ClosedWeeks = [.. Enumerable.Range(0, weeks).Where(_ => draw.Chance(10))],
            MustUse = draw.Chance(12) ? [draw.Of([.. all]).Name] : [],
            Dropped = draw.Chance(12) ? [draw.Of([.. all]).Name] : [],
            MustCover = draw.Chance(20)
                ?
                [
                    new CoverWish(
                        $"w{draw.Between(0, weeds - 1)}",
                        from,
                        draw.Between(from, weeks - 1),
                        draw.Of(0.3, 0.5, 0.85)
                    ),
                ]
                : [],
        };
    }

    private static IEnumerable<SeasonGap> RandomGaps(Draw draw, ImmutableArray<SeasonCandidate> all, int longest) =>
        draw.Chance(40)
            ? Enumerable
                .Range(0, draw.Between(1, 3))
                .Select(_ => new SeasonGap(draw.Of([.. all]).Name, draw.Of([.. all]).Name, draw.Between(1, longest)))
            : [];

    private static IEnumerable<string> Some(Draw draw, string[] names)
    {
        string first = draw.Of(names),
            second = draw.Of(names);
        return draw.Chance(60) || first == second ? [first] : [first, second];
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>
/// One weed in one place, as the model needs it. Weeks of the year are numbered from 0 (1 to 7 January) to 51, which
/// also takes the last days of December.
/// </summary>
public sealed record WeedTraits
{
    /// <summary>Weeks in a year of the model.</summary>
    public const int WeeksInYear = 52;

    /// <summary>Ages in weeks that are kept apart; what is older is counted with the last.</summary>
    internal const int Ages = 40;

    /// <summary>The weed's id.</summary>
    public required string Weed { get; init; }

    /// <summary>Its common name.</summary>
    public required string Name { get; init; }

    /// <summary>How most of its seed travels.</summary>
    public required WayOfTravel Travels { get; init; }

    /// <summary>
    /// Seedlings that come up in 1000 pots in a year without control, before any plant there has seeded.
    /// </summary>
    public required double SeedlingsPerYear { get; init; }

    /// <summary>
    /// The share of the year's seedlings for each week of the year; sums to 1, or to 0 when it never comes up here.
    /// </summary>
    public required ImmutableArray<double> WeekShare { get; init; }

    /// <summary>Whole weeks of age from which it sheds seed.</summary>
    public required int FirstSeedWeek { get; init; }

    /// <summary>Seeds that a plant with room sheds in one week.</summary>
    public required double SeedsPerWeek { get; init; }

    /// <summary>
    /// Seedlings to come from one seed shed, if all live: share that lands in pots times share that comes up.
    /// </summary>
    public required double SeedlingsPerSeed { get; init; }

    /// <summary>Share of the seed lying ready that comes up in a week of its season.</summary>
    public required double GerminatingShare { get; init; }

    /// <summary>Share of the seed lying ready that is still alive a week later.</summary>
    public required double SeedKept { get; init; }

    /// <summary>Share of pulled plants that come again two weeks later, or when the season opens.</summary>
    public required double ResproutShare { get; init; }

    /// <summary>Diameter by age in weeks, centimetres.</summary>
    public required ImmutableArray<double> DiameterCm
    {
        get;
        init
        {
            field = value;
            Classes = new AgeClasses(value);
        }
    }

    /// <summary>The classes of size by age.</summary>
    internal AgeClasses Classes { get; private init; } = new([]);

    /// <summary>Share that dies by itself in a week, by age in weeks.</summary>
    public required ImmutableArray<double> DeathShare { get; init; }

    /// <summary>Square centimetres that plants cover side by side.</summary>
    /// <param name="plants">How many of each age in weeks, as many ages as have a diameter.</param>
    public double CoverCm2(ReadOnlySpan<double> plants)
    {
        double sum = 0;
        ReadOnlySpan<double> diameter = DiameterCm.AsSpan(0, plants.Length);
        for (int age = 0; age < plants.Length; age++)
        {
            if (plants[age] > 0)
                sum += plants[age] * Math.PI / 4 * diameter[age] * diameter[age];
        }

        return sum;
    }

    /// <summary>
    /// Seedlings of this weed that come up in 1000 pots in a week of the year, with no control and no plant in the pots
    /// that has seeded.
    /// </summary>
    /// <param name="weekOfYear">0 to 51.</param>
    /// <exception cref="ArgumentOutOfRangeException">There is no such week.</exception>
    public double ExpectedEmergence(int weekOfYear) =>
        weekOfYear is >= 0 and < WeeksInYear
            ? SeedlingsPerYear * WeekShare[weekOfYear]
            : throw new ArgumentOutOfRangeException(nameof(weekOfYear), weekOfYear, "weeks of the year are 0 to 51");

    /// <summary>The week of the year, 0 to 51, in which a day lies.</summary>
    public static int WeekOf(DateOnly day) => Math.Min(WeeksInYear - 1, (day.DayOfYear - 1) / 7);

    /// <summary>The traits of a weed in a place; refused when its record lacks what the model needs.</summary>
    /// <param name="weed">The weed.</param>
    /// <param name="site">The place.</param>
    /// <param name="numbers">The parameters.</param>
    public static Outcome<WeedTraits, string> Of(Weed weed, WeedSite site, WeedingNumbers numbers) =>
        Of(weed, site, numbers, weed.WeeksToFirstSeed?.Middle);

    internal static Outcome<WeedTraits, string> Of(Weed weed, WeedSite site, WeedingNumbers numbers, decimal? firstSeed)
    {
        if (weed.IsUnnamed)
            return Refused($"When {weed.Name} comes up and seeds nobody can say before it has a name. Name it first.");
        if (weed.Kind is "alga")
            return Refused($"{weed.Name} is a film that cannot be pulled. Leave it out of the weeding figures.");
        if (firstSeed is not { } weeks)
            return Refused($"The record of {weed.Name} has no weeks to first seed. Add them, or leave the weed out.");
        if (weed.SeedsPerPlant is not { } seeds)
            return Refused($"The record of {weed.Name} has no seeds per plant. Add them, or leave the weed out.");
        if (!weed.Emergence.TryGetValue(site.EmergenceZone, out ImmutableArray<int> months))
            return Refused(
                $"The record of {weed.Name} has no months for '{site.EmergenceZone}'. Add them, or leave it out."
            );
        WayOfTravel way = WaysOfTravel.Of(weed);
        ImmutableArray<double> diameter = Growth(Math.Max(1, (double)weeks), numbers);
        return Outcome<WeedTraits, string>.Good(
            new WeedTraits
            {
                Weed = weed.Id,
                Name = weed.Name,
                Travels = way,
                SeedlingsPerYear =
                    numbers["seedlings-per-1000-pots-per-year-" + way.Ending()] * SiteFactors.Of(weed, site, numbers),
                WeekShare = ShareOfWeeks(months, site.Hemisphere),
                FirstSeedWeek = Math.Max(1, (int)weeks),
                SeedsPerWeek = (double)seeds.Low * numbers["seeds-multiple-of-lowest"] / numbers["seeding-weeks"],
                SeedlingsPerSeed =
                    numbers["land-in-pots-percent-" + way.Ending()]
                    / 100
                    * numbers[way == WayOfTravel.Spores ? "come-up-percent-spores" : "come-up-percent-seeds"]
                    / 100,
                GerminatingShare = numbers["germinate-percent-per-week"] / 100,
                SeedKept = Kept(weed.SeedLifeYears?.Middle, numbers["seed-left-percent-at-end-of-life"] / 100),
                ResproutShare = weed.Underground ? numbers["resprout-percent"] / 100 : 0,
                DiameterCm = diameter,
                DeathShare = Deaths(weed, diameter, numbers),
            }
        );
    }

    private static Outcome<WeedTraits, string> Refused(string why) => Outcome<WeedTraits, string>.Bad(why);

    // Every week of a listed month counts the same; a week belongs to the month of its middle day.
    private static ImmutableArray<double> ShareOfWeeks(ImmutableArray<int> months, Hemisphere hemisphere)
    {
        double[] share = new double[WeeksInYear];
        for (int week = 0; week < WeeksInYear; week++)
        {
            int month = new DateOnly(2025, 1, 4).AddDays(7 * week).Month;
            share[week] = months.Contains(hemisphere.NorthernMonth(month)) ? 1 : 0;
        }

        double sum = share.Sum();
        return sum == 0 ? [.. share] : [.. share.Select(one => one / sum)];
    }

    // A plant that came up in the week is half a week old on average.
    private static ImmutableArray<double> Growth(double firstSeed, WeedingNumbers numbers)
    {
        double atFirstSeed = numbers["diameter-cm-at-first-seed"];
        double exponent = numbers["growth-exponent"],
            largest = numbers["largest-diameter-cm"];
        return
        [
            .. Enumerable
                .Range(0, Ages)
                .Select(age => Math.Min(largest, atFirstSeed * Math.Pow((age + 0.5) / firstSeed, exponent))),
        ];
    }

    // Seed dies at an even rate that leaves the given share at the end of its life.
    private static double Kept(decimal? lifeYears, double leftAtEnd) =>
        lifeYears is { } years and > 0 ? Math.Pow(leftAtEnd, 1 / ((double)years * WeeksInYear)) : 1;

    private static ImmutableArray<double> Deaths(Weed weed, ImmutableArray<double> diameter, WeedingNumbers numbers)
    {
        double seedling = numbers["seedling-deaths-percent-per-week"] / 100;
        double grown = numbers["grown-deaths-percent-per-week"] / 100;
        bool isAnnual = weed.LifeCycle is "summer-annual" or "winter-annual" or "year-round-annual";
        double life = isAnnual ? numbers["life-weeks-of-annual"] : double.PositiveInfinity;
        return
        [
            .. diameter.Select(
                (cm, age) =>
                    age + 1 >= life || (isAnnual && age == Ages - 1) ? 1
                    : PlantSizes.Of(cm) == 0 ? seedling
                    : grown
            ),
        ];
    }
}

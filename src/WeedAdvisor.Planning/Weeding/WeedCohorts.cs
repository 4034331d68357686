using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>
/// The plants and the seed of one weed in 1000 pots while a plan runs. Holds the only state of a run.
/// </summary>
internal sealed class WeedCohorts
{
    private const int ResproutWeeks = 2;

    private readonly WeedTraits _traits;
    private readonly double[] _plants = new double[WeedTraits.Ages];
    private readonly double[] _resprouting = new double[ResproutWeeks];
    private readonly ImmutableArray<double> _frost;
    private double _seed;
    private double _ready;

    public WeedCohorts(PlannedWeed weed)
    {
        _traits = weed.Traits;
        _frost = weed.Frost;
        for (int age = 0; age < weed.Standing.Length; age++)
            _plants[age] = weed.Standing[age];
        StandingAtStart = Standing;
    }

    public double StandingAtStart { get; }

    public double Emerged { get; private set; }

    public double Pulled { get; private set; }

    public double Dead { get; private set; }

    public double SeedsShed { get; private set; }

    public double GrewOld { get; private set; }

    public double GrewOver { get; private set; }

    public double Standing
    {
        get
        {
            double sum = 0;
            foreach (double plants in _plants)
                sum += plants;
            return sum;
        }
    }

    /// <summary>Square centimetres that the plants would cover side by side.</summary>
    public double CoverCm2 => _traits.CoverCm2(_plants);

    /// <summary>How many seedlings would come up this week. To be followed by <see cref="Emerge"/>.</summary>
    /// <param name="weekOfYear">0 to 51.</param>
    /// <param name="control">Share that is stopped, 0 to 1.</param>
    /// <param name="open">Share of the surface that plants leave open, 0 to 1.</param>
    public double Ready(int weekOfYear, double control, double open)
    {
        bool inSeason = _traits.WeekShare[weekOfYear] > 0;
        double sprouting = inSeason ? _seed * _traits.GerminatingShare * open : 0;
        double arriving = _traits.SeedlingsPerYear * _traits.WeekShare[weekOfYear] * open;
        // Seed that sprouts is gone, whether or not the control stops it.
        _seed -= sprouting;
        _ready = (arriving + sprouting) * (1 - control);
        // Roots rest outside the season, and no control of seed stops them.
        if (inSeason)
            (_ready, _resprouting[0]) = (_ready + _resprouting[0], 0);
        return _ready;
    }

    /// <summary>Brings up what is ready, as far as there is room for it.</summary>
    /// <param name="room">Share for which there is room, 0 to 1.</param>
    public void Emerge(double room)
    {
        double up = _ready * room;
        _plants[0] += up;
        Emerged += up;
        _resprouting[0] += _resprouting[1];
        _resprouting[1] = 0;
    }

    /// <summary>Pulls plants and adds them up by class of size.</summary>
    public void Pull(double smallestCm, double missed, double[] pulledBySize)
    {
        double pulled = 0;
        ReadOnlySpan<double> diameter = _traits.DiameterCm.AsSpan();
        ReadOnlySpan<int> size = _traits.Classes.Size;
        for (int age = 0; age < _plants.Length; age++)
        {
            if (diameter[age] < smallestCm || _plants[age] == 0)
                continue;
            double taken = _plants[age] * (1 - missed);
            _plants[age] -= taken;
            pulled += taken;
            pulledBySize[size[age]] += taken;
        }

        Pulled += pulled;
        _resprouting[1] += pulled * _traits.ResproutShare;
    }

    /// <summary>Adds the plants that stand up by class of size.</summary>
    public void Count(double[] standingBySize)
    {
        for (int age = 0; age < _plants.Length; age++)
            standingBySize[_traits.Classes.Size[age]] += _plants[age];
    }

    /// <summary>Ends the week: seed is shed, plants die, frost takes its share, all grow a week older.</summary>
    /// <param name="week">The week of the plan.</param>
    /// <param name="vigour">Seed of a plant as a share of that of a plant with room, 0 to 1.</param>
    public void EndWeek(int week, double vigour)
    {
        double spared = _frost.IsEmpty ? 1 : 1 - _frost[week];
        double seeding = 0;
        for (int age = _traits.FirstSeedWeek; age < _plants.Length; age++)
            seeding += _plants[age];
        double shed = seeding * _traits.SeedsPerWeek * vigour;
        SeedsShed += shed;
        _seed = (_seed * _traits.SeedKept) + (shed * _traits.SeedlingsPerSeed);
        double older = 0,
            dead = Dead;
        ReadOnlySpan<double> death = _traits.DeathShare.AsSpan();
        ReadOnlySpan<bool> growsOld = _traits.Classes.GrowsOld,
            growsOver = _traits.Classes.GrowsOver;
        for (int age = 0; age < _plants.Length; age++)
        {
            double dying = _plants[age] * (1 - ((1 - death[age]) * spared));
            dead += dying;
            (_plants[age], older) = (older, _plants[age] - dying);
            // What lives on is now a week older, and may have grown into another class.
            if (growsOld[age])
                GrewOld += older;
            if (growsOver[age])
                GrewOver += older;
        }

        Dead = dead;

        _plants[^1] += older;
    }

    public WeedFate Fate() =>
        new(_traits.Weed, _traits.Name, StandingAtStart, Emerged, Pulled, Dead, Standing, SeedsShed)
        {
            SeedlingsToCome = _seed + _resprouting.Sum(),
            GrewOld = GrewOld,
            GrewOvergrown = GrewOver,
        };
}

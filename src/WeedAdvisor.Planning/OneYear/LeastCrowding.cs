using System.Collections.Immutable;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// How crowded pots can be at most under a plan of rounds, whatever preventives go on besides: all seedlings come up as
/// if there were room, seed loses nothing by sprouting, and every plant seeds fully. What really stands is never more,
/// so the course is never more open, roomy or vigorous than the one here says at least.
/// </summary>
/// <param name="Course">The least share that is open, has room, and of vigour, week by week.</param>
/// <param name="Old">The most weeds that grow to 10 cm.</param>
/// <param name="Overgrown">The most that grow to 20 cm.</param>
/// <param name="ToCome">The most seedlings left to come at the end, all weeds together.</param>
internal sealed record LeastCrowding(WeedingCourse Course, double Old, double Overgrown, double ToCome)
{
    private const double Pots = 1000;

    /// <summary>The bounds of a plan; the control in it is that of what stands whatever goes on besides.</summary>
    public static LeastCrowding Of(WeedingPlan plan, ImmutableArray<int> walked)
    {
        Crowd[] weeds = [.. plan.Weeds.Select(weed => new Crowd(weed))];
        double[] open = new double[plan.Weeks],
            room = new double[plan.Weeks],
            vigour = new double[plan.Weeks];
        double surface = Pots * plan.Numbers.PotSurfaceCm2,
            most = Pots * plan.Numbers.MostWeedsPerPot;
        int round = 0;
        for (int week = 0; week < plan.Weeks; week++)
        {
            double cover = 0,
                standing = 0,
                ready = 0;
            foreach (Crowd weed in weeds)
            {
                cover += weed.Cover;
                standing += weed.Standing;
                ready += weed.Ready((plan.FirstWeek + week) % WeedTraits.WeeksInYear, week);
            }

            open[week] = Math.Exp(-cover / surface);
            double places = Math.Max(0, most - standing);
            room[week] = ready <= places ? 1 : places / ready;
            bool isRound = round < walked.Length && walked[round] == week;
            if (isRound)
                round++;
            double after = 0;
            foreach (Crowd weed in weeds)
            {
                weed.ComeUp();
                if (isRound)
                    weed.Pull(plan.SmallestPulledCm, plan.Missed);
                after += weed.Cover;
            }

            vigour[week] = 1 / Math.Max(1, after / surface);
            foreach (Crowd weed in weeds)
                weed.EndWeek(week);
        }

        return new LeastCrowding(
            new WeedingCourse([.. open], [.. room], [.. vigour]),
            weeds.Sum(weed => weed.GrewOld),
            weeds.Sum(weed => weed.GrewOver),
            weeds.Sum(weed => weed.ToCome)
        );
    }

    private sealed class Crowd(PlannedWeed planned)
    {
        private readonly WeedTraits _traits = planned.Traits;
        private readonly double[] _plants = Standing0(planned);
        private double _seed;
        private double _roots;
        private double _rootsNext;
        private double _ready;

        public double Cover => _traits.CoverCm2(_plants);

        public double Standing => _plants.Sum();

        public double ToCome => _seed + _roots + _rootsNext;

        public double GrewOld { get; private set; }

        public double GrewOver { get; private set; }

        // Seed that sprouts stays among the seed, so that in truth there is never more of it in any later week.
        public double Ready(int ofYear, int week)
        {
            double share = _traits.WeekShare[ofYear];
            double control = planned.Control.IsEmpty ? 0 : planned.Control[week];
            _ready =
                share > 0
                    ? (((_traits.SeedlingsPerYear * share) + (_seed * _traits.GerminatingShare)) * (1 - control))
                        + _roots
                    : 0;
            if (share > 0)
                _roots = 0;
            return _ready;
        }

        public void ComeUp()
        {
            _plants[0] += _ready;
            _roots += _rootsNext;
            _rootsNext = 0;
        }

        public void Pull(double smallestCm, double missed)
        {
            for (int age = 0; age < _plants.Length; age++)
            {
                if (_traits.DiameterCm[age] < smallestCm || _plants[age] == 0)
                    continue;
                double taken = _plants[age] * (1 - missed);
                _plants[age] -= taken;
                _rootsNext += taken * _traits.ResproutShare;
            }
        }

        public void EndWeek(int week)
        {
            double spared = planned.Frost.IsEmpty ? 1 : 1 - planned.Frost[week];
            double seeding = 0;
            for (int age = _traits.FirstSeedWeek; age < _plants.Length; age++)
                seeding += _plants[age];
            _seed = (_seed * _traits.SeedKept) + (seeding * _traits.SeedsPerWeek * _traits.SeedlingsPerSeed);
            double older = 0;
            ReadOnlySpan<double> death = _traits.DeathShare.AsSpan();
            ReadOnlySpan<bool> growsOld = _traits.Classes.GrowsOld,
                growsOver = _traits.Classes.GrowsOver;
            for (int age = 0; age < _plants.Length; age++)
            {
                (_plants[age], older) = (older, _plants[age] * (1 - death[age]) * spared);
                if (growsOld[age])
                    GrewOld += older;
                if (growsOver[age])
                    GrewOver += older;
            }

            _plants[^1] += older;
        }

        private static double[] Standing0(PlannedWeed weed)
        {
            double[] plants = new double[WeedTraits.Ages];
            weed.Standing.AsSpan().CopyTo(plants);
            return plants;
        }
    }
}

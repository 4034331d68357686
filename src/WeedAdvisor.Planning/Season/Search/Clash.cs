using System.Collections.Immutable;
using WeedAdvisor.Planning.Season.Search.Kernel;

namespace WeedAdvisor.Planning.Season.Search;

/// <summary>Wishes that no plan can meet together.</summary>
/// <param name="Wishes">
/// A smallest set of wishes that clash: no plan meets them all under the limits, and no smaller set clashes. Empty when
/// all wishes can be met.
/// </param>
/// <param name="Settled">Whether that is proven; false when a search had to stop first.</param>
public sealed record Clash(ImmutableArray<SeasonWish> Wishes, bool Settled)
{
    private const int MostWishes = 24;

    /// <summary>Finds a smallest set of wishes that clash.</summary>
    /// <param name="problem">The problem.</param>
    /// <param name="effort">How far each search may go.</param>
    /// <param name="stop">Stops early.</param>
    /// <exception cref="ArgumentException">The problem has faults, or more than 24 wishes.</exception>
    public static Clash Of(SeasonProblem problem, SeasonEffort? effort = null, CancellationToken stop = default)
    {
        ImmutableArray<SeasonWish> wishes = SeasonWish.AllOf(problem);
        ImmutableArray<string> faults = problem.Faults();
        if (!faults.IsEmpty || wishes.Length > MostWishes)
            throw new ArgumentException(
                faults.IsEmpty ? "too many wishes" : string.Join("; ", faults),
                nameof(problem)
            );
        var meetings = new Meetings(problem, wishes, effort ?? new SeasonEffort(), stop);
        int all = (1 << wishes.Length) - 1;

        // Each entry is a set of wishes of which one at least must be in every clash, because the others can be met.
        var mustHit = new List<int>();
        while (true)
        {
            int guess = SmallestHitting(mustHit, wishes.Length);
            if (guess < 0)
                return new Clash([], meetings.Settled);
            if (!meetings.CanMeet(guess))
                return new Clash([.. wishes.Where((_, wish) => (guess & (1 << wish)) != 0)], meetings.Settled);
            int met = guess;
            for (int wish = 0; wish < wishes.Length; wish++)
            {
                if ((met & (1 << wish)) == 0 && meetings.CanMeet(met | (1 << wish)))
                    met |= 1 << wish;
            }
            if (met == all)
                return new Clash([], meetings.Settled);
            mustHit.Add(all & ~met);
        }
    }

    // The smallest set that shares a wish with every entry; of several the first in order.
    private static int SmallestHitting(List<int> mustHit, int wishes)
    {
        for (int size = 0; size <= wishes; size++)
        {
            for (long set = (1L << size) - 1; set < 1L << wishes; set = NextOfSameSize(set))
            {
                if (mustHit.TrueForAll(entry => (entry & set) != 0))
                    return (int)set;
                if (set == 0)
                    break;
            }
        }
        return -1;
    }

    // The next greater number with as many bits set.
    private static long NextOfSameSize(long set)
    {
        long lowest = set & -set,
            carried = set + lowest;
        return (((carried ^ set) / lowest) >> 2) | carried;
    }

    private sealed class Meetings(
        SeasonProblem problem,
        ImmutableArray<SeasonWish> wishes,
        SeasonEffort effort,
        CancellationToken stop
    )
    {
        public bool Settled { get; private set; } = true;

        public bool CanMeet(int kept)
        {
            SeasonProblem freer = SeasonWish.Lift(problem, wishes.Where((_, wish) => (kept & (1 << wish)) == 0));
            Solution solution = new SeasonSolver(SeasonCompiler.Of(freer, feasibilityOnly: true)).Solve(
                [],
                null,
                effort.Width,
                stop
            );
            Settled &= solution.Steps is not null || solution.Proven;
            return solution.Steps is not null;
        }
    }
}

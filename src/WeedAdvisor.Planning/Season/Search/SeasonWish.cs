using System.Collections.Immutable;
using System.Globalization;

namespace WeedAdvisor.Planning.Season.Search;

/// <summary>The kinds of wishes and rules that can be lifted one by one.</summary>
public enum SeasonWishKind
{
    /// <summary>The most that the applications may cost.</summary>
    Budget,

    /// <summary>The fewest applications.</summary>
    AtLeast,

    /// <summary>The most applications.</summary>
    AtMost,

    /// <summary>The weeks in which nothing may go on.</summary>
    ClosedWeeks,

    /// <summary>Rotation: the longest run of a site of action, and its share.</summary>
    Rotation,

    /// <summary>A candidate that must go on.</summary>
    MustUse,

    /// <summary>A candidate that must not go on.</summary>
    Dropped,

    /// <summary>A weed that must be held.</summary>
    MustCover,
}

/// <summary>One wish or rule of a problem.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Index">Its place in its list, for the kinds that can come several times; otherwise 0.</param>
public sealed record SeasonWish(SeasonWishKind Kind, int Index = 0)
{
    /// <summary>The wishes that a problem holds, rotation included.</summary>
    public static ImmutableArray<SeasonWish> AllOf(SeasonProblem problem)
    {
        SeasonWishes wishes = problem.Wishes;
        var all = ImmutableArray.CreateBuilder<SeasonWish>();
        AddIf(wishes.Budget is not null, SeasonWishKind.Budget);
        AddIf(wishes.AtLeast is not null, SeasonWishKind.AtLeast);
        AddIf(wishes.AtMost is not null, SeasonWishKind.AtMost);
        AddIf(!wishes.ClosedWeeks.IsEmpty, SeasonWishKind.ClosedWeeks);
        AddIf(
            problem.Limits.MaxRunOfSite is not null || problem.Limits.MaxShareOfSite is not null,
            SeasonWishKind.Rotation
        );
        all.AddRange(wishes.MustUse.Select((_, index) => new SeasonWish(SeasonWishKind.MustUse, index)));
        all.AddRange(wishes.Dropped.Select((_, index) => new SeasonWish(SeasonWishKind.Dropped, index)));
        all.AddRange(wishes.MustCover.Select((_, index) => new SeasonWish(SeasonWishKind.MustCover, index)));
        return all.ToImmutable();

        void AddIf(bool holds, SeasonWishKind kind)
        {
            if (holds)
                all.Add(new SeasonWish(kind));
        }
    }

    /// <summary>The problem without some of its wishes.</summary>
    public static SeasonProblem Lift(SeasonProblem problem, IEnumerable<SeasonWish> lifted)
    {
        ILookup<SeasonWishKind, int> gone = lifted.ToLookup(wish => wish.Kind, wish => wish.Index);
        SeasonWishes wishes = problem.Wishes;
        return problem with
        {
            Limits = gone.Contains(SeasonWishKind.Rotation)
                ? problem.Limits with
                {
                    MaxRunOfSite = null,
                    MaxShareOfSite = null,
                }
                : problem.Limits,
            Wishes = new SeasonWishes
            {
                Budget = gone.Contains(SeasonWishKind.Budget) ? null : wishes.Budget,
                AtLeast = gone.Contains(SeasonWishKind.AtLeast) ? null : wishes.AtLeast,
                AtMost = gone.Contains(SeasonWishKind.AtMost) ? null : wishes.AtMost,
                ClosedWeeks = gone.Contains(SeasonWishKind.ClosedWeeks) ? [] : wishes.ClosedWeeks,
                MustUse = Rest(wishes.MustUse, gone[SeasonWishKind.MustUse]),
                Dropped = Rest(wishes.Dropped, gone[SeasonWishKind.Dropped]),
                MustCover = Rest(wishes.MustCover, gone[SeasonWishKind.MustCover]),
            },
        };
    }

    /// <summary>The wish in plain words, products by their ids.</summary>
    /// <param name="problem">The problem that holds it.</param>
    public string In(SeasonProblem problem) => In(problem, product => product);

    /// <summary>The wish in plain words.</summary>
    /// <param name="problem">The problem that holds it.</param>
    /// <param name="nameOf">What a product is called.</param>
    public string In(SeasonProblem problem, Func<string, string> nameOf) =>
        Kind switch
        {
            SeasonWishKind.Budget => Text($"a budget of {problem.Wishes.Budget:0.##}"),
            SeasonWishKind.AtLeast => Text($"at least {problem.Wishes.AtLeast} applications"),
            SeasonWishKind.AtMost => Text($"at most {problem.Wishes.AtMost} applications"),
            SeasonWishKind.ClosedWeeks => Text($"{problem.Wishes.ClosedWeeks.Count} closed weeks"),
            SeasonWishKind.Rotation => "rotation of sites of action",
            SeasonWishKind.MustUse => Text($"{nameOf(problem.Wishes.MustUse[Index])} must go on"),
            SeasonWishKind.Dropped => Text($"{nameOf(problem.Wishes.Dropped[Index])} must not go on"),
            SeasonWishKind.MustCover => InWords(problem.Wishes.MustCover[Index]),
            _ => throw new InvalidOperationException("a kind of wish without words"),
        };

    private static string InWords(CoverWish wish) =>
        Text($"{wish.Weed} held to {wish.Control:0.##} in weeks {wish.From} to {wish.To}");

    private static ImmutableArray<T> Rest<T>(ImmutableArray<T> all, IEnumerable<int> gone) =>
        [.. all.Where((_, index) => !gone.Contains(index))];

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>
/// A problem in whole numbers and flat arrays. A <em>spot</em> is a candidate in a week (candidate x weeks + week); a
/// <em>cell</em> is a row in a week (week x rows + row); the rows are the weeds and, after them, the cover wishes.
/// </summary>
internal sealed class CompiledSeason
{
    /// <summary>A week that never comes.</summary>
    public const byte Never = byte.MaxValue;

    /// <summary>The problem as it was stated.</summary>
    public required SeasonProblem Problem { get; init; }

    /// <summary>Number of weeks.</summary>
    public required int Weeks { get; init; }

    /// <summary>Number of candidates.</summary>
    public required int Candidates { get; init; }

    /// <summary>Weeds and cover wishes.</summary>
    public required int Rows { get; init; }

    /// <summary>The most weeks that anything acts.</summary>
    public required int Reach { get; init; }

    /// <summary>Whether something may go on in a spot.</summary>
    public required bool[] Open { get; init; }

    /// <summary>What an application costs in each spot.</summary>
    public required long[] Cost { get; init; }

    /// <summary>What an application saves in the cells from its week on, spot after spot.</summary>
    public required long[] Saving { get; init; }

    /// <summary>Where the savings of a spot begin; one more entry than there are spots.</summary>
    public required int[] SavingStart { get; init; }

    /// <summary>What the year costs without any application, the past ones included in the saving.</summary>
    public required long CostOfNothing { get; init; }

    /// <summary>Costs from here on mean that a cover wish is not met.</summary>
    public required long Ceiling { get; init; }

    /// <summary>What past applications save in the first weeks' cells.</summary>
    public required long[] PastSaving { get; init; }

    /// <summary>Weeks from one candidate to another (from x candidates + to) that the intervals ask for.</summary>
    public required int[] Delay { get; init; }

    /// <summary>
    /// The same when the other is the very next one, where rotation may forbid it: then <see cref="Never"/>.
    /// </summary>
    public required int[] NextDelay { get; init; }

    /// <summary>The first week that past applications leave open to each candidate.</summary>
    public required byte[] Ready { get; init; }

    /// <summary>The running applications of each site of action before week 0.</summary>
    public required byte[] Runs { get; init; }

    /// <summary>Each candidate's sites of action.</summary>
    public required int[][] SitesOf { get; init; }

    /// <summary>The longest run of a site of action; <see cref="byte.MaxValue"/> when not limited.</summary>
    public required int MaxRun { get; init; }

    /// <summary>The limits on sums.</summary>
    public required ResourceRow[] Resources { get; init; }

    /// <summary>The savings of a spot.</summary>
    public ReadOnlySpan<long> SavingOf(int spot) =>
        Saving.AsSpan(SavingStart[spot], SavingStart[spot + 1] - SavingStart[spot]);

    /// <summary>The most applications of one site in a plan of so many.</summary>
    public int ShareOf(int applications) =>
        Problem.Limits.MaxShareOfSite is { } share ? Math.Max(1, (int)Math.Floor(share * applications)) : int.MaxValue;
}

using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Season.Search;

/// <summary>
/// A year of weed control as a choice of applications: which candidate goes on in which week, at most one a week.
/// </summary>
/// <remarks>
/// <para>
/// The plan that is sought makes this sum least: the cost of every application, plus, over all weeks and weeds, the
/// escape cost times (1 - control). Control of a weed in a week is the <em>greatest</em> control of any application
/// that still acts. Two products on one weed are not credited with more than the better of them: published ratings are
/// for one product alone, so this is the cautious reading.
/// </para>
/// <para>
/// Money is counted in whole hundredths of a cent, doses in whole milligrams per hectare, so "least" is exact and two
/// searches can be compared to the last digit. What an application saves on a weed in a week is rounded once to that
/// unit, before the search starts.
/// </para>
/// </remarks>
/// <param name="Weeds">The weeds, each with its escape costs.</param>
/// <param name="Candidates">What may go on; names are unique.</param>
/// <param name="Limits">What label, law and resistance management allow.</param>
/// <param name="Wishes">What the grower asks on top.</param>
public sealed record SeasonProblem(
    ImmutableArray<SeasonWeed> Weeds,
    ImmutableArray<SeasonCandidate> Candidates,
    SeasonLimits Limits,
    SeasonWishes Wishes
)
{
    /// <summary>Weeks in the plan, 1 to 104; week 0 is the first.</summary>
    public int Weeks { get; init; } = 52;

    /// <summary>
    /// Applications before week 0, oldest first. They still control, still hold intervals and still count in the run of
    /// a site of action. What they used of a yearly limit is stated with the limit, not counted from here.
    /// </summary>
    public ImmutableArray<PastUse> History { get; init; } = [];

    /// <summary>
    /// Weeks that must lie between two candidates when the one comes after the other; intervals hold besides.
    /// </summary>
    public ImmutableArray<SeasonGap> Gaps { get; init; } = [];

    /// <summary>
    /// What a candidate costs when it goes on in a week, US dollars; null when it may not, by its own weeks or by a
    /// wish.
    /// </summary>
    /// <param name="candidate">One of the candidates.</param>
    /// <param name="week">0 to one less than <see cref="Weeks"/>.</param>
    public decimal? CostIn(SeasonCandidate candidate, int week) =>
        Wishes.ClosedWeeks.Contains(week) || Wishes.Dropped.Contains(candidate.Name) ? null : candidate.Cost[week];

    /// <summary>What is wrong with the problem, in plain words; empty when it can be searched.</summary>
    public ImmutableArray<string> Faults() => [.. ProblemFaults.Of(this)];
}

/// <summary>A weed and what it costs when nothing holds it back.</summary>
/// <param name="Name">Its name.</param>
/// <param name="EscapeCost">
/// For each week, the money that hand weeding needs if the weed is not controlled at all; at least 0.
/// </param>
public sealed record SeasonWeed(string Name, ImmutableArray<decimal> EscapeCost);

/// <summary>An application before the first week of the plan.</summary>
/// <param name="Week">The week, below 0: -1 is the week before the plan begins.</param>
/// <param name="Used">What was applied; it need not be among the candidates.</param>
public sealed record PastUse(int Week, SeasonCandidate Used);

/// <summary>A distance that holds in one order only.</summary>
/// <param name="Before">The name of the candidate that goes on first.</param>
/// <param name="After">The name of the one that comes after it.</param>
/// <param name="Weeks">Weeks between them: 6 means that week 6 is the first allowed after week 0.</param>
public sealed record SeasonGap(string Before, string After, int Weeks);

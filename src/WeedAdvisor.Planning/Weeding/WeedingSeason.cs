using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>One round, for 1000 pots.</summary>
/// <param name="Week">Week of the plan, from 0.</param>
/// <param name="WalkingHours">Hours of walking and looking.</param>
/// <param name="PullingHours">Hours of pulling, by class of <see cref="PlantSizes"/>.</param>
/// <param name="Pulled">Weeds pulled, by class.</param>
public sealed record WeedingRound(
    int Week,
    double WalkingHours,
    ImmutableArray<double> PullingHours,
    ImmutableArray<double> Pulled
)
{
    /// <summary>Hours of the round.</summary>
    public double Hours => WalkingHours + PullingHours.Sum();
}

/// <summary>
/// What became of one weed, plants and seeds of 1000 pots.
/// <c>StandingAtStart + Emerged = Pulled + Dead + Standing</c>.
/// </summary>
/// <param name="Weed">The weed's id.</param>
/// <param name="Name">Its name.</param>
/// <param name="StandingAtStart">Plants at the start.</param>
/// <param name="Emerged">Plants that came up, those that sprouted again among them.</param>
/// <param name="Pulled">Plants pulled in the rounds.</param>
/// <param name="Dead">Plants that died by themselves.</param>
/// <param name="Standing">Plants that stand at the end.</param>
/// <param name="SeedsShed">Seeds (or propagules) shed.</param>
public sealed record WeedFate(
    string Weed,
    string Name,
    double StandingAtStart,
    double Emerged,
    double Pulled,
    double Dead,
    double Standing,
    double SeedsShed
)
{
    /// <summary>
    /// Seedlings that would still come from the seed and the roots that lie in the pots at the end, if all lived.
    /// </summary>
    public double SeedlingsToCome { get; init; }

    /// <summary>
    /// Plants that grew to 10 cm in the pots; those that were as large at the start are not among them.
    /// </summary>
    public double GrewOld { get; init; }

    /// <summary>Plants that grew to 20 cm.</summary>
    public double GrewOvergrown { get; init; }
}

/// <summary>How crowded the pots were, week by week: what makes one plant more count for less.</summary>
/// <param name="Open">Share of the surface that plants left open when seedlings came up, 0 to 1.</param>
/// <param name="Room">Share of the seedlings for which there was room, 0 to 1.</param>
/// <param name="Vigour">Seed of a plant as a share of that of a plant with room, 0 to 1.</param>
public sealed record WeedingCourse(
    ImmutableArray<double> Open,
    ImmutableArray<double> Room,
    ImmutableArray<double> Vigour
);

/// <summary>What a plan comes to, for 1000 pots.</summary>
/// <param name="IntervalWeeks">Weeks between rounds.</param>
/// <param name="Rounds">The rounds that were walked.</param>
/// <param name="Weeds">The fate of each weed, in the order of the plan.</param>
/// <param name="Clearing">
/// A last round after the last week, in which all that stands is pulled and nothing missed: stock is sold clean. It is
/// not among <paramref name="Rounds"/>, and what it pulls still counts as standing.
/// </param>
/// <param name="MaterialsUsdPerRound">Materials of one round, US dollars.</param>
public sealed record WeedingSeason(
    int IntervalWeeks,
    ImmutableArray<WeedingRound> Rounds,
    ImmutableArray<WeedFate> Weeds,
    WeedingRound Clearing,
    double MaterialsUsdPerRound
)
{
    /// <summary>How crowded the pots were.</summary>
    public required WeedingCourse Course { get; init; }

    /// <summary>Hours of walking, the clearing at the end among them.</summary>
    public double WalkingHours => Rounds.Sum(round => round.WalkingHours) + Clearing.WalkingHours;

    /// <summary>Hours of pulling, the clearing at the end among them.</summary>
    public double PullingHours => Hours - WalkingHours;

    /// <summary>All hours, the clearing at the end among them.</summary>
    public double Hours => Rounds.Sum(round => round.Hours) + Clearing.Hours;

    /// <summary>Materials of all rounds and of the clearing, US dollars.</summary>
    public double MaterialsUsd => MaterialsUsdPerRound * (Rounds.Length + 1);

    /// <summary>Weeds pulled in the rounds.</summary>
    public double Pulled => Weeds.Sum(weed => weed.Pulled);

    /// <summary>Weeds that stand at the end, before the clearing.</summary>
    public double Standing => Weeds.Sum(weed => weed.Standing);

    /// <summary>Seeds shed.</summary>
    public double SeedsShed => Weeds.Sum(weed => weed.SeedsShed);

    /// <summary>Cost, US dollars: hours times wage, and materials.</summary>
    /// <param name="wageUsdPerHour">Cost of an hour, US dollars.</param>
    public double CostUsd(double wageUsdPerHour) => Hours * wageUsdPerHour + MaterialsUsd;
}

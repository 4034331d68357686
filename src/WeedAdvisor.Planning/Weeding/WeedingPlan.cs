using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>A weed of a plan. Numbers of plants are for 1000 pots.</summary>
/// <param name="Traits">What it does in this place.</param>
/// <param name="Control">
/// Share of its seedlings that mulch and treatments stop, 0 to 1, for each week of the plan; empty when nothing does.
/// </param>
/// <param name="Standing">Plants that stand at the start, by age in weeks; empty when there are none.</param>
public sealed record PlannedWeed(WeedTraits Traits, ImmutableArray<double> Control, ImmutableArray<double> Standing)
{
    /// <summary>
    /// Share of its plants that frost kills at the end of each week of the plan, 0 to 1; empty where none does.
    /// </summary>
    public ImmutableArray<double> Frost { get; init; } = [];

    /// <summary>A weed that nothing stops and of which none stands yet.</summary>
    public static PlannedWeed Free(WeedTraits traits) => new(traits, [], []);
}

/// <summary>Rounds of hand weeding over some weeks, for 1000 pots. Week 0 of the plan has the first round.</summary>
public sealed record WeedingPlan
{
    /// <summary>The longest plan, weeks.</summary>
    public const int MostWeeks = 260;

    /// <summary>The longest interval, weeks.</summary>
    public const int LongestInterval = 52;

    /// <summary>The weeds; ids are unique.</summary>
    public required ImmutableArray<PlannedWeed> Weeds { get; init; }

    /// <summary>The week of the year in which it starts, 0 to 51.</summary>
    public required int FirstWeek { get; init; }

    /// <summary>How many weeks it lasts, 1 to <see cref="MostWeeks"/>.</summary>
    public required int Weeks { get; init; }

    /// <summary>Weeks between rounds, 1 to <see cref="LongestInterval"/>.</summary>
    public required int IntervalWeeks { get; init; }

    /// <summary>
    /// The weeks of the plan in which a round is walked, each once and in order, whatever the interval; null for the
    /// rounds of the interval.
    /// </summary>
    public ImmutableArray<int>? RoundWeeks { get; init; }

    /// <summary>Share of the weeds large enough to pull that a round passes over, 0 to 1.</summary>
    public required double Missed { get; init; }

    /// <summary>Diameter from which a weed is pulled, centimetres; 0 pulls all.</summary>
    public required double SmallestPulledCm { get; init; }

    /// <summary>The parameters.</summary>
    public required WeedingNumbers Numbers { get; init; }

    /// <summary>What is wrong with it, as sentences for the grower; empty when nothing is.</summary>
    public ImmutableArray<string> Refusals() => [.. Wrongs()];

    private IEnumerable<string> Wrongs()
    {
        if (Weeds.IsEmpty)
            yield return "There is no weed to weed out. Name at least one.";
        if (FirstWeek is < 0 or >= WeedTraits.WeeksInYear)
            yield return "The first week is a week of the year, 0 to 51.";
        if (Weeks is < 1 or > MostWeeks)
            yield return $"A plan lasts 1 to {MostWeeks} weeks.";
        if (IntervalWeeks is < 1 or > LongestInterval)
            yield return $"There are 1 to {LongestInterval} whole weeks between two rounds.";
        if (RoundWeeks is { } rounds && !IsInOrder(rounds))
            yield return $"Rounds fall in weeks 0 to {Weeks - 1} of the plan, each named once and in order.";
        if (!IsShare(Missed))
            yield return "The share of weeds missed lies between 0 and 100 percent.";
        if (SmallestPulledCm is not (>= 0 and <= 1000))
            yield return "The smallest weed pulled has a diameter of 0 to 1000 cm.";
        if (Weeds.Select(weed => weed.Traits.Weed).Distinct(StringComparer.Ordinal).Count() < Weeds.Length)
            yield return "A weed stands twice in the list. Name each once.";
        foreach (PlannedWeed weed in Weeds)
        {
            if (weed.Control.Length != 0 && weed.Control.Length != Weeks)
                yield return $"The control of {weed.Traits.Name} is given for {weed.Control.Length} weeks; the plan "
                    + $"has {Weeks}.";
            if (!weed.Control.All(IsShare))
                yield return $"The control of {weed.Traits.Name} lies between 0 and 100 percent in every week.";
            if (weed.Frost.Length != 0 && (weed.Frost.Length != Weeks || !weed.Frost.All(IsShare)))
                yield return $"What frost kills of {weed.Traits.Name} is a share from 0 to 1 for each of {Weeks} "
                    + $"weeks.";
            if (weed.Standing.Length > WeedTraits.Ages || !weed.Standing.All(count => count is >= 0 and < 1e9))
                yield return $"The plants of {weed.Traits.Name} that stand now are 0 or more, of an age under "
                    + $"{WeedTraits.Ages} weeks.";
        }
    }

    private bool IsInOrder(ImmutableArray<int> rounds) =>
        rounds.All(week => week >= 0 && week < Weeks)
        && rounds.Zip(rounds.Skip(1)).All(pair => pair.First < pair.Second);

    private static bool IsShare(double share) => share is >= 0 and <= 1;
}

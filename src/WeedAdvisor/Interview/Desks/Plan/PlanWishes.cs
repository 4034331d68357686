using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Plan;

namespace WeedAdvisor.Interview.Desks.Plan;

/// <summary>What the grower wishes of the plan of a year; null and empty leave it open.</summary>
public sealed record PlanWishes
{
    /// <summary>Stands in place of a measure where none is to be taken.</summary>
    public const string NoMeasure = "";

    /// <summary>Rounds, at most one wish for each part of the year.</summary>
    public ImmutableArray<RoundsWish> Rounds { get; init; } = [];

    /// <summary>The cover or other measure that stands all the year, by id; <see cref="NoMeasure"/> for none.</summary>
    public string? Measure { get; init; }

    /// <summary>Weeks of the plan, from 0, in which nothing may go on.</summary>
    public ImmutableSortedSet<int> Closed { get; init; } = [];

    /// <summary>Ids of products that must not go on.</summary>
    public ImmutableArray<string> Dropped { get; init; } = [];

    /// <summary>Ids of products that must go on some time.</summary>
    public ImmutableArray<string> Kept { get; init; } = [];

    /// <summary>The most hours in a week, for all pots.</summary>
    public decimal? Hours { get; init; }

    /// <summary>The most for materials and a year's share of tools, US dollars for all pots.</summary>
    public decimal? Budget { get; init; }

    /// <summary>How many pots.</summary>
    public int? Pots { get; init; }

    /// <summary>Whether everything but the number of pots is left open.</summary>
    public bool IsFree => Key == new PlanWishes { Pots = Pots }.Key;

    /// <summary>The same for the same wishes, in whatever order they came.</summary>
    public string Key =>
        string.Create(
            CultureInfo.InvariantCulture,
            $"{string.Join(',', Rounds.OrderBy(wish => wish.Part).Select(wish => $"{wish.Part}:{wish.Weeks}"))}|"
                + $"{Measure ?? "open"}|{string.Join(',', Closed)}|{string.Join(',', Dropped.Order())}|"
                + $"{string.Join(',', Kept.Order())}|{Hours}|{Budget}|{Pots}"
        );

    /// <summary>The wish for the rounds of a part of the year; null when they are open.</summary>
    public RoundsWish? RoundsIn(PartOfYear part) => Rounds.FirstOrDefault(wish => wish.Part == part);

    /// <summary>The same with a wish for the rounds of a part of the year.</summary>
    public PlanWishes With(RoundsWish wish) => WithoutRounds(wish.Part) with { Rounds = [.. Others(wish.Part), wish] };

    /// <summary>The same with the rounds of a part of the year left open.</summary>
    public PlanWishes WithoutRounds(PartOfYear part) => this with { Rounds = [.. Others(part)] };

    /// <summary>The wishes as they are put to the search.</summary>
    /// <param name="measures">What could be laid or changed.</param>
    public PlanRequest Request(ImmutableArray<Practice> measures) =>
        new()
        {
            Pots = Pots,
            HoursPerWeek = Hours,
            BudgetUsd = Budget,
            Rounds = Rounds,
            With = [.. Kept, .. Measure is { Length: > 0 } id ? [id] : Array.Empty<string>()],
            Without = [.. Dropped, .. Measure == NoMeasure ? measures.Select(one => one.Id) : []],
        };

    private IEnumerable<RoundsWish> Others(PartOfYear part) => Rounds.Where(wish => wish.Part != part);
}

using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Interview.Desks.Plan;

/// <summary>What a row of the plan under the cursor is about.</summary>
public enum PlanRowKind
{
    /// <summary>The rounds of a part of the year.</summary>
    Rounds,

    /// <summary>A cover or another measure that stands.</summary>
    Measure,

    /// <summary>A product that goes on in a week.</summary>
    Use,

    /// <summary>A week in which nothing may go on.</summary>
    Closed,

    /// <summary>A product that must not go on.</summary>
    Dropped,

    /// <summary>The most hours in a week.</summary>
    Hours,

    /// <summary>The most to spend.</summary>
    Budget,

    /// <summary>The pots.</summary>
    Pots,
}

/// <summary>A row of the plan under the cursor.</summary>
/// <param name="Kind">What it is about.</param>
/// <param name="Part">The part of the year, of rounds.</param>
/// <param name="Product">Id of the product, of what goes on or is dropped; else empty.</param>
/// <param name="Week">The week of the plan, of what goes on or is closed.</param>
public sealed record PlanRow(PlanRowKind Kind, PartOfYear Part = default, string Product = "", int Week = 0)
{
    /// <summary>Whether a number is typed in it.</summary>
    public bool IsNumber => Kind is PlanRowKind.Hours or PlanRowKind.Budget or PlanRowKind.Pots;
}

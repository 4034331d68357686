using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Plan;

/// <summary>A wish that the rounds of a part of the year come at one interval.</summary>
/// <param name="Part">The part of the year.</param>
/// <param name="Weeks">Whole weeks between rounds; null for none.</param>
public sealed record RoundsWish(PartOfYear Part, int? Weeks)
{
    /// <summary>Whether rounds keep to it.</summary>
    public bool Allows(YearRounds rounds) => rounds.In(Part) == Weeks;
}

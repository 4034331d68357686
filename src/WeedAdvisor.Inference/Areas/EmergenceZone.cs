using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Areas;

/// <summary>
/// Whose calendar the weeds of an area keep. A heated house has its own; outdoors the region decides. The rules ask of
/// both where it is not told which holds; sums take the region's.
/// </summary>
/// <param name="IsHeated">Whether it is a heated house.</param>
/// <param name="Outdoors">The zone of the region; null when that is not told.</param>
/// <param name="Hemisphere">Which half of the earth it lies in; the north where that is not told.</param>
/// <param name="HeatedNeeds">What has to be known to say whether it is heated.</param>
/// <param name="RegionNeeds">What has to be known to say the region; empty when it is told.</param>
internal readonly record struct EmergenceZone(
    Truth IsHeated,
    string? Outdoors,
    Hemisphere Hemisphere,
    ImmutableArray<Need> HeatedNeeds,
    ImmutableArray<Need> RegionNeeds
)
{
    /// <summary>The zone of a heated house, whose weeds come up in months of their own.</summary>
    public const string Heated = "heated-house";

    /// <summary>
    /// The zone to reckon with: of the region unless the house is heated for sure; null when not told.
    /// </summary>
    public string? Taken => IsHeated == Truth.Yes ? Heated : Outdoors;

    /// <summary>
    /// Every zone that may hold, by what is told; empty when the region has to be known first.
    /// </summary>
    public ImmutableArray<string> Possible =>
        IsHeated == Truth.Yes ? [Heated]
        : Outdoors is not { } outdoors ? []
        : IsHeated == Truth.No ? [outdoors]
        : [outdoors, Heated];

    /// <summary>The month of a day as weeds list it.</summary>
    public int MonthOf(DateOnly day) => Hemisphere.NorthernMonth(day.Month);

    /// <summary>Reads it from the site.</summary>
    public static EmergenceZone Of(IReadOnlyDictionary<string, Reading> site, KnowledgeBase knowledge)
    {
        Reading heated = site.GetValueOrDefault(QuestionIds.Heated, Reading.Absent);
        Reading region = site.GetValueOrDefault(QuestionIds.Region, Reading.Absent);
        Region? known = region is Reading.Words words ? knowledge.Regions.GetValueOrDefault(words.Value.First()) : null;
        string? outdoors = known?.EmergenceZone;
        ImmutableArray<Need> untold = region.Needs.IsEmpty ? [Need.Question(QuestionIds.Region)] : region.Needs;
        return new EmergenceZone(
            heated.IsAnyOf(WordSet.Of(["yes"])),
            outdoors,
            known.HemisphereOrNorth(),
            heated.Needs,
            outdoors is null ? untold : []
        );
    }
}

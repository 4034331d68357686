using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>What of a place bears on the weeds in its pots.</summary>
/// <param name="EmergenceZone">Zone under which weeds list their months, such as <c>us-southeast</c> or
/// <c>heated-house</c>.</param>
/// <param name="Hemisphere">Which half of the earth it lies in.</param>
/// <param name="SurfaceMoisture">Answer of <c>surface-moisture</c>; null when not known.</param>
/// <param name="Surroundings">Answer of <c>surroundings</c>; null when not known.</param>
public sealed record WeedSite(
    string EmergenceZone,
    Hemisphere Hemisphere,
    string? SurfaceMoisture,
    string? Surroundings
);

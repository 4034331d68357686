using WeedAdvisor.Inference.Areas;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>The mulch on the pots.</summary>
/// <param name="Kind">Answer of <c>mulch</c> other than <c>none</c>.</param>
/// <param name="DepthCm">Depth, centimetres; null when not known, and then taken to be a working depth.</param>
public sealed record PotMulch(string Kind, decimal? DepthCm)
{
    /// <summary>The mulch of an area; null when its pots are bare or it is not told.</summary>
    public static PotMulch? Of(AreaReading area) =>
        area.Mulch is { } kind ? new PotMulch(kind, area.MulchDepthCm) : null;
}

using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Blocks;

/// <summary>The pots of an area as all sums of a year see them: how many, how wide, how far apart.</summary>
/// <param name="Pots">How many pots stand there.</param>
/// <param name="WidthCm">How wide they are at the rim, centimetres.</param>
/// <param name="ApartCm">From the centre of one to the centre of the next, centimetres; at least the width.</param>
public sealed record PotBlock(Told<int> Pots, Told<decimal> WidthCm, Told<decimal> ApartCm)
{
    private const decimal SquareCmInSquareM = 10_000;

    /// <summary>The surface of the mix in one pot, square centimetres: that of a circle as wide as the rim.</summary>
    public decimal SurfaceCm2 => (decimal)Math.PI / 4 * WidthCm.Value * WidthCm.Value;

    /// <summary>
    /// The ground that the block takes, square metres, in square rows; paths between beds are not in it.
    /// </summary>
    public decimal GroundM2 => Pots.Value * ApartCm.Value * ApartCm.Value / SquareCmInSquareM;

    /// <summary>
    /// The pots of an area: as told, else as usual. Pots that touch stand as far apart as they are wide; those that do
    /// not, as far in proportion to their width as the usual pot does.
    /// </summary>
    /// <param name="area">The area as read.</param>
    /// <param name="usual">What is taken where nobody says it.</param>
    /// <param name="pots">Pots set for this reckoning; null for none.</param>
    public static PotBlock Of(AreaReading area, UsualNumbers usual, int? pots = null)
    {
        Told<decimal> width = area.PotWidthCm;
        decimal apart = area.IsTight
            ? width.Value
            : Math.Max(width.Value, width.Value * usual[UsualIds.SpacedPots] / usual[UsualIds.PotWidth]);
        return new PotBlock(
            area.Pots(pots),
            width,
            new Told<decimal>(apart, area.IsTight ? width.From : Origin.Assumed)
        );
    }
}

using System.Globalization;

namespace WeedAdvisor.Planning.Costs;

/// <summary>The ground that a dose falls on: the beds, or with a spoon the mix in the pots.</summary>
/// <param name="SquareM">Square metres.</param>
/// <param name="Words">How that comes about.</param>
internal sealed record TreatedGround(decimal SquareM, string Words)
{
    private const decimal SquareCmInSquareM = 10_000;

    /// <summary>The ground that a tool treats.</summary>
    public static TreatedGround Of(CostSite site, string? tool)
    {
        if (site.Block is not { } block)
            return new TreatedGround(
                site.GroundM2,
                string.Create(CultureInfo.InvariantCulture, $"{site.GroundM2:#,0.##} m²")
            );
        if (tool != ApplicationTools.Spoon)
            return new TreatedGround(
                block.GroundM2,
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{block.Pots.Value:#,0} pots {block.ApartCm.Value:0.#} cm apart, {block.GroundM2:#,0.#} m²"
                )
            );
        decimal surface = block.Pots.Value * block.SurfaceCm2 / SquareCmInSquareM;
        return new TreatedGround(
            surface,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{block.Pots.Value:#,0} pots {block.WidthCm.Value:0.#} cm wide, {surface:#,0.#} m²"
            )
        );
    }

    /// <summary>A figure that holds for all the ground, for what is treated of it.</summary>
    public CostLine Of(CostLine ofAllGround, CostSite site) =>
        SquareM == site.GroundM2
            ? ofAllGround
            : ofAllGround with
            {
                Amount = ofAllGround.Amount.Times(SquareM / site.GroundM2),
                Working = string.Create(
                    CultureInfo.InvariantCulture,
                    $"{ofAllGround.Working}, on {SquareM:#,0.#} of {site.GroundM2:#,0.#} m²"
                ),
            };
}

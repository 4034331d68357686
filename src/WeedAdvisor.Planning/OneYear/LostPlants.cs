using System.Globalization;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// Plants that cannot be sold, or only later, because weeds grew up beside them: a small share of the pots in which an
/// old weed stood, a larger one of those that a weed grew over. The shares and what a pot brings are assumptions,
/// prices the grower can set.
/// </summary>
internal static class LostPlants
{
    private const string Pot = "finished-pot",
        Old = "unsaleable-share",
        Overgrown = "unsaleable-share-overgrown";

    /// <summary>
    /// What a pot of the block brings when it is sold, US dollars: the price is that of a pot of the usual width, and
    /// goes with the surface of the mix.
    /// </summary>
    public static decimal? PotUsd(YearCase year)
    {
        decimal width = year.Block.WidthCm.Value / year.Usual[UsualIds.PotWidth];
        return year.Prices.Find(Pot)?.Value * width * width;
    }

    /// <summary>The items, for 1000 pots; none where a price is missing.</summary>
    public static IEnumerable<CostItem> Items(YearCase year, WeedingSeason season, decimal priceFactor)
    {
        if (PotUsd(year) is not { } usual || SharesOf(year) is not { } shares)
            yield break;
        decimal price = usual * priceFactor;
        (double old, double overgrown) = Grown(season);
        decimal hurt = Rounded(CropLoss.PotsHurt(old)),
            closed = Rounded(CropLoss.PotsHurt(overgrown));
        yield return new CostItem(
            "lost-plants",
            "Plants that cannot be sold",
            CostKind.LostReturn,
            ((hurt - closed) * shares.Old * price) + (closed * shares.Overgrown * price),
            0,
            Text(
                $"{hurt:#,0.#} pots with an old weed, {closed:#,0.#} of them grown over: {shares.Old * 100:0.##} % and "
            ) + Text($"{shares.Overgrown * 100:0.##} % of them x ${price:0.##} (assumed)")
        )
        {
            IsOfWeeds = true,
        };
    }

    /// <summary>
    /// What one more weed costs in plants that grows to 10 cm, and one that grows to 20 cm on top of that, US dollars,
    /// when so many do in all.
    /// </summary>
    /// <param name="year">The year.</param>
    /// <param name="old">Weeds that grow to 10 cm.</param>
    /// <param name="overgrown">Weeds that grow to 20 cm.</param>
    /// <param name="capUsd">What the year costs less than: with more weeds the loss alone would be as much.</param>
    public static (double Old, double Overgrown) UsdOfOne(
        YearCase year,
        double old,
        double overgrown,
        double capUsd = double.PositiveInfinity
    )
    {
        if (PotUsd(year) is not { } price || SharesOf(year) is not { } shares)
            return (0, 0);
        double ofOld = (double)(shares.Old * price),
            ofOvergrown = (double)((shares.Overgrown - shares.Old) * price);
        return (
            ofOld * PerWeed(Math.Min(old, MostWeeds(capUsd, ofOld))),
            ofOvergrown * PerWeed(Math.Min(overgrown, MostWeeds(capUsd, ofOvergrown)))
        );
    }

    /// <summary>Weeds that grew to 10 cm, and to 20 cm, in a season.</summary>
    public static (double Old, double Overgrown) Grown(WeedingSeason season) =>
        (season.Weeds.Sum(weed => weed.GrewOld), season.Weeds.Sum(weed => weed.GrewOvergrown));

    // Pots hurt for each weed: the curve of CropLoss bends down, so the mean over fewer weeds is never less.
    private static double PerWeed(double weeds) => weeds > 0 ? CropLoss.PotsHurt(weeds) / weeds : 1;

    // With more weeds than these the pots they hurt cost more than the cap.
    private static double MostWeeds(double capUsd, double usdOfPot) =>
        usdOfPot <= 0 || capUsd / usdOfPot >= CropLoss.Pots
            ? double.PositiveInfinity
            : CropLoss.WeedsThatHurt(capUsd / usdOfPot);

    private static (decimal Old, decimal Overgrown)? SharesOf(YearCase year) =>
        year.Prices.Find(Old) is { } old
            ? (Share(old.Value), Math.Max(Share(old.Value), Share(year.Prices.Find(Overgrown)?.Value ?? old.Value)))
            : null;

    private static decimal Share(decimal percent) => Math.Clamp(percent, 0, 100) / 100;

    private static decimal Rounded(double value) => Math.Round((decimal)value, 6);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

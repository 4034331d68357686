using System.Globalization;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// Plants that cannot be sold, or only later, because weeds grew up beside them: a small share of the pots in which an
/// old weed stood, a larger one of those that a weed grew over. The shares and what a pot brings are assumptions, prices
/// the grower can set.
/// </summary>
internal static class LostPlants
{
    private const string Pot = "finished-pot",
        Old = "unsaleable-share",
        Overgrown = "unsaleable-share-overgrown";

    // Classes of PlantSizes: from 10 cm, and from 20 cm.
    private const int FirstOld = 3,
        FirstOvergrown = 4;

    /// <summary>
    /// What a pot of the block brings when it is sold, US dollars: the price is that of a pot of the usual width, and
    /// goes with the surface of the mix.
    /// </summary>
    public static decimal? PotUsd(YearCase year)
    {
        decimal width = year.Block.WidthCm.Value / year.Usual[Knowledge.Records.UsualIds.PotWidth];
        return year.Prices.Find(Pot)?.Value * width * width;
    }

    /// <summary>The items, for 1000 pots; none where a price is missing.</summary>
    public static IEnumerable<CostItem> Items(YearCase year, WeedingSeason season, decimal priceFactor)
    {
        if (PotUsd(year) is not { } usual || SharesOf(year) is not { } shares)
            yield break;
        decimal price = usual * priceFactor;
        double old = Weeds(season, FirstOld),
            overgrown = Weeds(season, FirstOvergrown);
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
        );
    }

    /// <summary>
    /// What one more weed pulled of each class of size costs in plants, US dollars, when so many are pulled in all.
    /// </summary>
    /// <param name="year">The year.</param>
    /// <param name="old">Weeds of 10 cm and more.</param>
    /// <param name="overgrown">Weeds of 20 cm and more.</param>
    public static double[] UsdOfOne(YearCase year, double old, double overgrown)
    {
        double[] usd = new double[PlantSizes.Count];
        if (PotUsd(year) is not { } price || SharesOf(year) is not { } shares)
            return usd;
        double ofOld = (double)(shares.Old * price) * PerWeed(old),
            ofOvergrown = (double)((shares.Overgrown - shares.Old) * price) * PerWeed(overgrown);
        for (int size = FirstOld; size < usd.Length; size++)
            usd[size] = ofOld + (size >= FirstOvergrown ? ofOvergrown : 0);
        return usd;
    }

    /// <summary>Weeds of 10 cm and more, and of 20 cm and more, pulled in a season and its clearing.</summary>
    public static (double Old, double Overgrown) Pulled(WeedingSeason season) =>
        (Weeds(season, FirstOld), Weeds(season, FirstOvergrown));

    // Pots hurt for each weed: the curve of CropLoss bends down, so the mean over fewer weeds is never less.
    private static double PerWeed(double weeds) => weeds > 0 ? CropLoss.PotsHurt(weeds) / weeds : 1;

    private static (decimal Old, decimal Overgrown)? SharesOf(YearCase year) =>
        year.Prices.Find(Old) is { } old
            ? (Share(old.Value), Math.Max(Share(old.Value), Share(year.Prices.Find(Overgrown)?.Value ?? old.Value)))
            : null;

    private static decimal Share(decimal percent) => Math.Clamp(percent, 0, 100) / 100;

    private static double Weeds(WeedingSeason season, int from) =>
        season.Rounds.Append(season.Clearing).Sum(round => round.Pulled.Skip(from).Sum());

    private static decimal Rounded(double value) => Math.Round((decimal)value, 6);

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

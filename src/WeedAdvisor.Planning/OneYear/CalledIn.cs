using System.Globalization;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// The licensed person who is called in for each use of a chemical where nobody is licensed: he brings his tools, and
/// his visit costs besides product and hours.
/// </summary>
internal static class CalledIn
{
    /// <summary>Id of the price of a visit.</summary>
    public const string PriceId = "licensed-applicator";

    private const string Prefix = "licensed-";
    private const decimal Pots = 1000;

    /// <summary>Whether somebody is called in for a part of a way.</summary>
    public static bool Is(YearCase year, WayPart part) => part.Action is Treatment && year.Reading.HasNobodyLicensed;

    /// <summary>Whether an item is what visits cost.</summary>
    public static bool Has(CostItem item) => item.Id.StartsWith(Prefix, StringComparison.Ordinal);

    /// <summary>The price that is missing; null when all is there or nobody is called in.</summary>
    public static string? Missing(YearCase year, WayPart part) =>
        Is(year, part) && year.Prices.Find(PriceId) is null ? PriceId : null;

    /// <summary>What the visits cost in the year, for 1000 pots; null when nobody is called in.</summary>
    public static CostItem? Item(YearCase year, WayPart part)
    {
        if (!Is(year, part) || year.Prices.Find(PriceId) is not { Value: var visit })
            return null;
        return new CostItem(
            Prefix + part.Action.Id,
            $"{part.Action.Name}: a licensed person called in",
            CostKind.Material,
            part.Times * visit * Pots / year.Pots,
            0,
            string.Create(
                CultureInfo.InvariantCulture,
                $"{part.Times} x ${visit:0.##} a visit with his own tools, shared by {year.Pots:#,0} pots"
            )
        );
    }
}

using WeedAdvisor.Planning.Blocks;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise;

/// <summary>What an action costs, in words.</summary>
public static class Costs
{
    /// <summary>Dollars and hours, what they are for, and the smallest pack where it is dearer.</summary>
    public static Line Of(AdvisedCost cost)
    {
        ActionCost all = cost.Cost;
        Line amounts = IsForAll(cost) ? Sum(cost.Usd, cost.Hours) : Sum(cost.UsdPerUnit, cost.HoursPerUnit);
        Line pack =
            all.Pack is { } smallest && smallest.Usd > all.MaterialsUsd.Middle
                ? Line.Of($"; the smallest pack, {smallest.Holds}, {Amounts.Dollars(smallest.Usd)}")
                : "";
        string[] notes =
        [
            .. IsForAll(cost) ? [] : (string[])[$"of {Pots(all.Site.Block!).Text} assumed"],
            .. all.IsInvented ? (string[])["invented figures"] : [],
        ];
        string noted = notes.Length == 0 ? "" : $" ({string.Join("; ", notes)})";
        return Line.Of($"{amounts} {Basis(cost)}{pack}{noted}");
    }

    /// <summary>Dollars and hours and what they are for, as they are said within a sentence.</summary>
    public static Line Spoken(AdvisedCost cost)
    {
        Amount hours = Amounts.Hours((double)(IsForAll(cost) ? cost.Hours : cost.HoursPerUnit));
        Line amounts = (IsForAll(cost) ? cost.Usd : cost.UsdPerUnit) is { } usd
            ? Line.Of($"about {Amounts.Dollars(usd)} and {hours} of work")
            : Line.Of($"about {hours} of work");
        return Line.Of($"{amounts} {Basis(cost)}{(cost.Cost.IsInvented ? ", at invented prices" : "")}");
    }

    /// <summary>
    /// Dollars and hours for the pots of an area; null unless their number, width and spacing are told.
    /// </summary>
    public static Line? ForArea(AdvisedCost? cost) =>
        cost is { GrowsWithPots: true, Cost.Site: { Block: not null, IsTold: true } }
            ? Sum(cost.Usd, cost.Hours)
            : null;

    /// <summary>Dollars and hours where room is short, such as <c>$45, 1.5 h for 1000 pots</c>.</summary>
    public static string InShort(AdvisedCost cost)
    {
        bool isForAll = IsForAll(cost);
        string usd = (isForAll ? cost.Usd : cost.UsdPerUnit) is { } known ? $"{Amounts.Dollars(known).Text}, " : "";
        string hours = Amounts.Hours(isForAll ? cost.Hours : cost.HoursPerUnit).Text;
        return $"{usd}{hours}{(isForAll ? "" : " for 1000 pots")}";
    }

    // Where nobody told how many pots there are, a figure for all of them would only be large.
    private static bool IsForAll(AdvisedCost cost) =>
        cost.Cost.Site.Block is null || cost.Cost.Site.IsNumberTold || !cost.GrowsWithPots;

    private static Line Sum(decimal? usd, decimal hours) =>
        usd is { } known
            ? Line.Of($"about {Amounts.Dollars(known)}, {Amounts.Hours(hours)} of work")
            : Line.Of($"{Amounts.Hours(hours)} of work");

    private static Line Basis(AdvisedCost cost) =>
        cost.Cost.Site switch
        {
            { Block: null } => "for 100 m² of floor",
            _ when !cost.GrowsWithPots => "however many pots stand here",
            { IsNumberTold: true, Block: { } told } => Line.Of($"for {Pots(told)}"),
            _ => "for 1000 pots",
        };

    private static Amount Pots(PotBlock block) => new(block.Pots.Value, block.Pots.Value == 1 ? "pot" : "pots", "#,0");
}

using System.Collections.Immutable;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Money;

/// <summary>What the sums of an area rest on, in sentences.</summary>
public static class MoneyNotes
{
    /// <summary>The head of an area: wage, pots, rounds.</summary>
    public static ImmutableArray<Line> Basis(WaysCompared compared)
    {
        MoneyCase money = compared.Case;
        return
        [
            Line.Of(
                $"An hour costs {Usd(money.WageUsd)}. "
                    + $"{new Amount(money.Pots, "pots", "#,0")}{(money.IsPotsGiven ? "" : " (assumed: give --pots)")}, "
                    + $"{Size(money)}."
                    + $" Rounds every {Amounts.Count(money.IntervalWeeks, "week", "weeks")} "
                    + $"today{(money.IsIntervalGiven ? "" : " (assumed)")}."
            ),
            $"The year starts on the day of the visit. Weeds counted: "
                + $"{Listing.And([.. money.Year.Weeds.Counted.Select(weed => weed.Weed.Name)])}.",
            .. money.LeftOut.Select(why => Line.FromString($"Not counted: {why}")),
        ];
    }

    private static string Size(MoneyCase money)
    {
        var block = money.Year.Block;
        string taken = block.WidthCm.From == Origin.Assumed ? " (assumed)" : "";
        return $"{Figures.Plain(block.WidthCm.Value)} cm wide{taken} and "
            + $"{Figures.Plain(decimal.Round(block.ApartCm.Value, 1))} cm from centre to centre";
    }

    /// <summary>What was not compared: one sentence for each reason.</summary>
    public static IEnumerable<Line> Left(WaysCompared compared) =>
        compared
            .Left.GroupBy(left => left.Because, StringComparer.Ordinal)
            .OrderBy(group => group.Key, StringComparer.Ordinal)
            .Select(group =>
                Line.FromString($"{Figures.Sentence(group.Key)}: {string.Join("; ", group.Select(left => left.Name))}.")
            );

    /// <summary>What holds for every area.</summary>
    public static IEnumerable<Line> Standing(MoneyReport report)
    {
        string[] own = [.. report.Prices.Own.Select(price => price.Id)];
        yield return own.Length == 0
            ? "Every price is invented. Put your own in a file and name it with --prices."
            : $"Your own prices: {string.Join(", ", own)}. All others are invented.";
        foreach (Treatment treatment in report.Knowledge.Treatments.Values)
        {
            if (treatment.Label is { } label)
                yield return $"{treatment.Name}: {label.Line(report.Visit.Date)}";
        }

        yield return Share(report.Prices);
        yield return "Hours come from the hand-weeding model: its pressure and speeds are working values, so compare "
            + "ways rather than trust a figure.";
        yield return "How long one use takes is from memory (working times); set-up, cleaning and records count once "
            + "a use for all pots.";
        yield return "A preemergence is reckoned alone all year, in the weeks its record allows. The season plan turns "
            + "sites of action about.";
        yield return "A weed without a published rating counts as not controlled. A cheap way is no permission: the "
            + "label and the law come first.";
    }

    /// <summary>Where two ways cost the same, in a sentence.</summary>
    public static Line Wage(WayAgainst against, decimal wage) =>
        against.Wage switch
        {
            BreakEven.At at => Line.Of(
                $"Both cost the same at a wage of {new Amount(at.Value, Amount.Dollar, "#,0.00")} an hour; this way is "
                    + $"the cheaper {(at.FirstIsCheaperAbove ? "above" : "below")} it (yours: {Usd(wage)})."
            ),
            BreakEven.Never never =>
                $"There is no wage at which both cost the same: {(never.FirstIsCheaper ? "this way" : "today's way")} "
                    + $"is always the cheaper.",
            _ => "Both cost the same at every wage.",
        };

    /// <summary>When what is bought is earned back, in a sentence.</summary>
    public static Line Payback(WayAgainst against)
    {
        if (against.Way.Tools.IsEmpty)
            return "No tool has to be bought.";
        Line tools = Line.Of(
            $"{string.Join(", ", against.Way.Tools.Select(tool => tool.Name))} for "
                + $"{Amounts.Dollars(against.Way.OutlayUsd)}"
        );
        if (against.PaybackYears is not { } years || against.BreakEvenPots is not { } pots)
            return Line.Of($"To buy: {tools}. Nothing is saved, so it is never earned back.");
        return Line.Of(
            $"To buy: {tools}. Earned back in {new Amount(years, "years", "0.#")}; worth its yearly cost above "
                + $"{new Amount(Math.Ceiling(pots), "pots", "#,0")}."
        );
    }

    private static Line Share(PriceBook prices)
    {
        if (prices.Find("unsaleable-share") is not { } old || prices.Find("finished-pot") is not { } pot)
            return "Plants lost to weeds are not counted: the price 'unsaleable-share' or 'finished-pot' is missing.";
        Line overgrown = prices.Find("unsaleable-share-overgrown") is { } closed
            ? Line.Of($" and {new Amount(closed.Value, "%", "0.##")} of those in which one grew to 20 cm")
            : "";
        return Line.Of(
            $"Assumed: {new Amount(old.Value, "%", "0.##")} of the pots in which a weed grew to 10 cm{overgrown} "
                + $"cannot be sold; a pot of 16 cm brings {Usd(pot.Value)}, others by their surface "
                + $"('unsaleable-share', 'finished-pot')."
        );
    }

    private static Amount Usd(decimal usd) => new(usd, Amount.Dollar, "0.##");
}

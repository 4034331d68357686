using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products.Treatments;

/// <summary>The product on an area that was chosen within one published rate.</summary>
internal static class ChosenRate
{
    /// <summary>Product on an area, or why there is none.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="inputs">The entries.</param>
    /// <param name="published">The published rate that the choice must keep to.</param>
    public static (Quantity? Product, RateProblem? Problem) Of(
        WorkingSheet sheet,
        RateInputs inputs,
        PublishedRate published
    )
    {
        if (inputs.Has("rate") && inputs.Has("active"))
            return (null, new("active", "enter this or 'rate', not both"));
        if (inputs.Has("end") && (inputs.Has("rate") || inputs.Has("active")))
            return (null, new("end", "a rate was entered; leave this blank"));
        if (published.IsInWater)
            return InWater(sheet, inputs, published);
        if (Entered.Wrong(inputs, "a rate on an area", [], ["spray"]) is { } spare)
            return (null, spare);
        return published.High is null || inputs.Has("active")
            ? FromActiveRate(sheet, inputs, published)
            : Within(
                "rate",
                inputs.MeasureOrNull("rate") ?? End(inputs, published.Low!.Value, published.High.Value),
                published
            );
    }

    private static (Quantity?, RateProblem?) FromActiveRate(
        WorkingSheet sheet,
        RateInputs inputs,
        PublishedRate published
    )
    {
        if (published.ActiveInProduct is not { } strength)
        {
            return (
                null,
                new(
                    "treatment",
                    "no strength is known for it, so no product can be worked out; take the label's strength and "
                        + "'product from-active'"
                )
            );
        }

        if (inputs.MeasureOrNull("rate") is { } rate)
        {
            Quantity fits = Quantity.Of(1, published.IsWeighed ? "lb/acre" : "pt/acre");
            if (rate.Dimension != fits.Dimension)
                return (
                    null,
                    new(
                        "rate",
                        $"{rate} does not fit; this product goes by {(published.IsWeighed ? "weight" : "volume")} on "
                            + $"an area"
                    )
                );
            Quantity brought = ToActive.Active(sheet, rate, strength);
            return
                Outside("rate", brought, published.ActiveLow!.Value, published.ActiveHigh!.Value, published) is { } off
                ? (null, off)
                : (rate, null);
        }

        Quantity active = inputs.MeasureOrNull("active")
            ?? End(inputs, published.ActiveLow!.Value, published.ActiveHigh!.Value);
        if (
            published is { ActiveLow: { } low, ActiveHigh: { } high }
            && Outside("active", active, low, high, published) is { } outside
        )
            return (null, outside);
        Quantity product = FromActive.PerArea(sheet, active, strength);

        // Without figures for the active, the product has to keep to its range at both ends.
        if (published.ActiveHigh is null)
            return Within("active", product, published);
        return published.High is { } most && product.InBase > most.InBase
            ? (null, new("active", $"this takes {product} of product; the published rate is {published.Text}"))
            : (product, null);
    }

    private static (Quantity?, RateProblem?) InWater(WorkingSheet sheet, RateInputs inputs, PublishedRate published)
    {
        if (Entered.Wrong(inputs, "a rate in water", ["spray"], ["active"]) is { } wrong)
            return (null, wrong);
        if (published.High!.Value.Unit.Symbol == "%" && published.Treatment.Strength is null)
        {
            return (
                null,
                new(
                    "treatment",
                    $"its rate is a percent solution ({published.Text}) and no strength is known; only the label can "
                        + $"say how much product that is"
                )
            );
        }

        Quantity wanted = inputs.MeasureOrNull("rate") ?? End(inputs, published.Low!.Value, published.High.Value);
        if (Within("rate", wanted, published).Problem is { } off)
            return (null, off);
        Quantity spray = inputs.Measure("spray"),
            area = inputs.Measure("area");
        bool isUs = ProductField.IsUs(wanted);
        string volume = isUs ? "gal" : "L",
            ground = isUs ? "acre" : "ha";
        Quantity onGround = sheet.Line("Spray on the ground", $"{spray} ÷ {area}", spray / area, $"{volume}/{ground}");
        string unit =
            (
                published.IsWeighed
                    ? isUs
                        ? "lb"
                        : "kg"
                    : volume
            )
            + "/"
            + ground;
        return (sheet.Line("Product", $"{onGround} × {wanted}", onGround * wanted, unit), null);
    }

    private static (Quantity? Product, RateProblem? Problem) Within(
        string field,
        Quantity product,
        PublishedRate published
    )
    {
        Quantity low = published.Low!.Value,
            high = published.High!.Value;
        if (product.Dimension != low.Dimension)
            return (null, new(field, $"{product} cannot be held against the published rate, {published.Text}"));
        return Outside(field, product, low, high, published) is { } outside ? (null, outside) : (product, null);
    }

    private static RateProblem? Outside(
        string field,
        Quantity value,
        Quantity low,
        Quantity high,
        PublishedRate published
    )
    {
        // Conversions leave a trace in the last digits; the ends of the range belong to it.
        decimal trace = high.InBase / 1_000_000_000m;
        string? off =
            value.InBase > high.InBase + trace ? "above"
            : value.InBase < low.InBase - trace ? "below"
            : null;
        return off is null
            ? null
            : new(field, $"{value} is {off} the published rate, {published.Text}; the label may say less still");
    }

    private static Quantity End(RateInputs inputs, Quantity low, Quantity high) =>
        inputs.WordOrNull("end") == "high" ? high : low;
}

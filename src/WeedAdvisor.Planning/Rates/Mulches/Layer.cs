using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Areas;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Mulches;

/// <summary>What lies under a layer of mulch: a number of round pots, or a bed.</summary>
internal static class Layer
{
    /// <summary>Fields for pots or a bed, and for settling.</summary>
    public static RateField[] Fields() =>
        [
            new("pot-width", "Width at the mix", AreaField.PotWidth(), "For pots: across the mix, not the rim.")
            {
                IsOptional = true,
            },
            new("pots", "Pots", AreaField.Pots(), "For pots: how many.") { Default = "1000" },
            new("area", "Area of the bed", Field.Ground(), "For a bed, in place of the width of pots.")
            {
                IsOptional = true,
            },
            new(
                "settling",
                "Settles by",
                Field.Measure("%") with
                {
                    MayBeZero = true,
                },
                "How much of its depth it loses in the first weeks."
            )
            {
                Default = "0 %",
            },
        ];

    /// <summary>Depth of a layer: 1 mm to half a metre.</summary>
    public static RateFieldKind.Measure Depth() =>
        Field.Measure("in", "cm", "mm") with
        {
            Least = Quantity.Of(1, "mm"),
            Most = Quantity.Of(50, "cm"),
        };

    /// <summary>What is wrong with these fields; null when all is well.</summary>
    public static RateProblem? Wrong(RateInputs inputs)
    {
        Quantity settling = inputs.Measure("settling");
        if (settling.Unit.Symbol != "%")
            return new("settling", "write it in %");
        return settling.Value >= 80
            ? new("settling", $"{settling} leaves hardly a layer; less than 80 % can be believed")
            : Entered.NotOne(inputs, "pot-width", "area");
    }

    /// <summary>The surface that the layer covers, with its lines.</summary>
    public static Quantity Surface(WorkingSheet sheet, RateInputs inputs, bool isUs)
    {
        if (inputs.MeasureOrNull("area") is { } area)
            return sheet.Convert("Area", area, isUs ? "ft2" : "m2");
        Quantity one = PotGrid.Surface(sheet, "Surface of a pot", inputs.Measure("pot-width"), isUs ? "in2" : "cm2");
        decimal pots = inputs.Number("pots");
        return sheet.Line("Surface of all", $"{Figures.Of(pots, 6)} × {one}", one * pots, isUs ? "ft2" : "m2");
    }

    /// <summary>The part of its depth that a layer keeps.</summary>
    public static decimal Kept(RateInputs inputs) => 1 - inputs.Measure("settling").InBase;

    /// <summary>Whether a length or area is in US units.</summary>
    public static bool IsUs(Quantity quantity) =>
        quantity.Unit.Symbol
            is "in"
                or "ft"
                or "yd"
                or "in2"
                or "ft2"
                or "yd2"
                or "acre"
                or "sq-rod"
                or "in3"
                or "ft3"
                or "yd3"
                or "gal"
                or "qt"
                or "pt"
                or "fl-oz";
}

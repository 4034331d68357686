using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Spreaders;

/// <summary>Granules that a rate puts on an area: rate × area.</summary>
internal static class TestWeight
{
    /// <summary>The weight, through pounds on 1000 ft² or grams on a square metre.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="rate">The rate.</param>
    /// <param name="area">The area.</param>
    /// <param name="metric">Whether to give grams; else ounces.</param>
    public static Quantity Of(WorkingSheet sheet, Quantity rate, Quantity area, bool metric)
    {
        if (metric)
        {
            Quantity thin = sheet.Convert("Rate", rate, "g/m2"),
                metres = sheet.Convert("Area", area, "m2");
            return sheet.Line("Granules", $"{thin} × {metres}", thin * metres, "g");
        }

        Quantity per = sheet.Convert("Rate", rate, "lb/1000ft2"),
            feet = sheet.Convert("Area", area, "ft2");
        Quantity pounds = sheet.Line("Granules", $"{per} × {feet} ÷ 1000", per * feet, "lb");
        return sheet.Convert("Granules in ounces", pounds, "oz");
    }
}

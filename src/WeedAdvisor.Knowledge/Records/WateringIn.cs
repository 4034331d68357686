using System.Globalization;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>How much water starts a treatment, and how soon: said in one way wherever it is said.</summary>
public static class WateringIn
{
    /// <summary>As in <c>with 12.7 mm within a day</c>; null when the record gives no figure.</summary>
    public static string? WordsOf(Treatment treatment)
    {
        if (treatment.WaterInMm is not { } water)
            return null;
        string range = water.Low == water.High ? Plain(water.Low) : $"{Plain(water.Low)} to {Plain(water.High)}";
        return $"with {range} mm"
            + treatment.WaterInWithinDays switch
            {
                null => "",
                0 => " straight after",
                1 => " within a day",
                { } days => string.Create(CultureInfo.InvariantCulture, $" within {days:0} days"),
            };
    }

    private static string Plain(decimal millimetres) => millimetres.ToString("0.#", CultureInfo.InvariantCulture);
}

using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Facts;

/// <summary>
/// Who told what comes next, and when, need not be asked whether it ships soon: what is sold on a day told ships within
/// four weeks or does not, and what is potted on first does not ship before. A day of sale within four weeks counts
/// also where it is said that nothing ships soon: of two answers that contradict each other the careful one holds.
/// </summary>
internal static class ShippingFromWhatComesNext
{
    private const int SoonDays = 28;
    private const string Sale = "sale",
        PottingOn = "potting-on",
        NothingSoon = "nothing-soon";

    /// <summary>Adds the reading where it follows.</summary>
    public static void AddTo(Dictionary<string, Reading> readings)
    {
        Reading told = readings.GetValueOrDefault(QuestionIds.Shipping, Reading.Absent);
        bool? follows = Follows(readings);
        if (follows == true && told is not Reading.Nothing)
            readings[QuestionIds.Shipping] = Reading.Of("yes");
        else if (follows == false && told is Reading.Open)
            readings[QuestionIds.Shipping] = Reading.Of("no");
    }

    private static bool? Follows(Dictionary<string, Reading> readings) =>
        readings.GetValueOrDefault(QuestionIds.ComesNext) is not Reading.Words { Value: { Count: 1 } next }
            ? null
            : next.First() switch
            {
                Sale => readings.GetValueOrDefault(QuestionIds.ComesNextOn) is Reading.Number days
                    ? days.Value switch
                    {
                        // A day that is past says nothing of what is to come.
                        < 0 => null,
                        <= SoonDays => true,
                        _ => false,
                    }
                    : null,
                PottingOn or NothingSoon => false,
                _ => null,
            };
}

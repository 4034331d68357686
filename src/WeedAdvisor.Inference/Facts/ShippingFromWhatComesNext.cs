using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Facts;

/// <summary>
/// Who told what comes next, and when, need not be asked whether it ships soon: what is sold on a day told ships within
/// four weeks or does not, and what is potted on first does not ship before.
/// </summary>
internal static class ShippingFromWhatComesNext
{
    private const int SoonDays = 28;
    private const string Sale = "sale",
        PottingOn = "potting-on",
        NothingSoon = "nothing-soon";

    /// <summary>Adds the reading where it follows and nobody told it otherwise.</summary>
    public static void AddTo(Dictionary<string, Reading> readings)
    {
        if (
            readings.GetValueOrDefault(QuestionIds.Shipping) is Reading.Open
            && readings.GetValueOrDefault(QuestionIds.ComesNext) is Reading.Words { Value: { Count: 1 } next }
        )
        {
            bool? isSoon = next.First() switch
            {
                Sale => readings.GetValueOrDefault(QuestionIds.ComesNextOn) is Reading.Number days
                    ? days.Value <= SoonDays
                    : null,
                PottingOn or NothingSoon => false,
                _ => null,
            };
            if (isSoon is { } soon)
                readings[QuestionIds.Shipping] = Reading.Of(soon ? "yes" : "no");
        }
    }
}

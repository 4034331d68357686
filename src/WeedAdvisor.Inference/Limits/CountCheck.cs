using System.Globalization;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Limits;

/// <summary>Counts uses in a year.</summary>
internal static class CountCheck
{
    /// <summary>Whether one more use is too many; null when it is not.</summary>
    /// <param name="uses">The uses that count in the year.</param>
    /// <param name="most">The most uses.</param>
    /// <param name="active">The active whose limit it is; null for the product's own.</param>
    public static LimitVerdict? Of(UsesOfActive uses, decimal most, string? active)
    {
        if (uses.MostDays + 1 <= most)
            return null;
        string year = uses.IsCalendarYear ? "in a calendar year" : "in any twelve months";
        string text = $"{(active is null ? "This product" : $"What holds {active}")} may go on {Times(most)} {year}, and went on {uses.Days}";
        if (uses.SureDays + 1 <= most)
            return new LimitVerdict(LimitKind.Uses, active, Truth.NotKnown, [Need.Question("past")], null, text);

        // So many of the oldest have to lapse before one more fits.
        int lapse = (int)Math.Ceiling(uses.SureDays + 1 - most);
        DateOnly[] days = [.. uses.Uses.Where(use => use.IsSure).Select(use => use.Told.Date!.Value).Distinct().Order()];
        return new LimitVerdict(LimitKind.Uses, active, Truth.Yes, [], uses.FreedOn(days[lapse - 1]), text);
    }

    private static string Times(decimal most) => most switch
    {
        1 => "once",
        2 => "twice",
        _ => $"{most.ToString("0.##", CultureInfo.InvariantCulture)} times",
    };
}

using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Entry;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>
/// What the weather of the visit's day says of a treatment. It changes no status: told, it says why not today; not
/// told, the conditions of the record stand in its place. Under a roof there is neither wind nor rain nor frost.
/// </summary>
/// <param name="NotToday">Why it does not go on today, such as <c>wind</c>; empty when nothing is against it or nobody
/// said.</param>
/// <param name="Conditions">What the day must be like, such as <c>below 29 C</c>; empty when the weather was
/// told.</param>
internal sealed record DayWeather(ImmutableArray<string> NotToday, ImmutableArray<string> Conditions)
{
    private static readonly WordSet s_sprays = WordSet.Of(["spray-over-top", "directed-spray", "floor-spray"]);
    private static readonly WordSet s_broadcast = WordSet.Of(["granule-over-top", "granule-on-ground"]);
    private static readonly DayWeather s_nothing = new([], []);

    /// <summary>What the day says of an action.</summary>
    public static DayWeather Of(CatalogueAction action, AreaReading area, KnowledgeBase knowledge)
    {
        if (action is not Treatment treatment || knowledge.QuestionOf(QuestionIds.Weather) is null)
            return s_nothing;
        bool isOpen = Roof.IsOpen(area.Area, knowledge);
        return area.Weather is { } told
            ? new DayWeather([.. Against(treatment, told, isOpen, knowledge.Usual[UsualIds.HotDay])], [])
            : new DayWeather([], [.. ConditionsOf(treatment, isOpen)]);
    }

    private static IEnumerable<string> Against(Treatment treatment, WordSet weather, bool isOpen, decimal hotFrom)
    {
        bool isSprayed = treatment.Applied.Overlaps(s_sprays);
        if (isOpen && weather.Contains("windy") && (isSprayed || treatment.Applied.Overlaps(s_broadcast)))
            yield return "wind";
        if (isOpen && weather.Contains("rain-soon") && treatment.RainFreeHours is not null)
            yield return "rain soon";
        if (isOpen && weather.Contains("frost") && isSprayed)
            yield return "frost";
        if (weather.Contains("hot") && treatment.NotAboveC <= hotFrom)
            yield return "heat";
        if (weather.Contains("leaves-wet") && treatment.DryLeaves)
            yield return "wet leaves";
    }

    // Granules, and the acids and oils that want warmth, have their conditions among what is to be minded.
    private static IEnumerable<string> ConditionsOf(Treatment treatment, bool isOpen)
    {
        if (!treatment.Applied.Overlaps(s_sprays))
            yield break;
        if (treatment.DryLeaves)
            yield return "on dry leaves";
        if (treatment.NotAboveC is { } most)
            yield return $"below {Number(most)} C";
        if (treatment.NotBelowC is { } least)
            yield return $"above {Number(least)} C";
        if (treatment.Wants.Contains("light") && !treatment.Wants.Contains("warmth"))
            yield return "in bright light";
        if (treatment.RainFreeHours is { High: var hours })
            yield return $"{(isOpen ? "no rain or sprinkling" : "no sprinkling")} for {Number(hours)} h after";
    }

    private static string Number(decimal number) => number.ToString("0.##", CultureInfo.InvariantCulture);
}

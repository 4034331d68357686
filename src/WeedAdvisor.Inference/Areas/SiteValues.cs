using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Areas;

/// <summary>What the readings of a site tell for sure.</summary>
/// <param name="readings">The readings, by question.</param>
/// <param name="day">The day from which readings count days.</param>
internal sealed class SiteValues(IReadOnlyDictionary<string, Reading> readings, DateOnly day)
{
    /// <summary>All words; null when they are not told, empty when there are none.</summary>
    public WordSet? Words(string question) =>
        readings.GetValueOrDefault(question) switch
        {
            Reading.Words words => words.Value,
            Reading.Open or null => null,
            _ => WordSet.Empty,
        };

    /// <summary>The one word; null when it is not told, or there are several or none.</summary>
    public string? Word(string question) => Words(question) is { Count: 1 } words ? words.First() : null;

    /// <summary>The number; null when it is not told.</summary>
    public decimal? Number(string question) =>
        readings.GetValueOrDefault(question) is Reading.Number number ? number.Value : null;

    /// <summary>The date; null when it is not told.</summary>
    public DateOnly? Day(string question) => Number(question) is { } days ? day.AddDays((int)days) : null;
}

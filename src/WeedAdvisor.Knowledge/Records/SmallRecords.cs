using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>A climate for which months of emergence and temperatures are known.</summary>
public sealed record Region : Record
{
    /// <summary>Name for the grower.</summary>
    public required string Name { get; init; }

    /// <summary>Where the words for countries come from.</summary>
    public const string Countries = "list:country";

    /// <summary>The word of that list for every country of which no law is held.</summary>
    public const string Elsewhere = "other";

    /// <summary>The country whose register and law hold there: a word of <see cref="Countries"/>.</summary>
    public required string Country { get; init; }

    /// <summary>Which half of the earth it lies in.</summary>
    public Hemisphere Hemisphere { get; init; }

    /// <summary>
    /// The units in which quantities are printed there where a visit names none; null for those of their sources.
    /// </summary>
    public UnitsWanted? Units { get; init; }

    /// <summary>
    /// The zone by whose months weeds come up here; those of the nearest climate where <see cref="BorrowsMonths"/>.
    /// </summary>
    public required string EmergenceZone { get; init; }

    /// <summary>
    /// Whether no months are known for this climate, so that those of the nearest one stand in.
    /// </summary>
    public bool BorrowsMonths { get; init; }

    /// <summary>Mean temperature of the twelve months from January, degrees Celsius.</summary>
    public required ImmutableArray<decimal> MeanTemperatureC { get; init; }

    /// <summary>Its time zone, a name of the IANA time zone database; null when it is not one place.</summary>
    public string? TimeZone { get; init; }

    /// <summary>Average last frost of spring, <c>MM-DD</c>; null when there is none or it is not known.</summary>
    public string? LastFrost { get; init; }

    /// <summary>Average first frost of autumn, <c>MM-DD</c>; null when there is none or it is not known.</summary>
    public string? FirstFrost { get; init; }
}

/// <summary>Something that can be concluded about an area.</summary>
public sealed record FindingText : Record
{
    /// <summary>What it says of the area.</summary>
    public required string Text { get; init; }
}

/// <summary>A step of the rating scale and the reduction it stands for.</summary>
public sealed record ScaleStep : Record
{
    /// <summary>Reduction of the weed, percent.</summary>
    public required Span ReductionPercent { get; init; }
}

/// <summary>A default price. The shipped ones are invented.</summary>
public sealed record Price : Record
{
    /// <summary>What is bought.</summary>
    public required string Name { get; init; }

    /// <summary>The price, in <see cref="Unit"/>.</summary>
    public required decimal Value { get; init; }

    /// <summary>The range in which it may lie; null when it is held to be certain.</summary>
    public Span? Range { get; init; }

    /// <summary>The unit, such as <c>usd-per-hour</c>.</summary>
    public required string Unit { get; init; }

    /// <summary>The day it was last checked against its source; null when it never was.</summary>
    public DateOnly? Checked { get; init; }
}

/// <summary>How much of an active a year may see, whatever the products are called that hold it.</summary>
public sealed record ActiveLimit : Record
{
    /// <summary>ISO common name of the active.</summary>
    public required string Active { get; init; }

    /// <summary>
    /// Kilograms of active ingredient per hectare and year; null when only the number of uses is limited.
    /// </summary>
    public decimal? KgAiHaPerYear { get; init; }

    /// <summary>Uses a year of products that hold it; null when only the amount is limited.</summary>
    public decimal? UsesPerYear { get; init; }

    /// <summary>Days between two uses of products that hold it; null when not known.</summary>
    public decimal? IntervalDays { get; init; }

    /// <summary>Whether the year is the calendar year; else it is any twelve months.</summary>
    public bool IsCalendarYear { get; init; }

    /// <summary>
    /// <c>spray</c> or <c>granule</c> when only that form is limited, whose amount is then counted by itself; null for
    /// all forms together. Uses are shared by all forms.
    /// </summary>
    public string? Form { get; init; }

    /// <summary>Whether it is known that nothing limits it: it may be repeated as weeds come back.</summary>
    public bool IsUnlimited { get; init; }

    /// <summary>The day it was last checked against its sources; null when it never was.</summary>
    public DateOnly? Checked { get; init; }

    /// <summary>Whether the limit speaks of a treatment.</summary>
    public bool IsOn(Treatment treatment) =>
        treatment.Actives.Any(active => active.Name == Active) && (Form is null || Form == treatment.Form);
}

/// <summary>
/// Resistance of a weed that is on record somewhere: a reason to look twice, not a finding about this place.
/// </summary>
public sealed record KnownResistance : Record
{
    /// <summary>The weed's id.</summary>
    public required string Weed { get; init; }

    /// <summary>Sites of action that populations of it withstand, HRAC/WSSA codes.</summary>
    public required WordSet Groups { get; init; }

    /// <summary>Where and how it was seen; null when not told.</summary>
    public string? Note { get; init; }

    /// <summary>The day it was last checked against its sources; null when it never was.</summary>
    public DateOnly? Checked { get; init; }
}

/// <summary>A number that is taken for usual where nobody says it. Its id carries the unit.</summary>
public sealed record UsualNumber : Record
{
    /// <summary>What it is, for the grower.</summary>
    public required string Name { get; init; }

    /// <summary>The value, in the unit that the id names.</summary>
    public required decimal Value { get; init; }

    /// <summary>The range in which it may lie; null when it is held to be certain.</summary>
    public Span? Range { get; init; }
}

/// <summary>A source that records cite.</summary>
/// <param name="Key">Its key.</param>
/// <param name="Authors">Authors; null when not given.</param>
/// <param name="Title">Title.</param>
/// <param name="Year">Year as printed; null when not given.</param>
/// <param name="Publisher">Publisher; null when not given.</param>
/// <param name="Url">Address; null when there is none.</param>
/// <param name="Note">A note; null when there is none.</param>
public sealed record Source(
    string Key,
    string? Authors,
    string Title,
    string? Year,
    string? Publisher,
    string? Url,
    string? Note
)
{
    /// <summary>The source in one line.</summary>
    public string Citation =>
        string.Join(
            ". ",
            new[] { Authors, Year?.TrimEnd('.'), Title, Publisher, Url }.Where(part => !string.IsNullOrEmpty(part))
        );
}

/// <summary>A list of words with their plain text.</summary>
/// <param name="Id">The list's id, such as <c>weed-kind</c>.</param>
/// <param name="Words">Word and plain text, in the order of the file.</param>
public sealed record WordList(string Id, ImmutableArray<KeyValuePair<string, string>> Words)
{
    private readonly ImmutableDictionary<string, string> _texts = Words.ToImmutableDictionary(StringComparer.Ordinal);

    /// <summary>Whether the list has the word.</summary>
    public bool Contains(string word) => _texts.ContainsKey(word);

    /// <summary>The word's plain text, or the word itself when it is not in the list.</summary>
    public string TextOf(string word) => _texts.GetValueOrDefault(word, word);
}

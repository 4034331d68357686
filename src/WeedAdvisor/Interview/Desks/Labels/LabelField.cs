using System.Collections.Immutable;

namespace WeedAdvisor.Interview.Desks.Labels;

/// <summary>How a line of the label form is typed.</summary>
public enum LabelFieldKind
{
    /// <summary>Any text.</summary>
    Text,

    /// <summary>A day.</summary>
    Day,

    /// <summary>A plain number.</summary>
    Number,

    /// <summary>One word.</summary>
    Word,

    /// <summary>Words with commas between.</summary>
    Words,

    /// <summary>Rates with semicolons between.</summary>
    Rates,
}

/// <summary>One thing that is copied off a label. Screens and the line-by-line form are both made from these.</summary>
/// <param name="Key">Its key in the label book.</param>
/// <param name="Label">What it is, a few words.</param>
/// <param name="Kind">How it is typed.</param>
/// <param name="Help">Where it stands on a label and what it settles, one sentence.</param>
public sealed record LabelField(string Key, string Label, LabelFieldKind Kind, string Help)
{
    /// <summary>The grower's name for the product.</summary>
    public static readonly LabelField Name = new(
        "name",
        "Your name for it",
        LabelFieldKind.Text,
        "As you call the bag or bottle; it stands in every line that the label changes."
    );

    /// <summary>The day it was read.</summary>
    public static readonly LabelField Read = new(
        "read",
        "Read on",
        LabelFieldKind.Day,
        "The day you read it; after a year it is to be read again. Today, when left out."
    );

    /// <summary>All of them, in the order in which they are asked.</summary>
    public static ImmutableArray<LabelField> All { get; } =
    [
        Name,
        Read,
        new(
            "registration-number",
            "Registration no.",
            LabelFieldKind.Text,
            "The number under which the product is registered; it is printed on the front."
        ),
        new(
            "entry-hours",
            "Keep out, hours",
            LabelFieldKind.Number,
            "The restricted-entry interval. Of yours and the record's the longer counts."
        ),
        new(
            "sites",
            "Places it names",
            LabelFieldKind.Words,
            "The growing places it may go on, such as container-yard, liner-bed; commas between."
        ),
        new(
            "crops",
            "Crops it names",
            LabelFieldKind.Words,
            "The crops it may go over; commas between. A crop that the record says is hurt stays barred."
        ),
        new(
            "wait-after-potting-days",
            "Wait after potting",
            LabelFieldKind.Number,
            "Days from potting until it may go on; 0 when the label says as soon as the mix has settled."
        ),
        new(
            "wait-bare-root-days",
            "Same, bare roots",
            LabelFieldKind.Number,
            "Days from potting bare-root stock until it may go on."
        ),
        new(
            "days-before-covering",
            "Open before film",
            LabelFieldKind.Number,
            "Days a house must stay open after it before film goes on."
        ),
        new("repeat-after-days", "Days between uses", LabelFieldKind.Number, "Days before it may go on again."),
        new("uses-per-year", "Uses a year", LabelFieldKind.Number, "How often it may go on in a year."),
        new(
            "yearly-limit-kg-ai-ha",
            "Yearly limit, kg/ha",
            LabelFieldKind.Number,
            "Most active ingredient a year, kilograms a hectare (1 lb/acre is 1.12 kg/ha)."
        ),
        new(
            "water-in-within-days",
            "Water in, days",
            LabelFieldKind.Number,
            "Days within which it has to be watered in; 0 when at once."
        ),
        new("signal-word", "Signal word", LabelFieldKind.Word, "caution, warning, danger or none."),
        new(
            "rates",
            "Rates",
            LabelFieldKind.Rates,
            "Product for an area or a volume, such as 100 to 200 lb/acre; semicolons between several."
        ),
    ];

    /// <summary>What is to be written.</summary>
    public string Expected =>
        Kind switch
        {
            LabelFieldKind.Day => "a day such as 2026-04-30, or today",
            LabelFieldKind.Number => "a number",
            LabelFieldKind.Words => "words, commas between",
            LabelFieldKind.Word => "one word",
            LabelFieldKind.Rates => "such as 100 to 200 lb/acre",
            _ => "any text",
        };

    /// <summary>Whether the label cannot be kept without it.</summary>
    public bool IsNeeded => Key == Name.Key;

    /// <summary>What is to be written and what happens when it is not.</summary>
    public string Hint => IsNeeded ? Expected : $"{Expected}; may be left out";
}

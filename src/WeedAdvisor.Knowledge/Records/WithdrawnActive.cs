using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>
/// An active that may not be used any more in some countries, and what becomes of a bag that still lies in the store.
/// </summary>
public sealed record WithdrawnActive : Record
{
    /// <summary>The id of the active.</summary>
    public required string Active { get; init; }

    /// <summary>Words of <see cref="Region.Countries"/>: where no stock of it may be used any more.</summary>
    public required WordSet Countries { get; init; }

    /// <summary>The first day on which nobody could use it there; null when the day is not known.</summary>
    public DateOnly? Since { get; init; }

    /// <summary>What to do with a bag of it.</summary>
    public required string Bag { get; init; }

    /// <summary>Ids of treatments that older visits name and that no record describes any more.</summary>
    public WordSet Formerly { get; init; } = WordSet.Empty;

    /// <summary>The day its values were last checked against the sources; null when they never were.</summary>
    public DateOnly? Checked { get; init; }
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Knowledge.Labels;

/// <summary>
/// What the grower read on a label of his own. What is left out he did not read; the record then stands.
/// </summary>
public sealed record ProductLabel
{
    /// <summary>The grower's own name for the product, as an id.</summary>
    public required string Id { get; init; }

    /// <summary>The name in a sentence.</summary>
    public required string Name { get; init; }

    /// <summary>The treatment that the product is.</summary>
    public required string Treatment { get; init; }

    /// <summary>The registration number printed on the label; null when not noted.</summary>
    public string? RegistrationNumber { get; init; }

    /// <summary>The day the label was read.</summary>
    public required DateOnly Read { get; init; }

    /// <summary>Answers of question <c>place</c> that the label names; empty when not noted.</summary>
    public WordSet Sites { get; init; } = WordSet.Empty;

    /// <summary>Ids of crops that the label names; empty when not noted.</summary>
    public WordSet Crops { get; init; } = WordSet.Empty;

    /// <summary>Restricted-entry interval, hours.</summary>
    public decimal? EntryHours { get; init; }

    /// <summary>Days to wait after potting.</summary>
    public decimal? WaitAfterPottingDays { get; init; }

    /// <summary>Days to wait after potting bare-root stock.</summary>
    public decimal? WaitBareRootDays { get; init; }

    /// <summary>Days the house must stay open after it before film goes on.</summary>
    public decimal? DaysBeforeCovering { get; init; }

    /// <summary>Days before it may go on again.</summary>
    public decimal? RepeatAfterDays { get; init; }

    /// <summary>Applications a year.</summary>
    public decimal? UsesPerYear { get; init; }

    /// <summary>Most active ingredient in a year, kilograms per hectare.</summary>
    public decimal? YearlyLimitKgAiHa { get; init; }

    /// <summary>Days within which it has to be watered in.</summary>
    public decimal? WaterInWithinDays { get; init; }

    /// <summary>Word of list <c>signal-word</c>.</summary>
    public string? SignalWord { get; init; }

    /// <summary>Rates; empty when not noted.</summary>
    public ImmutableArray<Rate> Rates { get; init; } = [];

    /// <summary>Where it stands in the file.</summary>
    public required Place Where { get; init; }
}

/// <summary>The grower's own labels, one for a treatment.</summary>
/// <param name="Labels">The labels, in the order of the file.</param>
/// <param name="Hash">SHA-256 (FIPS 180-4) over the bytes of the file, lower-case hexadecimal.</param>
public sealed record LabelBook(ImmutableArray<ProductLabel> Labels, string Hash);

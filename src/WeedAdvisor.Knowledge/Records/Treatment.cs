using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Labels;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>A chemical use: one active or premix in one formulation kind and one way of use. Not a label.</summary>
public sealed record Treatment : CatalogueAction
{
    /// <summary>The actives, at least one.</summary>
    public required ImmutableArray<Active> Actives { get; init; }

    /// <summary>Word of list <c>formulation</c> (international two-letter formulation codes).</summary>
    public required string Formulation { get; init; }

    /// <summary><c>granule</c> or <c>spray</c>, as limits tell forms apart.</summary>
    public string Form => Formulation == "GR" ? "granule" : "spray";

    /// <summary>Word of list <c>role</c>.</summary>
    public required string Role { get; init; }

    /// <summary>Words of list <c>acts-on</c>.</summary>
    public required WordSet ActsOn { get; init; }

    /// <summary>Words of list <c>application</c>.</summary>
    public required WordSet Applied { get; init; }

    /// <summary>Whether it lands on, in the pot of, or as vapour reaches the crop.</summary>
    public required bool ReachesCrop { get; init; }

    /// <summary>Answers of question <c>cover</c> under which it is allowed.</summary>
    public required WordSet AllowedUnder { get; init; }

    /// <summary>Word of list <c>enclosed-use</c>: <c>never</c>, <c>empty-house</c> or <c>with-crop</c>.</summary>
    public required string EnclosedUse { get; init; }

    /// <summary>Ids of crops known to tolerate it.</summary>
    public required WordSet CropsTolerant { get; init; }

    /// <summary>Ids of crops known to be hurt by it.</summary>
    public required WordSet CropsHurt { get; init; }

    /// <summary>Whether it may be used where an edible crop stands; null when only the label can tell.</summary>
    public bool? EdibleOk { get; init; }

    /// <summary>Whether organic production may use it; null when only the label and the certifier can tell.</summary>
    public bool? OrganicOk { get; init; }

    /// <summary>Days to wait after potting; null when not known.</summary>
    public decimal? WaitAfterPottingDays { get; init; }

    /// <summary>Days to wait after potting bare-root stock; null when not known.</summary>
    public decimal? WaitBareRootDays { get; init; }

    /// <summary>Days the house must stay open after it before film goes on; null when not known.</summary>
    public decimal? DaysBeforeCovering { get; init; }

    /// <summary>Answers of question <c>growth-state</c> at which it is barred.</summary>
    public WordSet NotAt { get; init; } = WordSet.Empty;

    /// <summary>Water to activate it, millimetres; null when none is needed.</summary>
    public Span? WaterInMm { get; init; }

    /// <summary>Days within which that water must come; null when not known.</summary>
    public decimal? WaterInWithinDays { get; init; }

    /// <summary>Hours without rain or sprinkling after it; null when it needs none or none is known.</summary>
    public Span? RainFreeHours { get; init; }

    /// <summary>The warmest air in which it goes on, degrees Celsius; null when no limit is known.</summary>
    public decimal? NotAboveC { get; init; }

    /// <summary>The coldest air in which it goes on, degrees Celsius; null when no limit is known.</summary>
    public decimal? NotBelowC { get; init; }

    /// <summary>What it wants of the day to work, <c>warmth</c> or <c>light</c>.</summary>
    public WordSet Wants { get; init; } = WordSet.Empty;

    /// <summary>Whether it goes on dry leaves only.</summary>
    public bool DryLeaves { get; init; }

    /// <summary>Weeks of control; null when it has none or none is known.</summary>
    public Span? ResidualWeeks { get; init; }

    /// <summary>Days before it may go on again; null when not known.</summary>
    public decimal? RepeatAfterDays { get; init; }

    /// <summary>Applications a year; null when not known.</summary>
    public decimal? UsesPerYear { get; init; }

    /// <summary>Most active ingredient in a year, kilograms per hectare; null when not known.</summary>
    public decimal? YearlyLimitKgAiHa { get; init; }

    /// <summary>Published rates.</summary>
    public ImmutableArray<Rate> Rates { get; init; } = [];

    /// <summary>How strong the product kind is; null when not known.</summary>
    public Strength? Strength { get; init; }

    /// <summary>Word of list <c>volatility</c>.</summary>
    public required string Volatile { get; init; }

    /// <summary>Whether it stops root growth.</summary>
    public required bool RootInhibitor { get; init; }

    /// <summary>Whether it endangers water life.</summary>
    public required bool WaterHazard { get; init; }

    /// <summary>Whether its drift or vapour endangers neighbours' plants.</summary>
    public required bool DriftHazard { get; init; }

    /// <summary>Restricted-entry interval, hours; null when not known.</summary>
    public Span? ReiHours { get; init; }

    /// <summary>Word of list <c>signal-word</c>; null when not known.</summary>
    public string? SignalWord { get; init; }

    /// <summary>Protective equipment; null when not known.</summary>
    public string? ProtectiveEquipment { get; init; }

    /// <summary>Whether only certified applicators may use it.</summary>
    public required bool RestrictedUse { get; init; }

    /// <summary>Ratings, one entry for each that a table of a source holds.</summary>
    public ImmutableArray<Rating> Ratings { get; init; } = [];

    /// <summary>Word of list <c>status</c>.</summary>
    public required string Status { get; init; }

    /// <summary>
    /// Words of <see cref="Region.Countries"/>: where one of its actives may not be used any more.
    /// </summary>
    public WordSet WithdrawnIn { get; init; } = WordSet.Empty;

    /// <summary>What the grower's own label says; null without one.</summary>
    public LabelRead? Label { get; init; }

    /// <summary>The day its values were last checked against the sources.</summary>
    public required DateOnly Checked { get; init; }
}

/// <summary>An active ingredient.</summary>
/// <param name="Name">ISO common name.</param>
/// <param name="Group">HRAC/WSSA code, such as <c>14</c>; null for what the scheme does not classify.</param>
/// <param name="SiteOfAction">Word of list <c>site-of-action</c>; null for what the scheme does not classify.</param>
/// <param name="Was">Earlier HRAC letter; null where there was none.</param>
/// <param name="Percent">Its share of a premix, percent by weight; null when not given or when it is alone.</param>
public sealed record Active(string Name, string? Group, string? SiteOfAction, string? Was, decimal? Percent = null)
{
    /// <summary>Earlier WSSA number, where it changed; else null.</summary>
    public string? WasNumber { get; init; }
}

/// <summary>A published rating of a treatment on a weed.</summary>
/// <param name="On">A rating id, a weed's id or a word of list <c>weed-kind</c>.</param>
/// <param name="Grade">Id of a rating scale step: good, fair, poor or none.</param>
/// <param name="Scale">Word of list <c>rating-scale</c>.</param>
/// <param name="Raw">The rating as published.</param>
/// <param name="Sources">Keys of the sources.</param>
/// <param name="Note">A note, or null.</param>
public sealed record Rating(
    string On,
    string Grade,
    string Scale,
    string Raw,
    ImmutableArray<string> Sources,
    string? Note
);

/// <summary>A published rate.</summary>
/// <param name="Product">Product per area or per volume of water, in <paramref name="Unit"/>; null when only the active
/// is given.</param>
/// <param name="Unit">The unit; null with no product figure.</param>
/// <param name="AiLbPerAcre">Active ingredient, pounds per acre; null when not given.</param>
/// <param name="Sources">Keys of the sources.</param>
/// <param name="Note">A note, or null.</param>
public sealed record Rate(Span? Product, string? Unit, Span? AiLbPerAcre, ImmutableArray<string> Sources, string? Note);

/// <summary>How much active ingredient the product kind holds.</summary>
/// <param name="Value">The amount.</param>
/// <param name="Unit"><c>percent</c>, <c>lb-ai-per-gal</c> or <c>g-ai-per-litre</c>.</param>
public sealed record Strength(decimal Value, string Unit);

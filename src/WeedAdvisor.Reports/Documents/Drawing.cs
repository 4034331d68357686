using System.Collections.Immutable;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Reports.Season;

namespace WeedAdvisor.Reports.Documents;

/// <summary>Something that is drawn: the data, which each medium draws in its own way.</summary>
/// <param name="Title">What it shows.</param>
public abstract record Drawing(string Title) : Block;

/// <summary>A year of weeks, weeds below each other.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Strip">The year.</param>
public sealed record StripDrawing(string Title, Strip Strip) : Drawing(Title);

/// <summary>What each uncertain input does to a result, as bars on one scale.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Sensitivity">The swings; the result in US dollars.</param>
public sealed record SwingDrawing(string Title, Sensitivity Sensitivity) : Drawing(Title)
{
    /// <summary>What the result is called where its figures stand in a table.</summary>
    public string Result { get; init; } = "net change";
}

/// <summary>Amounts of one kind as bars below each other, from nothing up.</summary>
/// <param name="Title">What it shows.</param>
/// <param name="Bars">The bars, the longest first.</param>
public sealed record BarsDrawing(string Title, ImmutableArray<Bar> Bars) : Drawing(Title);

/// <summary>A bar.</summary>
/// <param name="Name">What it is of.</param>
/// <param name="Length">How long it is, 0 or more, in any unit that all bars share.</param>
/// <param name="Figure">What it says in figures.</param>
public sealed record Bar(string Name, decimal Length, string Figure);

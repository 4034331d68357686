using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>Something that can be done: a <see cref="Practice"/> or a <see cref="Treatment"/>.</summary>
public abstract record CatalogueAction : Record
{
    /// <summary>Short name.</summary>
    public required string Name { get; init; }

    /// <summary>What to do, in one or two sentences.</summary>
    public required string What { get; init; }

    /// <summary>Word of list <c>when</c>: <c>now</c>, <c>season</c> or <c>standing</c>.</summary>
    public required string When { get; init; }

    /// <summary>Answers of question <c>place</c> where it can be done.</summary>
    public required WordSet Places { get; init; }

    /// <summary>Answers of question <c>stock</c> with which it can be done.</summary>
    public required WordSet StockStages { get; init; }

    /// <summary>Answers of question <c>equipment</c>, any one of which suffices; empty when none is needed.</summary>
    public required WordSet NeedsEquipment { get; init; }

    /// <summary>What it costs; null when not known.</summary>
    public CostDrivers? Cost { get; init; }

    /// <summary>What must be said with it.</summary>
    public ImmutableArray<string> Cautions { get; init; } = [];

    /// <summary>What to do on a ground: in the wording for it where there is one.</summary>
    /// <param name="ground">Word of list <c>ground</c>; null when it is not told.</param>
    public virtual string WhatOn(string? ground) => What;

    /// <summary>What it costs on a ground: the figures for it where there are some.</summary>
    /// <param name="ground">Word of list <c>ground</c>; null when it is not told.</param>
    public virtual CostDrivers? CostOn(string? ground) => Cost;
}

using System.Collections.Immutable;

namespace WeedAdvisor.Reports.Documents;

/// <summary>Where the head of a row stands on a page of characters.</summary>
public enum RowHeadPlace
{
    /// <summary>To the left of the cells.</summary>
    Beside,

    /// <summary>On a line of its own above the cells.</summary>
    Above,

    /// <summary>Nowhere, since a cell says it too; only where the cells become a sentence.</summary>
    InSentence,
}

/// <summary>
/// Rows of figures. Where a page is too narrow for the columns, each row becomes a sentence, so that no figure is lost.
/// </summary>
/// <param name="Columns">The columns.</param>
/// <param name="Rows">The rows.</param>
public sealed record Table(ImmutableArray<Column> Columns, ImmutableArray<Row> Rows) : Block
{
    /// <summary>What it shows, for media that do not draw it below a heading; null when the heading says it.</summary>
    public string? Caption { get; init; }

    /// <summary>What the heads of the rows are; null when they say it themselves.</summary>
    public string? RowHead { get; init; }

    /// <summary>Where the heads of rows stand.</summary>
    public RowHeadPlace HeadPlace { get; init; }

    /// <summary>
    /// Columns of the row heads that stand beside the cells; 0 for what the cells leave free, wrapped.
    /// </summary>
    public int HeadWidth { get; init; }

    /// <summary>What stands over the remarks.</summary>
    public string RemarkHead { get; init; } = "";

    /// <summary>Columns between the cells and a remark.</summary>
    public int RemarkGap { get; init; } = 1;

    /// <summary>Columns left free before the cells.</summary>
    public int CellIndent { get; init; }

    /// <summary>Columns left free before a row that became a sentence.</summary>
    public int SentenceIndent { get; init; }

    /// <summary>What parts the cells of a row that became a sentence.</summary>
    public string Between { get; init; } = ", ";

    /// <summary>The page below which no table is drawn; 0 when only the columns count.</summary>
    public int LeastPage { get; init; }
}

/// <summary>A column of a table.</summary>
/// <param name="Name">Its heading in full.</param>
/// <param name="Width">Columns it takes on a page of characters.</param>
public sealed record Column(string Name, int Width)
{
    /// <summary>Its heading where room is short, line by line; empty for a table without headings.</summary>
    public ImmutableArray<string> Brief { get; init; } = [];

    /// <summary>What stands before a cell in a sentence.</summary>
    public string Before { get; init; } = "";

    /// <summary>Whether its cells are words, which begin at the left and go on below where they are long.</summary>
    public bool IsText { get; init; }

    /// <summary>What stands after a cell in a sentence.</summary>
    public string After { get; init; } = "";
}

/// <summary>A row of a table.</summary>
/// <param name="Head">What it is about.</param>
/// <param name="Cells">What stands in each column.</param>
public sealed record Row(Line Head, ImmutableArray<Line> Cells)
{
    /// <summary>What stands before the head.</summary>
    public string Mark { get; init; } = "";

    /// <summary>What stands behind the cells.</summary>
    public string Remark { get; init; } = "";

    /// <summary>How the row is meant.</summary>
    public Tone Tone { get; init; }
}

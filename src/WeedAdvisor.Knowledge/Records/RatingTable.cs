using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>The ratings that one source prints, as they can be held against its page.</summary>
/// <param name="Source">Key of the source.</param>
/// <param name="Checked">The day the table was last held against the page; null when there is none.</param>
/// <param name="Rows">What is said of a treatment on a weed, in the order of the file.</param>
/// <param name="Where">Where the table stands.</param>
public sealed record RatingTable(string Source, DateOnly? Checked, ImmutableArray<RatedPair> Rows, Place Where)
{
    /// <summary>What it is called beside records, such as <c>ratings/memory</c>.</summary>
    public string Id => $"ratings/{Source}";
}

/// <summary>One figure of a table of ratings.</summary>
/// <param name="Treatment">Id of the treatment.</param>
/// <param name="Rating">What is said.</param>
/// <param name="IsAgain">Whether the page prints another figure of the same pair besides.</param>
/// <param name="Where">Where its row stands.</param>
public sealed record RatedPair(string Treatment, Rating Rating, bool IsAgain, Place Where);

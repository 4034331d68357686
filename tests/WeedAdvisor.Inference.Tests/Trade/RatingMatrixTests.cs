using WeedAdvisor.Inference.Tests.Fixtures;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Tests.Trade;

/// <summary>
/// Efficacy ratings, cell by cell, against three public sets of tables (authors, publishers and addresses stand at the top
/// of each transcription): the container weed tables of North Carolina State University and Virginia Tech, the herbicide
/// fact sheets of North Carolina State University, and the guide pages of Cornell University.
/// </summary>
public class RatingMatrixTests
{
    [Theory]
    [InlineData("container-weed-tables.csv", "ncsu-vt-gfp", 70)]
    [InlineData("herbicide-fact-sheets.csv", "ncsu-factsheet", 150)]
    [InlineData("herbicide-guide.csv", "cornell-guide", 60)]
    public void Every_cell_of_the_table_stands_in_a_record_of_the_same_actives(string table, string scale, int atLeast)
    {
        string[][] cells = Table.Read(table);
        Assert.True(cells.Length >= atLeast, $"only {cells.Length} cells");
        string[] missing = [.. cells.Where(cell => !IsCarried(cell, scale)).Select(cell => string.Join("; ", cell))];
        Assert.Empty(missing);
    }

    [Theory]
    [InlineData("container-weed-tables.csv", "ncsu-vt-gfp")]
    [InlineData("herbicide-fact-sheets.csv", "ncsu-factsheet")]
    [InlineData("herbicide-guide.csv", "cornell-guide")]
    public void No_record_claims_a_cell_that_the_table_does_not_have(string table, string scale)
    {
        HashSet<string> printed = [.. Table.Read(table).Select(cell => $"{cell[1]};{cell[2]};{cell[4]}")];
        string[] invented =
        [
            .. ShippedKnowledge.Knowledge.Treatments.Values.SelectMany(treatment => treatment.Ratings
                .Where(rating => rating.Scale == scale && !printed.Contains($"{rating.On};{ActivesOf(treatment)};{rating.Grade}"))
                .Select(rating => $"{treatment.Id}: {rating.On} {rating.Grade}")),
        ];
        Assert.Empty(invented);
    }

    private static bool IsCarried(string[] cell, string scale) =>
        ShippedKnowledge.Knowledge.Treatments.Values.Any(treatment =>
            ActivesOf(treatment) == cell[2]
            && treatment.Ratings.Any(rating =>
                rating.On == cell[1] && rating.Grade == cell[4] && rating.Scale == scale && rating.Sources.Contains(cell[0])));

    private static string ActivesOf(Treatment treatment) =>
        string.Join('+', treatment.Actives.Select(active => active.Name).Order(StringComparer.Ordinal));
}

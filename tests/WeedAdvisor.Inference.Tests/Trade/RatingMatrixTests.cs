using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Trade;

/// <summary>
/// Efficacy ratings, cell by cell, against three public sets of tables (authors, publishers and addresses stand at the
/// top of each transcription): the container weed tables of North Carolina State University and Virginia Tech, the
/// herbicide fact sheets of North Carolina State University, and the guide pages of Cornell University.
/// </summary>
public class RatingMatrixTests
{
    private const string ContainerWeeds = "container-weed-tables.csv";
    private const string FactSheets = "herbicide-fact-sheets.csv";
    private const string Guide = "herbicide-guide.csv";

    private static IEnumerable<Treatment> Treatments => ShippedRules.Knowledge.Treatments.Values;

    [Theory]
    [InlineData(ContainerWeeds, "ncsu-vt-gfp", 104)]
    [InlineData(FactSheets, "ncsu-factsheet", 200)]
    [InlineData(Guide, "cornell-guide", 60)]
    public void Every_cell_of_the_table_stands_in_a_record_of_the_same_actives(string table, string scale, int atLeast)
    {
        RatingCell[] cells = RatingCell.Read(table);
        Assert.True(cells.Length >= atLeast, $"only {cells.Length} cells");
        Assert.All(cells.Where(cell => cell.IsGraded), cell =>
            Assert.Contains(Treatments, treatment => Carries(treatment, cell, scale))
        );
    }

    // What the table leaves open, or says of a granule only, no record may take from it.
    [Theory]
    [InlineData(ContainerWeeds, "ncsu-vt-gfp")]
    [InlineData(FactSheets, "ncsu-factsheet")]
    [InlineData(Guide, "cornell-guide")]
    public void No_record_claims_a_cell_that_the_table_does_not_have(string table, string scale)
    {
        RatingCell[] cells = [.. RatingCell.Read(table).Where(cell => cell.IsGraded)];
        string[] invented =
        [
            .. Treatments.SelectMany(treatment =>
                treatment
                    .Ratings.Where(rating =>
                        rating.Scale == scale && !cells.Any(cell => cell.IsOf(treatment) && cell.Says(rating))
                    )
                    .Select(rating => $"{treatment.Id}: {rating.On} {rating.Grade} {string.Join(' ', rating.Sources)}")
            ),
        ];
        Assert.Empty(invented);
    }

    // The key of the container weed tables: G good, F fair, P poor; a range such as P-F spans two. We count its lower
    // grade.
    [Fact]
    public void The_lower_grade_of_a_printed_range_counts() =>
        Assert.All(RatingCell.Read(ContainerWeeds), cell => Assert.Equal(
                cell.Printed.Contains('?') ? "unknown"
                    : cell.Printed.Contains('P') ? "poor"
                    : cell.Printed.Contains('F') ? "fair"
                    : "good",
                cell.Grade
            ));

    private static bool Carries(Treatment treatment, RatingCell cell, string scale) =>
        cell.IsOf(treatment) && treatment.Ratings.Any(rating => rating.Scale == scale && cell.Says(rating));
}

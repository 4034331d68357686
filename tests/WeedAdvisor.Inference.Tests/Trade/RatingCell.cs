using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Tests.Trade;

/// <summary>One cell of a published table of ratings.</summary>
internal sealed record RatingCell(
    string Table,
    string Weed,
    string Actives,
    string Printed,
    string Grade,
    string? Formulation
)
{
    public bool IsGraded => Grade != "unknown";

    public static RatingCell[] Read(string table) =>
        [
            .. Trade
                .Table.Read(table)
                .Select(cell => new RatingCell(
                    cell[0],
                    cell[1],
                    cell[2],
                    cell[3],
                    cell[4],
                    cell.Length > 5 ? cell[5] : null
                )),
        ];

    public bool IsOf(Treatment treatment) =>
        (Formulation is null || Formulation == treatment.Formulation)
        && Actives == string.Join('+', treatment.Actives.Select(active => active.Name).Order(StringComparer.Ordinal));

    public bool Says(Rating rating) =>
        rating.On == Weed && rating.Grade == Grade && rating.Raw == Printed && rating.Sources.Contains(Table);
}

using System.Globalization;
using System.Text;
using WeedAdvisor.Reports.Money;
using WeedAdvisor.Reports.Season;

namespace WeedAdvisor.Reports.Documents;

/// <summary>Drawings as pictures inside an HTML page, with what they show in words or figures beside them.</summary>
internal static class HtmlDrawings
{
    private const string StripKey =
        "Dark: held. Hatched: partly held. Red: comes up and is not held. Grey: does not come up. "
        + "Letters: what goes on. Bars at the top: nothing may go on.";

    private const string RoundsKey = " Strokes in the first row: weeding rounds.";

    public static void Write(StringBuilder html, Drawing drawing, int number)
    {
        switch (drawing)
        {
            case SwingDrawing swings:
                html.Append($"<figure>\n{SwingSvg.Of(swings.Sensitivity, swings.Title)}</figure>\n");
                Figures(html, swings);
                break;
            case StripDrawing strip:
                html.Append($"<figure>\n{StripSvg.Of(strip.Strip, strip.Title, number)}\n</figure>\n")
                    .Append($"<p>{HtmlLetters.Of(strip.Strip.Rounds.IsEmpty ? StripKey : StripKey + RoundsKey)}</p>\n");
                break;
            case BarsDrawing bars:
                html.Append($"<figure>\n{BarsSvg.Of(bars)}</figure>\n");
                break;
            default:
                throw new ArgumentOutOfRangeException(nameof(drawing), drawing, "a drawing without a picture");
        }
    }

    // Who cannot see the bars reads them.
    private static void Figures(StringBuilder html, SwingDrawing drawing) =>
        HtmlTable.Write(
            html,
            new Table(
                [
                    new Column("from", 0),
                    new Column("to", 0),
                    new Column($"{drawing.Result} from", 0),
                    new Column("to", 0),
                ],
                [
                    .. drawing.Sensitivity.Swings.Select(swing => new Row(
                        $"{swing.Input.Name}, {swing.Input.Unit}",
                        [
                            Plain(swing.Input.Low),
                            Plain(swing.Input.High),
                            SwingBars.Signed(swing.AtLow),
                            SwingBars.Signed(swing.AtHigh),
                        ]
                    )),
                ]
            )
            {
                Caption = "The same in figures",
                RowHead = "input",
            }
        );

    // As the bars write it, so that both can be held against each other.
    private static string Plain(decimal value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}

using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>What is known of the weeds seen, where the page has room: the first of each, then the second.</summary>
internal static class NoteLines
{
    /// <summary>The notes under their heading.</summary>
    /// <param name="style">What the page needs.</param>
    /// <param name="area">The area.</param>
    /// <param name="most">How many there are at most.</param>
    public static IEnumerable<Block> Of(PageStyle style, AreaAdvice area, int most)
    {
        Line[] lines =
        [
            .. AreaNotes
                .OfWeeds(style.Names, area.Reading)
                .SelectMany(
                    (note, weed) =>
                        note.Texts.Select(
                            (text, turn) =>
                                new
                                {
                                    Turn = turn,
                                    Weed = weed,
                                    note.Name,
                                    Text = text,
                                }
                        )
                )
                .OrderBy(one => one.Turn)
                .ThenBy(one => one.Weed)
                .Take(most)
                .Select(one => Line.Of($"{new Named(Figures.Sentence(one.Name))}: {one.Text}")),
        ];
        return lines.Length == 0 ? [] : [Heading.Section("Of these weeds"), ItemList.Dashes(lines).At(2)];
    }
}

using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>Leaves out what the page has said already: a deadline, a reason or a caution stands with the first action
/// that it concerns.</summary>
internal sealed class ToldOnce
{
    private readonly HashSet<string> _told = new(StringComparer.Ordinal);
    private string? _asked;

    /// <summary>What stands above all actions: an action that hangs on the same need not say so.</summary>
    public void Ask(ClearAction action) => _asked = KeyOf(action);

    /// <summary>Whether all that an action hangs on is asked above, with its doubt.</summary>
    public bool HasAsked(ClearAction action) => KeyOf(action) == _asked;

    /// <summary>The questions that an action hangs on, and the doubt that they settle.</summary>
    public static string KeyOf(ClearAction action)
    {
        string doubt = StatusWords.DoubtOf(action) is { } said ? Names.UnderItsName(said) : "";
        return $"{string.Join(' ', action.Unless)}: {doubt}";
    }

    /// <summary>The blocks that say something new. The label of a chemical is said with each.</summary>
    public IEnumerable<Block> OnlyNew(IEnumerable<Block> blocks) =>
        blocks.Where(block =>
            block switch
            {
                Keyed { Label: WorkItem.LabelFirst } => true,
                Keyed keyed => _told.Add(keyed.Label + keyed.Text.Text),
                Paragraph paragraph => _told.Add(paragraph.Text.Text),
                _ => true,
            }
        );
}

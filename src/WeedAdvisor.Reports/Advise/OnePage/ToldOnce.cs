using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>Leaves out what the page has said already: a deadline, a reason or a caution stands with the first action
/// that it concerns.</summary>
internal sealed class ToldOnce
{
    private readonly HashSet<string> _told = new(StringComparer.Ordinal);

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

using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>Leaves out what the page has said already: a deadline, a reason or a caution stands with the first action
/// that it concerns.</summary>
internal sealed class ToldOnce
{
    private readonly HashSet<string> _told = new(StringComparer.Ordinal);
    private readonly HashSet<Need> _asked = [];

    /// <summary>Questions that stand above all actions: what hangs on them alone need not say so.</summary>
    public void Ask(IEnumerable<Need> needs) => _asked.UnionWith(needs);

    /// <summary>Whether all of these are asked above.</summary>
    public bool HasAsked(IEnumerable<Need> needs) => _asked.Count > 0 && needs.All(_asked.Contains);

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

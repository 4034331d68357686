using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Advise.OnePage;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// The parts of an advice while its areas pass, some at a time and in their order. What stands before and behind the
/// areas is gathered as they pass, so that none of them has to be kept. What is said of an area is put into words on
/// all cores.
/// </summary>
/// <param name="visit">The visit.</param>
/// <param name="stamp">Which knowledge the advice came from.</param>
/// <param name="knowledge">The knowledge, for the names of things.</param>
/// <param name="full">Whether everything is told, or what a grower needs first.</param>
/// <param name="withSources">Whether the sources are named, and cited in full at the end.</param>
internal sealed class AdviceParts(
    Visit visit,
    KnowledgeStamp stamp,
    KnowledgeBase knowledge,
    bool full,
    bool withSources
)
{
    private readonly Names _names = new(knowledge);
    private readonly HabitSection _habits = new();
    private readonly List<Item> _firstThings = [];
    private readonly SortedSet<string> _sources = new(StringComparer.Ordinal);
    private SeenInAreas _seen = new();

    /// <summary>What it is about.</summary>
    public Line Title => $"Weed advice for {visit.Nursery ?? "a nursery without a name"}";

    /// <summary>What stands before the areas; complete once all have passed.</summary>
    public IEnumerable<Block> Before() =>
        [
            .. visit.Title is { } title ? [new Paragraph(title)] : (Block[])[],
            new Paragraph($"Visit {visit.Id}, {Figures.Day(visit.Date)}; knowledge {stamp.Brief}"),
            .. LiftedBars.Of(stamp),
            .. _firstThings.Count > 1 ? FirstThings.Of(_firstThings) : [],
            .. !full && _seen.AdvisesTreatment ? SafetyBlocks.Standing() : [],
        ];

    /// <summary>What stands behind them; complete once all have passed.</summary>
    public IEnumerable<Block> After() =>
        [
            .. full ? [] : _habits.Blocks(_names),
            .. !full && _seen is { NamesTreatment: true, AdvisesTreatment: false } ? SafetyBlocks.Standing() : [],
            .. full ? [] : ReadingKey.Of(_seen),
            .. withSources ? SourceSection.Of(knowledge, _sources) : [],
        ];

    /// <summary>Takes the next areas and gives what is made of their blocks, in their order.</summary>
    /// <param name="areas">The advice on them.</param>
    /// <param name="made">Makes something of the blocks of one area; it may run on any core.</param>
    public T[] Of<T>(ImmutableArray<AreaAdvice> areas, Func<IEnumerable<Block>, T> made)
    {
        var looked = new Looked[areas.Length];
        OnAllCores(areas.Length, i => looked[i] = LookAt(areas[i]));
        for (int i = 0; i < areas.Length; i++)
            Gather(areas[i], looked[i]);
        var all = new T[areas.Length];
        OnAllCores(areas.Length, i =>
            all[i] = made(
                full
                    ? FullReport.OfArea(_names, knowledge, visit.Date, areas[i])
                    : AreaPage.Of(PageStyle.Of(_names, visit.Date, areas[i], withSources), areas[i])
            )
        );
        return all;
    }

    private Looked LookAt(AreaAdvice area) =>
        new(
            FirstThings.Of(_names, area, visit.Date),
            SeenInAreas.Of(_names, knowledge, area),
            withSources ? [.. SourceSection.KeysOf(area)] : []
        );

    private void Gather(AreaAdvice area, Looked looked)
    {
        _firstThings.Add(looked.First);
        _seen = _seen.Or(looked.Seen);
        _sources.UnionWith(looked.Sources);
        _habits.Gather(area);
    }

    // One area is not worth a second thread.
    private static void OnAllCores(int count, Action<int> step)
    {
        if (count > 1)
            Parallel.For(0, count, step);
        else if (count == 1)
            step(0);
    }

    private sealed record Looked(Item First, SeenInAreas Seen, ImmutableArray<string> Sources);
}

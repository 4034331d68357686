using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>What to do in an area, by horizon, in the order of the work.</summary>
internal static class WorkSection
{
    private const int MostNames = 5;

    /// <summary>The work; habits of the nursery stand behind all areas.</summary>
    public static IEnumerable<Block> Of(PageStyle style, AreaAdvice area, PageDetail detail)
    {
        ImmutableArray<WorkLine> shown = Shown(area, detail);
        if (shown.IsEmpty)
        {
            yield return Heading.Section(Horizons.Title(Horizon.ThisWeek));
            yield return new Paragraph("Nothing is clear to do now.").At(2);
        }

        int at = 0;
        var told = new ToldOnce();
        foreach (var horizon in shown.GroupBy(line => line.Best.Horizon))
        {
            yield return Heading.Section(Horizons.Title(horizon.Key));
            yield return new ItemList([
                .. horizon.Select(line =>
                    WorkItem.Of(
                        style,
                        area,
                        line,
                        ++at,
                        at <= detail.Told ? Telling.WhatAndWhy
                            : at <= detail.Told + detail.WithReason ? Telling.Why
                            : Telling.Name,
                        detail.Cautions,
                        told
                    )
                ),
            ]);
        }

        foreach (var later in Lines(area).Skip(shown.Length).GroupBy(line => line.Best.Horizon))
        {
            string more = later.Key == shown[^1].Best.Horizon ? "More" : Horizons.InBrief(later.Key);
            string names = Listing.Some(
                [.. later.Select(line => style.Names.Action(line.Best.Action))],
                Math.Min(MostNames, detail.Lines)
            );
            yield return new Keyed($"{more}: ", names).At(2);
        }
    }

    /// <summary>The lines that are told with their reason.</summary>
    public static IEnumerable<WorkLine> Told(AreaAdvice area, PageDetail detail) =>
        Shown(area, detail).Take(detail.Told + detail.WithReason);

    /// <summary>What is never cut of the chemicals that are shown.</summary>
    public static IEnumerable<Block> Labels(PageStyle style, AreaAdvice area, PageDetail detail) =>
        Told(area, detail).SelectMany(line => WorkItem.LabelOf(style, line.Best));

    private static ImmutableArray<WorkLine> Lines(AreaAdvice area) =>
        [.. WorkLine.Of(area.Clear).Where(line => line.Best.Horizon != Horizon.Habit)];

    private static ImmutableArray<WorkLine> Shown(AreaAdvice area, PageDetail detail) =>
        [.. Lines(area).Take(detail.Lines)];
}

/// <summary>How much is told of a line of work.</summary>
internal enum Telling
{
    /// <summary>What to do, why, and what to mind.</summary>
    WhatAndWhy,

    /// <summary>Why.</summary>
    Why,

    /// <summary>Its name.</summary>
    Name,
}

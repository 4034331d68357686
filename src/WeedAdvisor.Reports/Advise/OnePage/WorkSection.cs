using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>What to do in an area, by horizon, in the order of the work.</summary>
internal static class WorkSection
{
    private const int LeastShared = 2;
    private const int MostNames = 5;
    private const int FewLines = 2;

    /// <summary>The work; habits of the nursery stand behind all areas.</summary>
    public static IEnumerable<Block> Of(PageStyle style, AreaAdvice area, PageDetail detail)
    {
        ImmutableArray<WorkLine> shown = Shown(style, detail);
        if (shown.IsEmpty && area.KeepOut is null)
        {
            yield return Heading.Section(Horizons.Title(Horizon.ThisWeek));
            yield return new Paragraph("Nothing is clear to do now.").At(2);
        }

        int at = 0;
        var told = new ToldOnce();
        foreach (Block block in First(style, shown, told))
            yield return block;
        foreach (var horizon in shown.GroupBy(line => line.Best.Horizon))
        {
            yield return Heading.Section(Horizons.Title(horizon.Key) + DayOf(style, area, horizon.Key));
            yield return new ItemList([
                .. horizon.Select(line =>
                    WorkItem.Of(style, area, line, ++at, TellingOf(style, line, at, detail), detail.Cautions, told)
                ),
            ]);
        }

        foreach (Block block in More(style, area, detail, shown))
            yield return block;
    }

    // What several hang on is asked once, above them.
    private static IEnumerable<Block> First(PageStyle style, ImmutableArray<WorkLine> shown, ToldOnce told)
    {
        ClearAction[] open = [.. shown.Select(line => line.Best).Where(action => !action.Unless.IsEmpty)];
        var shared = open.GroupBy(ToldOnce.KeyOf, StringComparer.Ordinal).MaxBy(group => group.Count());
        if (shared is null || shared.Count() < LeastShared)
            yield break;
        ClearAction first = shared.First();
        told.Ask(first);
        yield return Heading.Section("First of all");
        string doubt = StatusWords.DoubtOf(first) is { } said ? Names.UnderItsName(said) + " " : "";
        yield return new Paragraph(
            Line.FromString(
                doubt + "Ask before anything else: " + string.Join(" ", style.Names.QuestionsOf(first.Unless))
            ) with
            {
                Tone = Tone.Warning,
            }
        ).At(2);
    }

    // Where the day of the next potting was told it stands there.
    private static string DayOf(PageStyle style, AreaAdvice area, Horizon horizon) =>
        horizon == Horizon.AtPotting && area.Reading.PottingOnNext is { } day
            ? $", {UntilWords.Day(day, style.Day)}"
            : "";

    // A chemical is told with what to mind and its label, or only counted among those that are possible.
    private static Telling TellingOf(PageStyle style, WorkLine line, int at, PageDetail detail) =>
        at <= detail.Told
        || (detail.TellsOwnStep && IsOwnStep(line))
        || (at <= detail.Reasoned && style.Names.IsTreatment(line.Best.Action))
            ? Telling.WhatAndWhy
        : at <= detail.Reasoned ? Telling.Why
        : Telling.Name;

    private static IEnumerable<Block> More(
        PageStyle style,
        AreaAdvice area,
        PageDetail detail,
        ImmutableArray<WorkLine> shown
    )
    {
        HashSet<int> told = [.. shown.Select(line => line.Best.Rank)];
        ImmutableArray<WorkLine> left = [.. style.Work.Where(line => !told.Contains(line.Best.Rank))];
        int most = Math.Min(MostNames, detail.Lines + 1);
        // Where a chemical leads a line that has no room, the hand work that does its job is named.
        ClearAction[] practices =
        [
            .. left.Select(line => line.Others.Prepend(line.Best).FirstOrDefault(one => !IsChemical(style, one)))
                .OfType<ClearAction>(),
        ];
        // Where there is hardly any room the times stand in the full report.
        if (detail.Lines <= FewLines && practices.Length > 0)
            yield return new Keyed(
                "More: ",
                Listing.Some([.. practices.Select(one => style.Names.Action(one.Action))], most)
            ).At(2);
        foreach (var later in practices.Where(_ => detail.Lines > FewLines).GroupBy(one => one.Horizon))
        {
            string more =
                shown is [.., var last] && later.Key == last.Best.Horizon
                    ? "More"
                    : Horizons.InBrief(later.Key) + DayOf(style, area, later.Key);
            string names = Listing.Some([.. later.Select(one => style.Names.Action(one.Action))], most);
            yield return new Keyed($"{more}: ", names).At(2);
        }
    }

    // The weed that covers most has a step of its own, in the line or as one of its others.
    private static bool IsOwnStep(WorkLine line) => line.Others.Prepend(line.Best).Any(one => one.IsOwnStep);

    private static bool IsChemical(PageStyle style, ClearAction action) => style.Names.IsTreatment(action.Action);

    /// <summary>The lines that are told with their reason.</summary>
    public static IEnumerable<WorkLine> Told(PageStyle style, PageDetail detail) =>
        Shown(style, detail).Take(detail.Reasoned);

    /// <summary>What is never cut of the chemicals that are shown.</summary>
    public static IEnumerable<Block> Labels(PageStyle style, PageDetail detail) =>
        Told(style, detail).SelectMany(line => WorkItem.LabelOf(style, line.Best));

    // A chemical for which there is no room to be told with its label gets no line of its own, and takes no other's.
    public static ImmutableArray<WorkLine> Shown(PageStyle style, PageDetail detail)
    {
        var shown = ImmutableArray.CreateBuilder<WorkLine>();
        int least = LeastLines(style);
        int byHand = 0;
        foreach (WorkLine line in style.Work)
        {
            if (shown.Count >= detail.Lines && byHand >= least)
                break;
            bool isChemical = IsChemical(style, line.Best);
            if (isChemical && shown.Count >= detail.Reasoned)
                continue;
            shown.Add(line);
            byHand += isChemical ? 0 : 1;
        }

        return shown.ToImmutable();
    }

    // How many lines of hand work stand open at least: what is due today, and the step of the weed that covers most,
    // are never left to "more".
    private static int LeastLines(PageStyle style)
    {
        WorkLine[] byHand = [.. style.Work.Where(line => !IsChemical(style, line.Best))];
        int today = Array.FindLastIndex(byHand, line => line.Best is { Horizon: Horizon.Today, LacksTool: false });
        int own = Array.FindIndex(byHand, line => line.Best.Horizon <= Horizon.ThisWeek && IsOwnStep(line));
        return Math.Min(PageGrowth.MostLines, Math.Max(today, own) + 1);
    }
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

using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>Which chemicals the page of an area names, and in which place: each is told in one.</summary>
internal static class NamedChemicals
{
    /// <summary>From so many names on there is room for what is weak here.</summary>
    public const int EnoughRoom = 2;

    /// <summary>
    /// The chemicals that the page names as what may be done, now or after an answer: those of the work, those that may
    /// go on, those in hand that are answered with yes, and the likely ones.
    /// </summary>
    public static IEnumerable<ClearAction> Of(PageStyle style, AreaAdvice area, PageDetail detail)
    {
        ImmutableArray<WorkLine> shown = WorkSection.Shown(style, detail);
        HashSet<string> above = ToldAbove(style, detail);
        FreeChemical[] free = [.. style.Chemicals.Free.Where(one => !above.Contains(one.Action))];
        HashSet<string> yes = [.. style.Held.Where(one => one.IsUsable).Select(one => one.Action).OfType<string>()];
        return shown
            .SelectMany(line => WorkItem.OthersNamed(style, line).Prepend(line.Best))
            .Where(one => style.Names.IsTreatment(one.Action))
            .Concat(style.Clear.Where(one => yes.Contains(one.Action)))
            .Concat(
                ((FreeUse[])[FreeUse.OnComing, FreeUse.OnStanding])
                    .SelectMany(use => Best(free, use, detail.Chemicals))
                    .Concat(HasRoom(style, detail.Chemicals) ? Best(free, FreeUse.Little, 1) : [])
                    .Select(one => one.Cleared)
            )
            .Concat(
                style
                    .Chemicals.Waiting.Take(ToldOf(style, detail.Waiting))
                    .Select(group => area.Waiting.First(one => one.Action == group.Actions[0]).IfClear)
                    .OfType<ClearAction>()
            )
            .Concat(detail.Chemicals >= EnoughRoom && IsPaired(style, above, free) ? PartnerIn(style, area) : []);
    }

    // The partner stands beside the preventive that it completes, among the work or among what may go on.
    private static bool IsPaired(PageStyle style, HashSet<string> above, FreeChemical[] free) =>
        style.Chemicals.Pair is { } pair && (above.Contains(pair.Best) || free.Any(one => one.Use == FreeUse.OnComing));

    private static IEnumerable<ClearAction> PartnerIn(PageStyle style, AreaAdvice area) =>
        style.Chemicals.Pair is { } pair
            ? area
                .Clear.Concat(area.Waiting.Select(one => one.IfClear).OfType<ClearAction>())
                .Where(one => one.Action == pair.Partner)
            : [];

    /// <summary>What stands among the work or is answered as in hand: it is not named again.</summary>
    public static HashSet<string> ToldAbove(PageStyle style, PageDetail detail) =>
        [
            .. WorkSection
                .Shown(style, detail)
                .SelectMany(line => line.Others.Prepend(line.Best))
                .Select(one => one.Action),
            .. style.Held.Select(one => one.Action).OfType<string>(),
        ];

    /// <summary>The chemicals that are named as good for a use, the best first.</summary>
    public static IEnumerable<FreeChemical> Best(IEnumerable<FreeChemical> free, FreeUse use, int most) =>
        free.Where(one => one.Use == use).OrderBy(one => one.IsLast).Take(Math.Clamp(most, 1, AreaChemicals.MostNamed));

    /// <summary>What is weak here is named where there is room, and where nothing better may go on.</summary>
    public static bool HasRoom(PageStyle style, int most) => most >= EnoughRoom || !style.Chemicals.IsAnyGood;

    /// <summary>
    /// How many groups of what waits have a line: the likely choice always, unless one as good may go on already.
    /// </summary>
    public static int ToldOf(PageStyle style, int most) =>
        Math.Min(style.Chemicals.Waiting.Length, Math.Max(style.Chemicals.IsAnyGood ? 0 : 1, most));
}

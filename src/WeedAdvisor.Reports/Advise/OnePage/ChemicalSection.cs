using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>
/// How it stands with chemicals in an area, in one place: what let weeds through, what could go on and what for, what
/// waits, what becomes possible and when, and why the others may not be used. What is told among the work is not told
/// again.
/// </summary>
internal static class ChemicalSection
{
    private const string NoneNow = "No chemical may be used here now";
    private const int MostNames = 3;

    /// <summary>The section; nothing where no chemical is known.</summary>
    public static IEnumerable<Block> Of(PageStyle style, AreaAdvice area, PageDetail detail)
    {
        AreaChemicals chemicals = style.Chemicals;
        if (chemicals.Free.IsEmpty && chemicals.CountWaiting + chemicals.CountBarred == 0)
            yield break;
        HashSet<string> numbered =
        [
            .. WorkSection
                .Shown(style, detail)
                .SelectMany(line => line.Others.Prepend(line.Best))
                .Select(one => one.Action),
        ];
        bool isNone = chemicals.Free.IsEmpty && chemicals.CountWaiting == 0;
        Line[] lines =
        [
            .. detail.LetThrough ? LetThrough(style, area) : [],
            .. Possible([.. chemicals.Free.Where(one => !numbered.Contains(one.Action))], detail.Chemicals),
            .. Waiting(style, area, detail.Waiting),
            .. Later(style, detail.Later),
            .. Reasons(style, isNone, detail.Barred),
        ];
        if (lines.Length > 0)
        {
            yield return Heading.Section(isNone ? NoneNow : "Chemicals");
            yield return ItemList.Dashes(lines).At(2);
        }
        else if (isNone)
        {
            yield return new Paragraph(NoneNow + ".").At(2);
        }
    }

    // Whoever has the bag still in the shed is told first.
    private static IEnumerable<Line> LetThrough(PageStyle style, AreaAdvice area) =>
        (area.Area.Past ?? [])
            .Where(AreaChemicals.IsLetThrough)
            .OrderByDescending(past => past.Date)
            .Take(1)
            .Select(past =>
                Line.FromString(
                    $"{style.Names.Action(past.Treatment!)} let {WeedsOf(style, past)} through: not the same again,"
                        + " take another group next, and weed first."
                ) with
                {
                    Tone = Tone.Warning,
                }
            );

    private static string WeedsOf(PageStyle style, PastApplication past) =>
        past.Escaped.Count == 0 ? "weeds" : Listing.And([.. past.Escaped.Select(style.Names.Weed)]);

    private static IEnumerable<Line> Possible(FreeChemical[] free, int most)
    {
        foreach (
            (string what, FreeUse use) in ((string, FreeUse)[])
                [
                    ("After the weeding, against what comes", FreeUse.OnComing),
                    ("On what stands, instead of pulling it", FreeUse.OnStanding),
                ]
        )
        {
            string[] names = [.. free.Where(one => one.Use == use).OrderBy(one => one.IsLast).Select(one => one.Text)];
            if (names.Length > 0)
                yield return Line.FromString(
                    $"{what}{(names.Length > 1 ? ", one of" : "")}: {Listing.Some(names, most)}"
                );
        }

        string[] poor = [.. free.Where(one => one.Use == FreeUse.Poor).Select(one => one.Text)];
        if (poor.Length > 0)
            yield return Line.FromString($"Little speaks for, or much against: {Listing.Some(poor, most)}");
    }

    private static IEnumerable<Line> Waiting(PageStyle style, AreaAdvice area, int most)
    {
        ImmutableArray<WaitingGroup> groups = style.Chemicals.Waiting;
        int told = Math.Min(groups.Length, Math.Max(1, most));
        return groups
            .Take(told)
            .Select(
                (group, at) =>
                {
                    // The last line that is told counts what has none.
                    int more = at == told - 1 ? groups.Skip(told).Sum(other => other.Actions.Length) : 0;
                    return Line.FromString(Figures.Sentence(WaitingWords.InBrief(style.Names, area, group, more)));
                }
            );
    }

    private static IEnumerable<Line> Later(PageStyle style, int most) =>
        style
            .Chemicals.Later.Take(most)
            .Select(line =>
                Line.FromString(
                    $"{line.When}: {Listing.Some([.. line.Chemicals.Select(style.Names.Action)], MostNames)}"
                )
            );

    private static IEnumerable<Line> Reasons(PageStyle style, bool isAll, int most) =>
        style
            .Bars.Take(most)
            .Select(group =>
                Line.FromString(
                    $"{Share(group.Actions.Length, style.Chemicals.CountBarred, isAll)}{group.Text}{style.Keys(group.Sources)}"
                )
            );

    private static string Share(int some, int barred, bool isAll) =>
        some == barred
            ? isAll
                ? ""
                : "The others may not be used. "
            : string.Create(CultureInfo.InvariantCulture, $"Barred, {some} of {barred}: ");
}

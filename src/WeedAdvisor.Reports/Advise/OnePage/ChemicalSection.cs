using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
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
    private const double LeastCase = 0.3;

    /// <summary>The section; nothing where no chemical is known.</summary>
    public static IEnumerable<Block> Of(PageStyle style, AreaAdvice area, PageDetail detail)
    {
        HashSet<string> numbered =
        [
            .. WorkSection
                .Shown(style, area, detail)
                .SelectMany(line => line.Others.Prepend(line.Best))
                .Select(one => one.Action),
        ];
        ClearAction[] free = [.. area.Clear.Where(one => style.Names.IsTreatment(one.Action))];
        WaitingAction[] waiting = [.. area.Waiting.Where(one => style.Names.IsTreatment(one.Action))];
        BarredAction[] barred = [.. area.Barred.Where(one => style.Names.IsTreatment(one.Action))];
        if (free.Length + waiting.Length + barred.Length == 0)
            yield break;
        Line[] lines =
        [
            .. LetThrough(style, area),
            .. Possible(style, [.. free.Where(one => !numbered.Contains(one.Action))]),
            .. Waiting(style, area, waiting, detail.Waiting),
            .. Later(style, area, detail.Later),
            .. Reasons(style, barred, free.Length + waiting.Length == 0, detail.Barred),
        ];
        bool isNone = free.Length + waiting.Length == 0;
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
            .Where(IsLetThrough)
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

    private static bool IsLetThrough(PastApplication past) => past is { Treatment: not null, Result: "escapes" };

    private static string WeedsOf(PageStyle style, PastApplication past) =>
        past.Escaped.Count == 0 ? "weeds" : Listing.And([.. past.Escaped.Select(style.Names.Weed)]);

    private static IEnumerable<Line> Possible(PageStyle style, ClearAction[] free)
    {
        ClearAction[] good = [.. free.Where(one => one.Certainty >= LeastCase && !HasMuchAgainst(style, one))];
        foreach (
            (bool isComing, string what) in ((bool, string)[])
                [
                    (true, "After the weeding, against what comes, one of"),
                    (false, "On what stands, instead of pulling it, one of"),
                ]
        )
        {
            string[] names =
            [
                .. good.Where(one => one.WorksOn == WorksOn.Coming == isComing)
                    .Select(one => style.Names.Action(one.Action)),
            ];
            if (names.Length > 0)
                yield return Line.FromString(
                    (names.Length == 1 ? what[..^", one of".Length] : what) + ": " + Listing.Some(names, MostNames)
                );
        }

        string[] poor = [.. free.Except(good).Select(one => style.Names.Action(one.Action))];
        if (poor.Length > 0)
            yield return Line.FromString($"Little speaks for, or much against: {Listing.Some(poor, MostNames)}");
    }

    // What it misses counts where somebody told of that weed.
    private static bool HasMuchAgainst(PageStyle style, ClearAction action) =>
        action.Because.Any(reason =>
            reason
                is {
                    IsCertain: true,
                    Then: Consequence.Argument { IsDoubt: true, AfterCleaning: false },
                    Certainty: >= LeastCase,
                }
            && ReasonsInOrder.IsOfWeedsToldOf(reason, ReasonsInOrder.WeedsOf(style.Names, style.Area))
        );

    private static IEnumerable<Line> Waiting(PageStyle style, AreaAdvice area, WaitingAction[] waiting, int most)
    {
        HashSet<string?> failed = [.. (area.Area.Past ?? []).Where(IsLetThrough).Select(past => past.Treatment)];
        WaitingGroup[] groups =
        [
            .. WaitingGroup.InOrderOfWork(style.Names, [.. waiting.Where(one => !failed.Contains(one.Action))]),
        ];
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

    private static IEnumerable<Line> Later(PageStyle style, AreaAdvice area, int most) =>
        BecomingPossible
            .Lines(area, style.Day)
            .Select(line => (line.When, Chemicals: line.Actions.Where(style.Names.IsTreatment).ToArray()))
            .Where(line => line.Chemicals.Length > 0)
            .Take(most)
            .Select(line =>
                Line.FromString(
                    $"{line.When}: {Listing.Some([.. line.Chemicals.Select(style.Names.Action)], MostNames)}"
                )
            );

    private static IEnumerable<Line> Reasons(PageStyle style, BarredAction[] barred, bool isAll, int most) =>
        BarGroups
            .Of(style.Names, [.. barred], style.Day)
            .OrderByDescending(group => group.Actions.Length)
            .Take(most)
            .Select(group =>
                Line.FromString(
                    $"{Share(group.Actions.Length, barred.Length, isAll)}{group.Text}{style.Keys(group.Sources)}"
                )
            );

    private static string Share(int some, int barred, bool isAll) =>
        some == barred
            ? isAll
                ? ""
                : "The others may not be used. "
            : string.Create(System.Globalization.CultureInfo.InvariantCulture, $"Barred, {some} of {barred}: ");
}

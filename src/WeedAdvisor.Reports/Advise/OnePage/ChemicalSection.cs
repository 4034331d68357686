using System.Globalization;
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
    private const int MostMind = 2;
    private const double MostOfAll = 0.7;
    private const double EnoughOfAll = 0.6;
    private const string NoWeed = "no weed";

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
            .. detail.LetThrough ? LetThrough(style, area) : [],
            .. Possible(style, [.. free.Where(one => !numbered.Contains(one.Action))], detail.Chemicals),
            .. Waiting(style, area, waiting, detail.Waiting),
            .. Later(style, area, detail.Later),
            .. Reasons(style, area, barred, free.Length + waiting.Length == 0, detail.Barred),
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

    private static IEnumerable<Line> Possible(PageStyle style, ClearAction[] free, int most)
    {
        ClearAction[] good =
        [
            .. free.Where(one => SupportsOf(one) >= Strengths.Weak && !HasMuchAgainst(one))
                .Where(one => one.WorksOn == WorksOn.Coming || !MissesTheMain(style, one)),
        ];
        ClearAction[] coming =
        [
            .. good.Where(one => one.WorksOn == WorksOn.Coming).OrderBy(one => MissesTheMain(style, one)),
        ];
        ClearAction[] standing = [.. good.Where(one => one.WorksOn != WorksOn.Coming)];
        foreach (
            (string what, ClearAction[] actions) in ((string, ClearAction[])[])
                [("After the weeding, against what comes", coming), ("On what stands, instead of pulling it", standing)]
        )
        {
            string[] names = [.. actions.Select(one => style.Names.Action(one.Action) + WeakOn(style, one))];
            if (names.Length > 0)
                yield return Line.FromString(
                    $"{what}{(names.Length > 1 ? ", one of" : "")}: {Listing.Some(names, most)}{Mind(actions[0])}"
                );
        }

        foreach (Line line in RatherNot(style, [.. free.Except(good)], most))
            yield return line;
    }

    // Whoever reads no more than its name must know what it does to this crop, and to the water near by.
    private static string Mind(ClearAction action) =>
        string.Concat(
            action
                .Cautions.Where(caution => caution is { IsCertain: true, GoesWithItsName: true })
                .Select(caution => Names.UnderItsName(caution.Said))
                .Distinct(StringComparer.Ordinal)
                .Take(MostMind)
                .Select((text, at) => (at == 0 ? ". Mind: " : " ") + text)
        );

    // Why not now, once for all that it speaks against; what little speaks for is only named.
    private static IEnumerable<Line> RatherNot(PageStyle style, ClearAction[] poor, int most)
    {
        var groups = poor.GroupBy(action => AgainstIt(style, action), StringComparer.Ordinal)
            .OrderBy(group => group.Key.Length == 0)
            .ThenByDescending(group => group.Count());
        foreach (var group in groups.Take(most))
        {
            string names = Listing.Some([.. group.Select(one => style.Names.Action(one.Action))], most);
            yield return Line.FromString(
                group.Key.Length == 0 ? $"Little call for: {names}" : $"Rather not now: {names}. {group.Key}"
            );
        }
    }

    private static string AgainstIt(PageStyle style, ClearAction action) =>
        DoubtsOf(action)
            .OrderByDescending(reason => reason.Certainty)
            .ThenBy(reason => reason.Judgement, StringComparer.Ordinal)
            .Select(reason => style.Names.OfAny(action.Action, reason.Said))
            .FirstOrDefault("");

    // What it misses is told with its name, where somebody told of that weed.
    private static string WeakOn(PageStyle style, ClearAction action)
    {
        string[] missed = [.. MissedBy(style, action)];
        return missed.Length == 0 ? "" : $" (weak on {Listing.And(missed)})";
    }

    private static IEnumerable<string> MissedBy(PageStyle style, ClearAction action) =>
        DoubtsOf(action)
            .SelectMany(ReasonsInOrder.WeedsIn)
            .Distinct(StringComparer.Ordinal)
            .Where(ReasonsInOrder.WeedsOf(style.Names, style.Area).Contains);

    // What stops seed and misses the widest weed, or one that the grower himself expects, comes after the others; what
    // is for weeds that stand and misses the widest is not worth its name.
    private static bool MissesTheMain(PageStyle style, ClearAction action)
    {
        HashSet<string> main =
        [
            .. ReasonsInOrder.WeedsOf(style.Names, style.Area).Take(1),
            .. (style.Area.Weeds ?? []).Where(seen => seen.IsUp == false).Select(seen => style.Names.Weed(seen.Weed)),
        ];
        return MissedBy(style, action).Any(main.Contains);
    }

    private static bool HasMuchAgainst(ClearAction action) =>
        DoubtsOf(action).Any(reason => !ReasonsInOrder.WeedsIn(reason).Any());

    // What is for one of the weeds only is told with those that it leaves.
    private static double SupportsOf(ClearAction action) =>
        action
            .Because.Where(reason => reason is { IsCertain: true, Then: Consequence.Argument { IsDoubt: false } })
            .Select(reason => reason.Certainty)
            .DefaultIfEmpty(0)
            .Max();

    private static IEnumerable<Reason> DoubtsOf(ClearAction action) =>
        action.Because.Where(reason =>
            reason.IsCertain
            && reason.Then is Consequence.Argument { IsDoubt: true, AfterCleaning: false }
            && reason.Certainty >= Strengths.Weak
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
                    return Line.FromString(
                        Figures.Sentence(WaitingWords.InBrief(style.Names, area, group, more, most > 0))
                    );
                }
            );
    }

    // What is barred only because no weed of its kind is up is for weeds that are not here.
    private static IEnumerable<Line> Later(PageStyle style, AreaAdvice area, int most)
    {
        HashSet<string> forNoWeed =
        [
            .. area
                .Barred.Where(one =>
                    one.Deciding.Any(reason => reason.Matched.Any(matched => matched.Pattern == NoWeed))
                )
                .Select(one => one.Action),
        ];
        return BecomingPossible
            .Lines(area, style.Day)
            .Select(line =>
                (
                    line.When,
                    Chemicals: line.Actions.Where(action =>
                            style.Names.IsTreatment(action) && !forNoWeed.Contains(action)
                        )
                        .ToArray()
                )
            )
            .Where(line => line.Chemicals.Length > 0)
            .Take(most)
            .Select(line =>
                Line.FromString(
                    $"{line.When}: {Listing.Some([.. line.Chemicals.Select(style.Names.Action)], MostNames)}"
                )
            );
    }

    private static IEnumerable<Line> Reasons(
        PageStyle style,
        AreaAdvice area,
        BarredAction[] barred,
        bool isAll,
        int most
    )
    {
        if (most == 0)
            return [];
        BarGroup[] groups = [.. BarGroups.Of(style.Names, [.. barred], style.Day).OrderByDescending(SizeOf)];
        (string Text, int Count)? widest = Widest(style, area, barred, groups);
        return groups
            .Select(group => ($"{group.Text}{style.Keys(group.Sources)}", SizeOf(group)))
            .Prepend(widest ?? ("", 0))
            .Where(line => line.Item2 > 0)
            .Take(most)
            .Select(line => Line.FromString($"{Share(line.Item2, barred.Length, isAll)}{line.Item1}"));
    }

    private static int SizeOf(BarGroup group) => group.Actions.Length;

    // A reason that holds for nearly all of them says more than the first that ends some of them for good: which
    // country it is before which crop. Who must keep out is told above.
    private static (string Text, int Count)? Widest(
        PageStyle style,
        AreaAdvice area,
        BarredAction[] barred,
        BarGroup[] groups
    )
    {
        HashSet<string> told = [.. groups.Take(1).Select(group => group.Judgement), .. area.KeepOut?.Because ?? []];
        var widest = barred
            .SelectMany(action =>
                action
                    .Because.Where(reason => reason.IsCertain && !told.Contains(reason.Judgement))
                    .Select(reason => (reason.Judgement, Text: style.Names.OfAny(action.Action, reason.Said)))
                    .Where(reason => !told.Contains(reason.Text))
                    .DistinctBy(reason => reason.Judgement)
            )
            .GroupBy(reason => reason)
            .OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key.Judgement, StringComparer.Ordinal)
            .FirstOrDefault();
        return
            widest is null
            || widest.Count() < MostOfAll * barred.Length
            || groups is [var largest, ..] && SizeOf(largest) >= EnoughOfAll * barred.Length
            ? null
            : (widest.Key.Text, widest.Count());
    }

    private static string Share(int some, int barred, bool isAll) =>
        some == barred
            ? isAll
                ? ""
                : "The others may not be used. "
            : string.Create(CultureInfo.InvariantCulture, $"Barred, {some} of {barred}: ");
}

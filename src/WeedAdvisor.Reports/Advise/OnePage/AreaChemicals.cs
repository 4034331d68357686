using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>How it stands with the chemicals of an area: worked out once, however often its page is tried.</summary>
/// <param name="Free">Those that may go on, in the order of the advice.</param>
/// <param name="Waiting">
/// Those that wait, by the answers they wait for, without those that let weeds through last time and their like.
/// </param>
/// <param name="CountWaiting">How many wait, those that let weeds through among them.</param>
/// <param name="CountBarred">How many are barred.</param>
/// <param name="Later">What becomes possible, and when.</param>
/// <param name="Pair">What completes the first preventive for the weeds that it leaves; null for nothing.</param>
internal sealed record AreaChemicals(
    ImmutableArray<FreeChemical> Free,
    ImmutableArray<WaitingGroup> Waiting,
    int CountWaiting,
    int CountBarred,
    ImmutableArray<(string When, ImmutableArray<string> Chemicals)> Later,
    Pair? Pair
)
{
    /// <summary>The most chemicals that are named for one purpose.</summary>
    public const int MostNamed = 3;

    /// <summary>Whether one that does more than a little may go on against what stands or comes.</summary>
    public bool IsAnyGood => Free.Any(one => one.Use is FreeUse.OnComing or FreeUse.OnStanding);

    private const string NoWeed = "no weed";

    // What works at no known site is no repeat of anything.
    private const string NoGroup = "0";

    /// <summary>The chemicals of an area.</summary>
    /// <param name="names">Where names come from.</param>
    /// <param name="day">The day of the visit.</param>
    /// <param name="area">The advice on the area.</param>
    public static AreaChemicals Of(Names names, DateOnly day, AreaAdvice area)
    {
        ImmutableArray<string> weeds = ReasonsInOrder.WeedsOf(names, area.Area);
        WaitingAction[] waiting = [.. area.Waiting.Where(one => names.IsTreatment(one.Action))];
        PastApplication[] failed = [.. (area.Area.Past ?? []).Where(IsLetThrough)];
        ImmutableArray<FreeChemical> free =
        [
            .. area
                .Clear.Where(one => names.IsTreatment(one.Action))
                .Select(one => FreeChemical.Of(names, area, weeds, one)),
        ];
        ImmutableArray<WaitingAction> likely =
        [
            .. waiting
                .Where(one => !failed.Any(past => IsTheSameAgain(names, past, one.Action)))
                .OrderBy(one => one.IfClear?.LacksTool == true),
        ];
        return new AreaChemicals(
            free,
            [.. WaitingGroup.InOrderOfWork(names, likely)],
            waiting.Length,
            area.Barred.Count(one => names.IsTreatment(one.Action)),
            [.. LaterIn(names, day, area)],
            Pair.Of(names, area, free, likely)
        );
    }

    /// <summary>Whether a use let weeds through.</summary>
    public static bool IsLetThrough(PastApplication past) => past is { Treatment: not null, Result: "escapes" };

    // Of another name but of the groups that let weeds through it is the same again.
    private static bool IsTheSameAgain(Names names, PastApplication past, string action) =>
        past.Treatment == action
        || names.Treatment(past.Treatment!) is { } failed
            && names.Treatment(action) is { } other
            && other.Actives.All(active =>
                active.Group is not (null or NoGroup) && failed.Actives.Any(one => one.Group == active.Group)
            );

    private static IEnumerable<(string When, ImmutableArray<string> Chemicals)> LaterIn(
        Names names,
        DateOnly day,
        AreaAdvice area
    )
    {
        HashSet<string> forNoWeed = [.. area.Barred.Where(IsForNoWeed).Select(one => one.Action)];
        return BecomingPossible
            .Lines(area, day)
            .Select(line =>
                (
                    line.When,
                    Chemicals: line.Actions.Where(action => names.IsTreatment(action) && !forNoWeed.Contains(action))
                        .ToImmutableArray()
                )
            )
            .Where(line => line.Chemicals.Length > 0);
    }

    // What is barred only because no weed of its kind is up is for weeds that are not here.
    private static bool IsForNoWeed(BarredAction barred) =>
        barred.Deciding.Any(reason => reason.Subjects.Any(subject => subject.Pattern == NoWeed));
}

/// <summary>What a chemical that may go on is good for.</summary>
internal enum FreeUse
{
    /// <summary>Little speaks for it, or much against.</summary>
    Poor,

    /// <summary>By its ratings it does little to the weeds here.</summary>
    Little,

    /// <summary>It stops what comes.</summary>
    OnComing,

    /// <summary>It is for what stands.</summary>
    OnStanding,
}

/// <summary>A chemical that may go on.</summary>
/// <param name="Action">Its id.</param>
/// <param name="Use">What it is good for.</param>
/// <param name="IsLast">Whether it comes behind the others of its use.</param>
/// <param name="Text">
/// Its name; where it is good for anything, with the weeds on which it is weak or has no figure, and what the day must
/// be like.
/// </param>
/// <param name="Against">What speaks most against it; empty where nothing does.</param>
/// <param name="AgainstBy">The rule that says so; null where nothing does.</param>
/// <param name="Cleared">What is clear.</param>
internal sealed record FreeChemical(
    string Action,
    FreeUse Use,
    bool IsLast,
    string Text,
    string Against,
    string? AgainstBy,
    ClearAction Cleared
)
{
    /// <summary>How it stands with a chemical.</summary>
    /// <param name="names">Where names come from.</param>
    /// <param name="advice">The advice on the area.</param>
    /// <param name="weeds">Names of its weeds, the most important first.</param>
    /// <param name="one">The chemical.</param>
    public static FreeChemical Of(Names names, AreaAdvice advice, ImmutableArray<string> weeds, ClearAction one)
    {
        VisitArea area = advice.Area;
        Reason[] doubts = [.. one.Because.Where(IsDoubt)];
        // What it misses is told with its name, where somebody told of that weed.
        string[] missed =
        [
            .. doubts.SelectMany(ReasonsInOrder.WeedsIn).Distinct(StringComparer.Ordinal).Where(weeds.Contains),
        ];
        bool missesTheMain = missed.Any(Main(names, area, weeds).Contains);
        bool isComing = one.WorksOn == WorksOn.Coming;
        // What stops seed and misses the main weed comes after the others; what is for weeds that stand and misses it
        // is not worth its name. What is for one of the weeds only is told with those that it leaves.
        bool isGood =
            SupportsOf(one) >= Strengths.Weak
            && doubts.All(reason => ReasonsInOrder.WeedsIn(reason).Any())
            && (isComing || !missesTheMain);
        string name = names.Action(one.Action);
        Reason? against = doubts
            .OrderByDescending(reason => reason.Certainty)
            .ThenBy(reason => reason.Judgement, StringComparer.Ordinal)
            .FirstOrDefault();
        bool isLittle = isGood && one.Effect.Parts.Length > 0 && (one.Effect.Reduction ?? 0) < names.LeastGain;
        return new FreeChemical(
            one.Action,
            !isGood ? FreeUse.Poor
                : isLittle ? FreeUse.Little
                : isComing ? FreeUse.OnComing
                : FreeUse.OnStanding,
            isGood && missesTheMain,
            isGood ? name + Limits(names, one, missed) : name,
            against is null ? "" : names.OfAny(one.Action, against.Said),
            against?.Judgement,
            one
        );
    }

    // What its name does not say: what it leaves, and on which day alone it goes on.
    private static string Limits(Names names, ClearAction one, string[] missed)
    {
        string[] silent =
        [
            .. one
                .Effect.Parts.Where(part => part.LowPercent is null)
                .Select(part => names.Weed(part.Weed))
                .Except(missed, StringComparer.Ordinal),
        ];
        string[] limits =
        [
            .. missed.Length > 0 ? [$"weak on {Listing.And(missed)}"] : (string[])[],
            .. silent.Length > 0 ? [$"no figure for {Listing.And(silent)}"] : (string[])[],
            .. DayLine.InWords(one),
        ];
        return limits.Length == 0 ? "" : $" ({string.Join("; ", limits)})";
    }

    // The widest weed, and those that the grower himself expects.
    private static HashSet<string> Main(Names names, VisitArea area, ImmutableArray<string> weeds) =>
        [
            .. weeds.Take(1),
            .. (area.Weeds ?? []).Where(seen => seen.IsUp == false).Select(seen => names.Weed(seen.Weed)),
        ];

    private static double SupportsOf(ClearAction action) =>
        action
            .Because.Where(reason => reason is { IsCertain: true, Then: Consequence.Argument { IsDoubt: false } })
            .Select(reason => reason.Certainty)
            .DefaultIfEmpty(0)
            .Max();

    private static bool IsDoubt(Reason reason) =>
        reason.IsCertain
        && reason.Then is Consequence.Argument { IsDoubt: true, AfterCleaning: false }
        && reason.Certainty >= Strengths.Weak;
}

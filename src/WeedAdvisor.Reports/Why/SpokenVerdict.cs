using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Advise.InHand;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>
/// The verdict on an action as an adviser says it aloud: may he or should he, the one reason, what it does and costs,
/// and what to do instead.
/// </summary>
/// <param name="Text">What is said.</param>
/// <param name="Instead">The action that is named in its place; null for none.</param>
internal sealed record SpokenVerdict(Line Text, ClearAction? Instead)
{
    /// <summary>The verdict.</summary>
    /// <param name="names">What things are called.</param>
    /// <param name="area">The advice for the area.</param>
    /// <param name="action">The action.</param>
    /// <param name="reasons">Everything that was concluded of the action.</param>
    /// <param name="wanted">What would speak for it and is not so here, as a sentence; null for none.</param>
    /// <param name="day">The day of the visit.</param>
    public static SpokenVerdict Of(
        Names names,
        AreaAdvice area,
        CatalogueAction action,
        ImmutableArray<Reason> reasons,
        string? wanted,
        DateOnly day
    )
    {
        // Where nothing calls for it nothing has to stand in for it.
        ClearAction? instead = IsCalledFor(area, action, reasons) ? SameJob.Instead(area, action) : null;
        Line?[] sentences = area.Clear.FirstOrDefault(one => one.Action == action.Id) is { } clear
            ? OfClear(names, area, action, clear, reasons, instead)
            :
            [
                Verdict(names, area, action, reasons, day),
                Said(Why(names, area, action, reasons) ?? wanted),
                instead is null ? null : InItsPlace(names, area, action, instead),
            ];
        return new SpokenVerdict(
            sentences
                .OfType<Line>()
                .Aggregate(Line.FromString($"{action.Name}?"), (said, next) => Line.Of($"{said} {next}")),
            instead
        );
    }

    private static bool IsCalledFor(AreaAdvice area, CatalogueAction action, ImmutableArray<Reason> reasons) =>
        area.StatusOf(action.Id) != ActionStatus.NotAdvised
        || reasons.Any(reason => reason is { IsCertain: true, Then: Consequence.Argument });

    private static Line?[] OfClear(
        Names names,
        AreaAdvice area,
        CatalogueAction action,
        ClearAction clear,
        ImmutableArray<Reason> reasons,
        ClearAction? instead
    )
    {
        string may = action is Treatment ? "Yes, you may" : "Yes";
        string hedge =
            clear.Status == ActionStatus.ClearUnless ? ", as far as is known"
            : clear.Certainty < Strengths.Weak ? ", but little speaks for it"
            : "";
        string hold =
            !clear.NotToday.IsEmpty ? $", but not today ({string.Join(", ", clear.NotToday)})"
            : clear.LacksTool ? ", but none of the tools it needs is here"
            : clear.WaitsForCleaning ? ", once the weeds are off"
            : clear.ComesAfterCleaning ? ", after the weeding"
            : "";
        Line?[] figures =
        [
            clear.Effect.Reduction is null ? null : Line.FromString(EffectWords.Effect(clear)),
            names.Cost(action.Id, area.Reading) is { } cost ? Line.Of($"costs {Costs.Spoken(cost)}") : null,
        ];
        return
        [
            Line.FromString($"{may}, {When(clear)}{hold}{hedge}."),
            Said(Because(names, area, reasons.Where(IsCertainSupport))),
            .. clear.Status == ActionStatus.ClearUnless
                ? AskFirst(names, area, clear)
                :
                [
                    It([.. figures.OfType<Line>()]),
                    instead is null ? Better(names, area, clear) : InItsPlace(names, area, action, instead),
                ],
        ];
    }

    private static Line?[] AskFirst(Names names, AreaAdvice area, ClearAction clear) =>
        [
            Line.FromString($"Ask first: {Asked(names, area, clear.Unless)}"),
            StatusWords.DoubtOf(clear) is { } doubt
                ? Line.FromString($"This may stand against it: {names.Spoken(clear.Action, doubt)}")
                : null,
        ];

    private static Line? It(Line[] does) => does.Length == 0 ? null : Line.Of($"It {Line.Join(", and ", does)}.");

    // One of a kind is enough: where another does the job better, it is named.
    private static Line? Better(Names names, AreaAdvice area, ClearAction clear) =>
        area.Clear.First(one => one.Rank == clear.Rank && one.Horizon == clear.Horizon)
            is { LacksTool: false, NotToday.IsEmpty: true } best
        && best.Action != clear.Action
            ? Line.FromString(
                $"For the same job this comes first, and one is enough: {Lower(names.Action(best.Action))}."
            )
            : null;

    private static Line Verdict(
        Names names,
        AreaAdvice area,
        CatalogueAction action,
        ImmutableArray<Reason> reasons,
        DateOnly day
    )
    {
        if (area.Barred.FirstOrDefault(one => one.Action == action.Id) is { } barred)
        {
            string end = StatusWords.EndOf(barred, day);
            return barred.Status switch
            {
                ActionStatus.NotYet => Line.FromString($"Not yet, only {end}."),
                ActionStatus.NotThisWay => Line.FromString($"Not this way. There is another: {end}."),
                _ when barred.Severity == Severity.Unsuitable => "No, it does not suit this place.",
                _ when action is Treatment => "No, it may not be used here.",
                _ => "No, not here.",
            };
        }

        return area.Waiting.FirstOrDefault(one => one.Action == action.Id) is { } waiting
                ? Line.FromString(
                    waiting.Needs.Length > 1
                        ? $"Not before more is known, first of all: {Asked(names, area, waiting.Needs)}"
                        : $"Not before it is known: {Asked(names, area, waiting.Needs)}"
                )
            : area.NotAdvised.Any(one => one.Action == action.Id && !one.For.IsEmpty)
                ? "No, more speaks against it than for it."
            : reasons.Any(reason => reason.IsCertain && IsDoubt(reason))
                ? "No, nothing here calls for it, and this speaks against it."
            : "No, nothing here calls for it.";
    }

    private static string? Why(Names names, AreaAdvice area, CatalogueAction action, ImmutableArray<Reason> reasons) =>
        area.Barred.FirstOrDefault(one => one.Action == action.Id) is { } barred
            ? names.Spoken(action.Id, BarTiers.First(barred).Said)
        : area.Waiting.FirstOrDefault(one => one.Action == action.Id) is { } waiting
            ? MayBar(area, waiting) is { } bar ? $"This may bar it: {names.Spoken(action.Id, bar.Said)}"
                : Because(names, area, reasons.Where(reason => !reason.IsCertain && IsSupport(reason))) is { } support
                    ? $"This may speak for it: {support}"
                : null
        : Because(names, area, reasons.Where(reason => reason.IsCertain && IsDoubt(reason)));

    // The bar that hangs on what is asked first.
    private static Reason? MayBar(AreaAdvice area, WaitingAction waiting) =>
        waiting
            .Because.Where(one => one.Then is Consequence.Bar)
            .OrderByDescending(one => one.Needs.Contains(First(area, waiting.Needs)))
            .ThenBy(one => one.Needs.Length)
            .FirstOrDefault();

    private static string? Because(Names names, AreaAdvice area, IEnumerable<Reason> reasons) =>
        ReasonsInOrder.Of(reasons, ReasonsInOrder.WeedsOf(names, area.Area)).FirstOrDefault() is { } best
            ? names.Spoken(best.Action!, best.Said)
            : null;

    private static Line InItsPlace(Names names, AreaAdvice area, CatalogueAction action, ClearAction instead)
    {
        string mean = area.StatusOf(action.Id) switch
        {
            ActionStatus.NotYet => "Until then",
            ActionStatus.Waits or ActionStatus.Clear => "Meanwhile",
            _ => "Instead",
        };
        string read = names.IsTreatment(instead.Action) ? "; hear first what to mind with it" : "";
        return $"{mean}, {When(instead)}: {Lower(names.Action(instead.Action))}{read}.";
    }

    private static Line? Said(string? text) => text is null ? null : Line.FromString(text);

    private static string When(ClearAction clear) =>
        clear.Horizon switch
        {
            _ when clear.IsAtOnce => "at once",
            Horizon.Today => "today",
            Horizon.ThisWeek => "this week",
            Horizon.ThisSeason => "this season",
            Horizon.AtPotting => "at the next potting",
            Horizon.NextBatch => "before the next batch",
            Horizon.WhenEmpty => "when the place is next empty",
            _ => "as a habit",
        };

    private static string Asked(Names names, AreaAdvice area, ImmutableArray<Need> needs) =>
        EndsASentence(names.QuestionOf(First(area, needs)));

    // What is asked first of all here is asked first.
    private static Need First(AreaAdvice area, ImmutableArray<Need> needs) =>
        needs
            .Where(need => need.Kind == NeedKind.Question)
            .FirstOrDefault(need => need.Id == (area.NextOfArea ?? area.NextQuestion)?.Id, needs[0]);

    private static string EndsASentence(string text) =>
        text.Length > 0 && char.IsPunctuation(text[^1]) ? text : text + ".";

    // Within a sentence a name begins small, except where a sign or a letter of its own begins it.
    private static string Lower(string name) =>
        name.Length > 1 && char.IsLower(name[1]) ? char.ToLowerInvariant(name[0]) + name[1..] : name;

    private static bool IsSupport(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: false };

    private static bool IsCertainSupport(Reason reason) =>
        reason is { IsCertain: true, Then: Consequence.Argument { IsDoubt: false, AfterCleaning: false } };

    private static bool IsDoubt(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: true };
}

using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>
/// Why an action stands where it stands in one area: who has to keep out and the verdict as an adviser says it aloud,
/// then what to mind where it can be done, what bars it, the case for and against, what is not known and the figures;
/// every condition only where it is asked for.
/// </summary>
/// <param name="knowledge">The knowledge.</param>
/// <param name="more">What shows every condition, such as an option.</param>
public sealed class WhyArea(KnowledgeBase knowledge, string more = "'--full'")
{
    private const int MostCautions = 5;

    private readonly Names _names = new(knowledge);
    private readonly ConditionSentences _sentences = new(knowledge);

    /// <summary>The blocks.</summary>
    /// <param name="area">The advice for the area.</param>
    /// <param name="looked">The area as it was looked at.</param>
    /// <param name="action">The action.</param>
    /// <param name="full">Whether to show every condition with what it asked and what it found.</param>
    public IEnumerable<Block> Of(AreaAdvice area, AreaCase looked, CatalogueAction action, bool full)
    {
        ImmutableArray<string> weeds = ReasonsInOrder.WeedsOf(_names, area.Area);
        ImmutableArray<Reason> reasons =
        [
            .. area.AllConclusions()
                .Where(reason => reason.Action == action.Id)
                .OrderByDescending(reason => reason.Certainty)
                .ThenBy(reason => ReasonsInOrder.PlaceOf(reason, weeds))
                .ThenBy(reason => reason.Judgement, StringComparer.Ordinal),
        ];
        ClearAction? clear = area.Clear.FirstOrDefault(one => one.Action == action.Id);
        bool isOut = area.StatusOf(action.Id) is ActionStatus.Never or ActionStatus.NotYet or ActionStatus.NotAdvised;
        bool isNever = area.StatusOf(action.Id) == ActionStatus.Never;
        DateOnly day = looked.Date;
        var lines = new ReasonLines(_names, _sentences);
        NearSection? near = NearSection.In(knowledge, _sentences, looked, area, action.Id);
        var spoken = SpokenVerdict.Of(_names, area, action, reasons, near?.Spoken(action.Id), day);
        return
        [
            .. area.KeepOut is { } keepOut
                ?
                [
                    new Paragraph(
                        Line.FromString($"Keep out {UntilWords.KeepOut(keepOut, day)}.") with
                        {
                            Tone = Tone.Warning,
                        }
                    ),
                ]
                : (Block[])[],
            new Paragraph(spoken.Text with { Tone = Tone.Strong }),
            new Blank(),
            new Paragraph(Standing(area, action.Id, day)),
            // What is barred for good is not told how to be done.
            .. isNever && !full ? [] : (Block[])[new Blank(), new Paragraph(action.WhatOn(area.Reading.Ground))],
            .. clear is null ? [] : Dates(area, clear, day),
            .. full || !isOut ? Minding(action, clear, reasons, full) : [],
            .. Part(
                "What bars it",
                lines,
                reasons.Where(reason => reason is { IsCertain: true, Then: Consequence.Bar })
            ),
            .. Part("The case for it", lines, reasons.Where(reason => reason.IsCertain && IsSupport(reason))),
            .. Part("The case against it", lines, reasons.Where(reason => reason.IsCertain && IsDoubt(reason))),
            .. isNever
                ? []
                : OpenSection.Of(
                    _names,
                    [.. reasons.Where(reason => !reason.IsCertain && !IsCaution(reason))],
                    NeedsOf(area, action.Id)
                ),
            .. near?.Of(action.Id, full) ?? [],
            // How sure it would be is for what can be done.
            .. full || !isOut ? WorkingSection.Of(_names, reasons, clear) : [],
            .. clear is null ? [] : Cost(area, clear),
            .. full ? [.. EveryCondition(action, reasons), .. Sources(action, reasons)] : (Block[])[],
            .. action is Treatment treatment ? BeforeUse(_names, treatment, day, full)
            : spoken.Instead is { } instead && _names.IsTreatment(instead.Action) ? SafetyBlocks.Standing()
            : [],
            .. full ? [] : (Block[])[new Blank(), new Paragraph($"Every condition with what it found: {more}.")],
        ];
    }

    private IEnumerable<Block> Dates(AreaAdvice area, ClearAction clear, DateOnly day) =>
        DateLines
            .Of(_names.Dates(clear, area.Reading, day), day)
            .Select(line => new Paragraph(line))
            .Concat(DayLine.Of(clear));

    private IEnumerable<Block> Cost(AreaAdvice area, ClearAction clear) =>
        _names.Cost(clear.Action, area.Reading) is { } cost
            ? [new Keyed("Cost: ", Line.Of($"{Costs.Of(cost)}.")).At(2)]
            : [];

    private static ImmutableArray<Need> NeedsOf(AreaAdvice area, string action) =>
        area.Waiting.FirstOrDefault(one => one.Action == action)?.Needs
        ?? area.Clear.FirstOrDefault(one => one.Action == action)?.Unless
        ?? [];

    private Line Standing(AreaAdvice area, string action, DateOnly day)
    {
        string status = StatusWords.Of(area, action, _names.NeedInShort, day);
        if (area.Clear.FirstOrDefault(clear => clear.Action == action) is { } clear)
            return $"Here: {status}, number {clear.Rank} of {WorkOf(clear.Horizon)}.";
        return area.Barred.FirstOrDefault(barred => barred.Action == action) is { } barred
            ? barred.Status == ActionStatus.NotYet
                ? $"Here: {status}."
                : $"Here: {status}, {StatusWords.Of(barred.Severity)}."
            : $"Here: {status}.";
    }

    private static string WorkOf(Horizon horizon) =>
        horizon == Horizon.Habit
            ? "the habits of the nursery"
            : $"what is done {Horizons.InBrief(horizon).ToLowerInvariant()}";

    private static IEnumerable<Block> Part(string title, ReasonLines lines, IEnumerable<Reason> reasons) =>
        reasons.ToArray() is { Length: > 0 } all ? [Heading.Section(title), lines.Of(all).At(2)] : [];

    // The first five on the page, the nearest to this place first; all of them with their reasons on request.
    private IEnumerable<Block> Minding(
        CatalogueAction action,
        ClearAction? clear,
        ImmutableArray<Reason> reasons,
        bool full
    )
    {
        ImmutableArray<Reason> ofRules = [.. reasons.Where(IsCaution)];
        if (full)
            return EveryCaution(action, ofRules);
        ImmutableArray<ActionCaution> all = clear?.Cautions
            ??
            [
                .. action.Cautions.Select(text => new ActionCaution(text, null, true)),
                .. ofRules.Select(ActionCaution.Of).DistinctBy(caution => caution.Text),
            ];
        ImmutableArray<ActionCaution> told = CautionsInOrder.Of(all);
        int shown = CautionsInOrder.Shown(told, MostCautions);
        int left = all.Length - shown;
        return all.IsEmpty
            ? []
            :
            [
                Heading.Section("What to mind with it"),
                .. shown == 0
                    ? []
                    : (Block[])
                        [
                            ItemList
                                .Dashes(
                                    told.Take(shown)
                                        .Select(caution =>
                                            Line.FromString(_names.Spoken(action.Id, caution.Said)) with
                                            {
                                                Tone = Tone.Warning,
                                            }
                                        )
                                )
                                .At(2),
                        ],
                .. left == 0
                    ? []
                    : (Block[])
                        [new Paragraph($"{Figures.Count(left, "more thing", "more things")} to mind: {more}.").At(2)],
            ];
    }

    private IEnumerable<Block> EveryCaution(CatalogueAction action, ImmutableArray<Reason> cautions)
    {
        Item[] told =
        [
            .. cautions
                .DistinctBy(reason => Names.UnderItsName(reason.Caution!))
                .Select(reason => new Item(
                    Item.Dash,
                    (reason.IsCertain ? "" : "Possibly: ") + Names.UnderItsName(reason.Caution!)
                )
                {
                    Below = [new Keyed("because: ", ReasonLines.TextOf(_names, reason)).At(2)],
                }),
        ];
        return
        [
            .. told.Length == 0
                ? []
                : (Block[])[Heading.Section("What to mind with it"), new ItemList([.. told]).At(2)],
            .. action.Cautions.IsEmpty
                ? []
                : (Block[])
                    [
                        Heading.Section("What its record says to mind, wherever it is done"),
                        ItemList
                            .Dashes(
                                action.Cautions.Select(caution =>
                                    Line.FromString(Names.UnderItsName(caution)) with
                                    {
                                        Tone = Tone.Warning,
                                    }
                                )
                            )
                            .At(2),
                    ],
        ];
    }

    private IEnumerable<Block> EveryCondition(CatalogueAction action, ImmutableArray<Reason> reasons)
    {
        var blocks = new ReasonBlocks(_names, _sentences);
        return
        [
            .. ReasonKind.All.SelectMany(kind =>
                reasons.Where(kind.Holds).ToImmutableArray() is { IsEmpty: false } some
                    ? [Heading.Section($"{kind.Title}: every condition"), blocks.Of(some).At(2)]
                    : (Block[])[]
            ),
            .. ValuesRead.Of(action, reasons) is { IsEmpty: false } values
                ?
                [
                    Heading.Section("Where the values come from that bar it or have to be minded"),
                    ItemList.Dashes(values.Select(Line.FromString)).At(2),
                ]
                : (Block[])[],
        ];
    }

    private IEnumerable<Block> Sources(CatalogueAction action, ImmutableArray<Reason> reasons) =>
        knowledge.Sources.IsEmpty
            ? []
            : SourceSection.Of(
                knowledge,
                [
                    .. reasons
                        .SelectMany(reason => reason.Sources)
                        .Concat(action.Sources)
                        .Distinct(StringComparer.Ordinal)
                        .Order(StringComparer.Ordinal),
                ]
            );

    private static IEnumerable<Block> BeforeUse(Names names, Treatment treatment, DateOnly day, bool full) =>
        SafetyBlocks.Standing([
            .. treatment.Label is { } label ? [label.Line(day)] : (string[])[],
            "Its record: "
                + string.Join(
                    "; ",
                    full ? Safety.LinesFor(names, treatment, day) : Safety.BriefLinesFor(names, treatment, day)
                )
                + ".",
        ]);

    private static bool IsSupport(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: false };

    private static bool IsDoubt(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: true };

    private static bool IsCaution(Reason reason) => reason.Then is Consequence.Caution;
}

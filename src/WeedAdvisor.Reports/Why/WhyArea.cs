using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Nearest;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>
/// Why an action stands where it stands in one area, as an adviser says it: who has to keep out, how it stands, what it
/// is, what bars it, the case for and against, what is not known, then the figures and what to mind where it can be
/// done; every condition only where it is asked for.
/// </summary>
/// <param name="knowledge">The knowledge.</param>
/// <param name="more">What shows every condition, such as an option.</param>
public sealed class WhyArea(KnowledgeBase knowledge, string more = "'--full'")
{
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
        DateOnly day = looked.Date;
        var lines = new ReasonLines(_names, _sentences);
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
            new Paragraph(Standing(area, action.Id, day) with { Tone = Tone.Strong }),
            new Blank(),
            new Paragraph(action.WhatOn(area.Reading.Ground)),
            .. clear is null ? [] : Clear(area, clear, day),
            .. Part(
                "What bars it",
                lines,
                reasons.Where(reason => reason is { IsCertain: true, Then: Consequence.Bar })
            ),
            .. Part("The case for it", lines, reasons.Where(reason => reason.IsCertain && IsSupport(reason))),
            .. Part("The case against it", lines, reasons.Where(reason => reason.IsCertain && IsDoubt(reason))),
            .. area.StatusOf(action.Id) == ActionStatus.Never
                ? []
                : OpenSection.Of(
                    _names,
                    [.. reasons.Where(reason => !reason.IsCertain && !IsCaution(reason))],
                    NeedsOf(area, action.Id)
                ),
            .. Near(area, looked, action, full),
            // How it is done, and how sure it would be, is for what can be done.
            .. full || !isOut ? WorkingSection.Of(_names, reasons, clear) : [],
            .. full || !isOut ? Minding(action, [.. reasons.Where(IsCaution)]) : [],
            .. full ? [.. EveryCondition(action, reasons), .. Sources(action, reasons)] : (Block[])[],
            .. action is Treatment treatment ? BeforeUse(_names, treatment, day) : [],
            .. full ? [] : (Block[])[new Blank(), new Paragraph($"Every condition with what it found: {more}.")],
        ];
    }

    private IEnumerable<Block> Clear(AreaAdvice area, ClearAction clear, DateOnly day)
    {
        Line figures = Figures.Sentence(EffectWords.Of(clear));
        yield return new Paragraph(
            _names.Cost(clear.Action, area.Reading) is { } cost
                ? Line.Of($"{figures}; {Costs.Of(cost)}.")
                : Line.Of($"{figures}.")
        );
        foreach (Line line in DateLines.Of(_names.Dates(clear.Action, area.Reading, day), day))
            yield return new Paragraph(line);
    }

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

    // Where nothing bars it and nothing speaks for it the question is what would.
    private IEnumerable<Block> Near(AreaAdvice area, AreaCase looked, CatalogueAction action, bool full) =>
        NearSection.IsAsked(area, action.Id)
            ? new NearSection(NearestRules.In(knowledge, looked), _sentences).Of(action.Id, full)
            : [];

    private static IEnumerable<Block> Minding(CatalogueAction action, ImmutableArray<Reason> cautions)
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
                    Below = [new Keyed("because: ", ReasonLines.TextOf(reason)).At(2)],
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

    private static IEnumerable<Block> BeforeUse(Names names, Treatment treatment, DateOnly day) =>
        SafetyBlocks.Standing([
            .. treatment.Label is { } label ? [label.Line(day)] : (string[])[],
            $"Its record: {string.Join("; ", Safety.LinesFor(names, treatment, day))}.",
        ]);

    private static bool IsSupport(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: false };

    private static bool IsDoubt(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: true };

    private static bool IsCaution(Reason reason) => reason.Then is Consequence.Caution;
}

using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;
using WeedAdvisor.Reports.Why;

namespace WeedAdvisor.Reports.WhatIf;

/// <summary>What would be otherwise in an area if some answers were other ones, side by side.</summary>
/// <param name="knowledge">The knowledge.</param>
public sealed class WhatIfArea(KnowledgeBase knowledge)
{
    private const int MostStatuses = 12,
        MostTurns = 6,
        MostNamed = 3;

    private readonly Names _names = new(knowledge);
    private readonly ConditionSentences _sentences = new(knowledge);

    /// <summary>The blocks.</summary>
    /// <param name="now">The advice as it stands.</param>
    /// <param name="then">The advice with the other answers.</param>
    /// <param name="answers">The other answers, by question.</param>
    /// <param name="full">Whether every action and rule that turns is told.</param>
    public IEnumerable<Block> Of(
        AreaAdvice now,
        AreaAdvice then,
        IReadOnlyCollection<(Question Question, Answer Answer)> answers,
        bool full
    )
    {
        var difference = AdviceDifference.Of(_names, now, then);
        ActionMove[] others = [.. difference.Moves.Where(move => !move.Appears && !move.Goes && !move.Moves)];
        return
        [
            Heading.Section("If it were so"),
            ItemList.Dashes(answers.Select(one => Line.FromString(Changed(now.Area, one.Question, one.Answer)))).At(2),
            .. difference.Moves.IsEmpty && difference.Turns.IsEmpty
                ? [new Blank(), new Paragraph("Nothing would be otherwise.")]
                : (Block[])
                    [
                        new Blank(),
                        new Paragraph(Spoken(difference) with { Tone = Tone.Strong }),
                        .. SideBySide(now, then),
                        .. Part("What appears", difference.Moves.Where(move => move.Appears), full),
                        .. Part("What goes", difference.Moves.Where(move => move.Goes), full),
                        .. Part("What moves", difference.Moves.Where(move => move.Moves), full),
                        .. Either(others, full),
                        .. Costs(difference, now),
                        .. Turns(difference, full),
                        .. then.Clear.Concat(now.Clear).Any(one => _names.IsTreatment(one.Action))
                            ? SafetyBlocks.Standing([])
                            : [],
                    ],
        ];
    }

    private string Changed(VisitArea area, Question question, Answer answer)
    {
        Answer? now = area.Told(question.Id);
        string told = now is null or Answer.NotKnown ? "not told" : _sentences.Told(question, now);
        return Figures.Sentence($"{_sentences.Answered(question, answer)} (now: {told}).");
    }

    // The order of the work now and then; a line of work by its best.
    private Block[] SideBySide(AreaAdvice now, AreaAdvice then)
    {
        const int lines = 8;
        string[] left = First(now),
            right = First(then);
        return
        [
            Heading.Section("What is done first"),
            new Table(
                [
                    new Column("now", 36)
                    {
                        Brief = ["now"],
                        Before = "now ",
                        IsText = true,
                    },
                    new Column("then", 36)
                    {
                        Brief = ["then"],
                        Before = "then ",
                        IsText = true,
                    },
                ],
                [
                    .. Enumerable
                        .Range(0, Math.Max(left.Length, right.Length))
                        .Select(i => new Row(
                            (i + 1).ToString(CultureInfo.InvariantCulture),
                            [left.ElementAtOrDefault(i) ?? "-", right.ElementAtOrDefault(i) ?? "-"]
                        )),
                ]
            )
            {
                HeadWidth = 3,
                Indent = 2,
            },
        ];

        string[] First(AreaAdvice area) =>
            [
                .. area
                    .Clear.GroupBy(one => (one.Horizon, one.Rank))
                    .Where(line => line.Key.Horizon != Horizon.Habit)
                    .Take(lines)
                    .Select(line => _names.Action(line.First().Action)),
            ];
    }

    private Block[] Part(string title, IEnumerable<ActionMove> moves, bool full)
    {
        ActionMove[] all = [.. moves];
        int most = full ? all.Length : MostStatuses;
        return all.Length == 0
            ? []
            :
            [
                Heading.Section(title),
                ItemList.Dashes(all.Take(most).Select(LineOf)).At(2),
                .. all.Length > most
                    ? [new Paragraph($"and {all.Length - most} more; '--full' tells them.").At(2)]
                    : (Block[])[],
            ];
    }

    // As it is said aloud: what comes in, what falls away, what it saves.
    private Line Spoken(AdviceDifference difference)
    {
        Line?[] said =
        [
            Named("this comes in: ", difference.Moves.Where(move => move.Appears)),
            Named("this falls away: ", difference.Moves.Where(move => move.Goes)),
            difference.Moves.Any(move => move.Moves) ? Line.FromString("the order is another") : null,
            Saving(difference),
        ];
        Line[] all = [.. said.OfType<Line>()];
        return all.Length == 0 ? "Then what is to be done stays as it is." : Line.Of($"Then {Line.Join("; ", all)}.");
    }

    private Line? Named(string what, IEnumerable<ActionMove> moves)
    {
        string[] names = [.. moves.Select(move => _names.Action(move.Action))];
        return names.Length == 0 ? null : Line.FromString(what + Listing.Some(names, MostNamed));
    }

    private static Line? Saving(AdviceDifference difference)
    {
        decimal more = difference.CostThen.Usd - difference.CostNow.Usd;
        string word = more > 0 ? "more" : "less";
        return more == 0
            ? null
            : Line.Of($"the work of today and this week costs {Amounts.Dollars(Math.Abs(more))} {word}");
    }

    // Nobody acts on what he does not do either way.
    private Block[] Either(ActionMove[] others, bool full) =>
        full ? Part("What stands otherwise, but is not to be done either way", others, full)
        : others.Length == 0 ? []
        :
        [
            new Blank(),
            new Paragraph(
                Figures.Count(others.Length, "action more stands", "actions more stand")
                    + " otherwise, but not to be done either way: '--full'."
            ).At(2),
        ];

    private Line LineOf(ActionMove move)
    {
        string now = Stands(move.Now, move.Place),
            then = Stands(move.Then, move.PlaceThen);
        return Line.Of($"{new Named(_names.Action(move.Action))}: now {now}; then {then}") with
        {
            Action = move.Action,
        };
    }

    private static string Stands(ActionStatus status, (Horizon Horizon, int Rank)? place) =>
        place is { } at
            ? $"{ActionStatuses.Text(status)} ({Horizons.InBrief(at.Horizon).ToLowerInvariant()}, number {at.Rank})"
            : ActionStatuses.Text(status);

    private static Block[] Costs(AdviceDifference difference, AreaAdvice now)
    {
        if (difference.CostNow == difference.CostThen)
            return [];
        string basis = now.Reading.IsForPots == false ? "for 100 m² of floor" : "for 1000 pots";
        (decimal usd, decimal hours) = difference.CostNow;
        (decimal usdThen, decimal hoursThen) = difference.CostThen;
        string word = usdThen < usd ? "saves" : "costs more, by";
        return
        [
            Heading.Section("What the work of today and this week costs"),
            new Paragraph(
                Line.Join(
                    ", ",
                    [
                        Line.Of($"Now about {Amounts.Dollars(usd)} and {Amounts.Hours(hours)}"),
                        Line.Of($"then about {Amounts.Dollars(usdThen)} and {Amounts.Hours(hoursThen)} {basis}"),
                        Line.Of($"which {word} {Amounts.Dollars(Math.Abs(usdThen - usd))}."),
                    ]
                )
            ).At(2),
        ];
    }

    // First what turns the work; of what bars an action that is not done either way it is enough that it is there.
    private static Block[] Turns(AdviceDifference difference, bool full)
    {
        HashSet<string> turned =
        [
            .. difference.Moves.Where(move => move.Appears || move.Goes || move.Moves).Select(move => move.Action),
        ];
        RuleTurn[] told =
        [
            .. difference
                .Turns.Where(turn => full || Says(turn, turned))
                .OrderByDescending(turn => turn.Reason.Action is { } action && turned.Contains(action))
                .Take(full ? int.MaxValue : MostTurns),
        ];
        int more = difference.Turns.Length - told.Length;
        return
        [
            .. told.Length == 0
                ? []
                : (Block[])
                    [
                        Heading.Section("What is so then, and what no longer"),
                        new ItemList([
                            .. told.Select(turn => new Item(
                                Item.Dash,
                                $"{Turned(turn)}: {Names.UnderItsName(turn.Reason.Said)}"
                            )
                            {
                                Below = full
                                    ? [new Keyed("rule: ", $"{turn.Reason.Judgement} ({Kind(turn.Reason)})").At(2)]
                                    : [],
                            }),
                        ]).At(2),
                    ],
            .. more > 0
                ?
                [
                    new Blank(),
                    new Paragraph($"{Figures.Count(more, "rule more turns", "rules more turn")}: '--full'.").At(2),
                ]
                : (Block[])[],
        ];
    }

    private static bool Says(RuleTurn turn, HashSet<string> turned) =>
        turn.Reason.Then is Consequence.MakesFinding || (turn.Reason.Action is { } action && turned.Contains(action));

    private static string Kind(Reason reason) =>
        reason.Then switch
        {
            Consequence.MakesFinding => "a finding",
            Consequence.Bar => "a bar",
            Consequence.Argument { IsDoubt: true } => "a doubt",
            Consequence.Argument => "a support",
            _ => "a caution",
        };

    private static string Turned(RuleTurn turn) =>
        (turn.Now, turn.Then) switch
        {
            (RuleStand.No, RuleStand.Yes) => "New",
            (RuleStand.No, _) => "New, but not sure yet",
            (RuleStand.Perhaps, RuleStand.Yes) => "Now sure",
            (RuleStand.Perhaps, _) => "Ruled out",
            (_, RuleStand.Perhaps) => "No longer sure",
            _ => "No longer",
        };
}

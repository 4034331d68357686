using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using static WeedAdvisor.World.SmallKnowledge;

namespace WeedAdvisor.World;

/// <summary>Random areas and random rules over the small knowledge base.</summary>
public static class RandomCases
{
    public static DateOnly Day { get; } = new(2026, 4, 14);

    private static readonly string[] s_weeds = ["moss", "spurge", "sedge"];
    private static readonly string[] s_findings = ["wet", "fed", "weedy", "open"];

    /// <summary>
    /// An area: every question may be unanswered, said not to be known, or answered; so may the lists.
    /// </summary>
    public static Gen<VisitArea> Area { get; } =
        Gen.Select(
            Answer("sky", "shade", "film"),
            Answer("cuttings", "liners", "none"),
            Answer("yes", "no"),
            Gen.OneOf(Among<Answer?>((Answer?)null), Words(Gen.Bool.Array[3], ["shrubs", "heathers", "ferns"])),
            Gen.OneOf(Among<Answer?>((Answer?)null), Gen.Int[0, 9].Select(Answer? (n) => new Answer.Number(n))),
            Gen.OneOf(Among((ImmutableArray<WeedSeen>?)null), Weeds()),
            Gen.OneOf(Among((ImmutableArray<PastApplication>?)null), Past()),
            (cover, stock, heated, crops, rate, weeds, past) =>
                new VisitArea(
                    "a",
                    "Area",
                    new (string Id, Answer? Answer)[]
                    {
                        ("cover", cover),
                        ("stock", stock),
                        ("heated", heated),
                        ("crops", crops),
                        ("rate", rate),
                    }
                        .Where(pair => pair.Answer is not null)
                        .ToImmutableSortedDictionary(pair => pair.Id, pair => pair.Answer!, StringComparer.Ordinal),
                    weeds,
                    past
                )
        );

    /// <summary>
    /// A dozen rules of every kind of pattern and consequence. A finding is built only on findings before it.
    /// </summary>
    public static Gen<ImmutableArray<Judgement>> Rules { get; } =
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 3], (kind, finding) => (kind, finding))
            .SelectMany(pick =>
                Gen.Select(
                    Patterns(pick.kind == 0 ? pick.finding : 4, pick.kind is 1 or 2 or 3),
                    Certainty,
                    (when, certainty) => (then: Then(pick.kind, pick.finding, certainty), when)
                )
            )
            .Array[4, 14]
            .Select(rules => rules.Select((rule, i) => Rule($"rule-{i:00}", rule.then, rule.when)).ToImmutableArray());

    private static Gen<double> Certainty => Gen.Int[1, 10].Select(tenths => tenths / 10.0);

    private static Consequence Then(int kind, int finding, double certainty) =>
        kind switch
        {
            0 => new Consequence.MakesFinding(s_findings[finding], certainty),
            1 => new Consequence.Argument(certainty, false),
            2 => new Consequence.Argument(certainty, true),
            3 => new Consequence.Bar(certainty < 0.5 ? Severity.Unsuitable : Severity.Prohibited),
            _ => new Consequence.Caution("mind {weed}"),
        };

    private static Gen<ImmutableArray<Pattern>> Patterns(int findingsBefore, bool action) =>
        Gen.Select(Plain(findingsBefore).Array[1, 3], ActionPattern, Join, Gen.Bool, (plain, target, join, joined) =>
            ImmutableArray.CreateRange<Pattern>([
                .. plain,
                .. action && joined ? join : [],
                .. action && !(joined && join[^1].IsOnAction()) ? [target] : Array.Empty<Pattern>(),
            ])
        );

    private static Gen<Pattern> Plain(int findingsBefore)
    {
        Gen<Pattern> fact = Gen.OneOf(
            OfFact(
                FactKind.Site,
                ("cover", ["sky", "shade", "film"]),
                ("stock", ["cuttings", "liners", "none"]),
                ("heated", ["yes", "no"]),
                ("enclosed", ["yes", "no"])
            ),
            OfFact(
                FactKind.Weed,
                ("id", s_weeds),
                ("kind", ["bryophyte", "broadleaf"]),
                ("up", ["true", "false"]),
                ("stage", ["seedling", "mature"])
            ),
            OfFact(FactKind.Crop, ("is-a", ["shrubs", "ferns"]), ("id", ["heathers"])),
            OfFact(FactKind.Past, ("groups", ["14", "3"]), ("latest", ["true"]), ("result", ["escapes"])),
            Gen.Select(Gen.Int[0, 9], Gen.Enum<Comparison>(), Pattern (limit, comparison) =>
                Fact(FactKind.Site, ("rate", new AttributeTest.Limit(comparison, limit)))
            ),
            Gen.Select(Gen.Int[0, 90], Gen.Enum<Comparison>(), Pattern (limit, comparison) =>
                Fact(FactKind.Weed, ("cover-percent", new AttributeTest.Limit(comparison, limit)))
            )
        );
        Gen<Pattern> finding =
            findingsBefore == 0
                ? fact
                : Gen.Int[0, findingsBefore - 1].Select(Pattern (i) => new Pattern.HasFinding(s_findings[i]));
        Gen<Pattern> inner = Gen.OneOf(fact, fact, finding);
        return Gen.OneOf(
            fact,
            fact,
            finding,
            inner.Select(Pattern (p) => new Pattern.None(p)),
            inner.Select(Pattern (p) => new Pattern.Any(p))
        );
    }

    // An action may also be joined with the case, or hold two of its own attributes against each other.
    private static Gen<Pattern> ActionPattern =>
        Gen.OneOf(
            OfFact(
                FactKind.Treatment,
                ("reaches-crop", ["true", "false"]),
                ("groups", ["14", "3"]),
                ("allowed-under", ["shade"])
            ),
            OfFact(FactKind.Practice, ("id", ["pull", "mulch"]), ("kind", ["weeding"])),
            OfFact(FactKind.Action, ("is", ["treatment", "practice"]), ("stock-stages", ["liners"]))
        );

    // Joins: a variable bound on one fact and tested on another, on a set, on a number, inside an absence, across
    // patterns.
    private static Gen<ImmutableArray<Pattern>> Join =>
        Gen.Bool.SelectMany(negated =>
            Gen.OneOf(
                Among<ImmutableArray<Pattern>>(
                    (ImmutableArray<Pattern>)
                        [
                            Fact(FactKind.Site, ("cover", new AttributeTest.Variable("v", true, false))),
                            new Pattern.None(
                                Fact(
                                    FactKind.Treatment,
                                    ("allowed-under", new AttributeTest.Variable("v", false, negated)),
                                    ("id", Is("grain"))
                                )
                            ),
                        ]
                ),
                Among<ImmutableArray<Pattern>>(
                    (ImmutableArray<Pattern>)
                        [
                            Fact(FactKind.Crop, ("is-a", new AttributeTest.Variable("v", true, false))),
                            Fact(FactKind.Crop, ("id", new AttributeTest.Variable("v", false, negated))),
                        ]
                ),
                Among<ImmutableArray<Pattern>>(
                    (ImmutableArray<Pattern>)
                        [
                            Fact(FactKind.Site, ("rate", new AttributeTest.Variable("v", true, false))),
                            new Pattern.Any(
                                Fact(
                                    FactKind.Weed,
                                    ("cover-percent", new AttributeTest.VariableLimit(Comparison.MoreThan, "v"))
                                )
                            ),
                        ]
                ),
                Among<ImmutableArray<Pattern>>(
                    (ImmutableArray<Pattern>)
                        [
                            Fact(FactKind.Weed, ("kind", new AttributeTest.Variable("v", true, false))),
                            Fact(FactKind.Past, ("treatment", new AttributeTest.Variable("w", true, false))),
                            Fact(FactKind.Crop, ("id", IsNot("ferns"))),
                            new Pattern.Any(
                                Fact(FactKind.Treatment, ("id", new AttributeTest.Variable("w", false, negated)))
                            ),
                            Fact(FactKind.Weed, ("kind", new AttributeTest.Variable("v", false, negated))),
                        ]
                ),
                JoinedAction(FactKind.Site, "cover", FactKind.Treatment, "allowed-under", negated),
                JoinedAction(FactKind.Crop, "is-a", FactKind.Treatment, "crops-hurt", negated),
                JoinedAction(FactKind.Weed, "id", FactKind.Action, "misses", negated),
                JoinedAction(FactKind.Site, "rate", FactKind.Treatment, "wait-after-potting-days", negated),
                Among<ImmutableArray<Pattern>>(
                    (ImmutableArray<Pattern>)
                        [
                            Fact(FactKind.Site, ("rate", new AttributeTest.Variable("v", true, false))),
                            Fact(
                                FactKind.Treatment,
                                ("wait-after-potting-days", new AttributeTest.Variable("w", true, false)),
                                ("wait-after-potting-days", new AttributeTest.VariableLimit(Comparison.MoreThan, "v"))
                            ),
                        ]
                ),
                Among<ImmutableArray<Pattern>>(
                    (ImmutableArray<Pattern>)
                        [
                            // Two attributes of one action against each other.
                            Fact(
                                FactKind.Treatment,
                                ("crops-hurt", new AttributeTest.Variable("v", true, false)),
                                ("crops-tolerant", new AttributeTest.Variable("v", false, negated))
                            ),
                        ]
                )
            )
        );

    private static Gen<ImmutableArray<Pattern>> JoinedAction(
        FactKind kind,
        string attribute,
        FactKind action,
        string joined,
        bool negated
    ) =>
        Among<ImmutableArray<Pattern>>(
            (ImmutableArray<Pattern>)
                [
                    Fact(kind, (attribute, new AttributeTest.Variable("v", true, false))),
                    Fact(action, (joined, new AttributeTest.Variable("v", false, negated))),
                ]
        );

    private static Gen<Pattern> OfFact(FactKind kind, params (string Attribute, string[] Words)[] attributes) =>
        Gen.Select(Among(attributes), Gen.Bool.Array[3], Gen.Bool)
            .Select(
                Pattern (pick, some, negated) =>
                {
                    string[] words = [.. pick.Words.Where((_, i) => some[i % 3])];
                    if (words.Length == 0)
                        words = [pick.Words[0]];
                    return Fact(kind, (pick.Attribute, negated ? IsNot(words) : Is(words)));
                }
            );

    private static Gen<Answer?> Answer(params string[] words) =>
        Gen.OneOf(
            Among<Answer?>((Answer?)null),
            Among<Answer?>(new Answer.NotKnown()),
            Among(words).Select(Answer? (word) => new Answer.Words(WordSet.Of([word])))
        );

    private static Gen<Answer?> Words(Gen<bool[]> some, string[] words) =>
        some.Select(Answer? (pick) => new Answer.Words(WordSet.Of(words.Where((_, i) => pick[i]))));

    private static Gen<ImmutableArray<WeedSeen>?> Weeds() =>
        Gen.Select(
            Gen.Bool.Array[3],
            Among<string?>("seedling", "mature", "expected", null).Array[3],
            Gen.Int[-20, 100].Array[3],
            ImmutableArray<WeedSeen>? (some, stages, covers) =>
                [
                    .. s_weeds
                        .Select((weed, i) => new WeedSeen(weed, stages[i], covers[i] < 0 ? null : covers[i]))
                        .Where((_, i) => some[i]),
                ]
        );

    private static Gen<ImmutableArray<PastApplication>?> Past() =>
        Gen.Select(Among("grain", "spray", "wash"), Gen.Int[-10, 90], Among<string?>("clean", "escapes", null))
            .Array[0, 3]
            .Select(
                ImmutableArray<PastApplication>? (entries) =>
                    [
                        .. entries.Select(entry => new PastApplication(
                            entry.Item1,
                            entry.Item2 < 0 ? null : Day.AddDays(-entry.Item2),
                            entry.Item3,
                            WordSet.Of(["moss"])
                        )),
                    ]
            );

    private static Gen<T> Among<T>(params T[] values) => Gen.Int[0, values.Length - 1].Select(i => values[i]);
}

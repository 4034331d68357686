using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.World;
using static WeedAdvisor.Inference.Tests.Oracle.DrawnCase;

namespace WeedAdvisor.Inference.Tests.Oracle;

/// <summary>
/// Draws judgements of every kind of pattern, test and consequence over the attributes of a drawn case.
/// </summary>
internal static class DrawnJudgements
{
    private static readonly string[] s_findings = ["fed", "open", "weedy"];

    // Attributes by what may be compared with what: words of one list, or numbers.
    private static readonly (FactKind Kind, string Attribute, string[] Words)[] s_attributes =
    [
        (FactKind.Site, "cover", ["sky", "shade", "film"]),
        (FactKind.Site, "light", ["full", "part", "deep"]),
        (FactKind.Site, "heated", ["yes", "no"]),
        (FactKind.Site, "enclosed", ["yes", "no"]),
        (FactKind.Site, "tools", ["hoe", "steam"]),
        (FactKind.Site, "stock", ["liners", "none-present"]),
        (FactKind.Site, "depth", []),
        (FactKind.Weed, "id", ["moss", "spurge"]),
        (FactKind.Weed, "kind", ["bryophyte", "broadleaf"]),
        (FactKind.Weed, "stage", ["seedling", "mature"]),
        (FactKind.Weed, "up", ["true", "false"]),
        (FactKind.Weed, "cover-percent", []),
        (FactKind.Weed, "weeks-to-first-seed", []),
        (FactKind.Crop, "id", ["shrubs", "heathers"]),
        (FactKind.Crop, "is-a", ["shrubs", "heathers"]),
        (FactKind.Past, "treatment", ["grain", "spray"]),
        (FactKind.Past, "groups", ["14", "3"]),
        (FactKind.Past, "days-ago", []),
        (FactKind.Past, "latest", ["true", "false"]),
        (FactKind.Past, "result", ["clean", "escapes"]),
    ];

    private static readonly (FactKind Kind, string Attribute, string[] Words)[] s_ofActions =
    [
        (FactKind.Treatment, "allowed-under", ["sky", "shade", "film"]),
        (FactKind.Treatment, "crops-tolerant", ["shrubs", "heathers"]),
        (FactKind.Treatment, "groups", ["14", "3"]),
        (FactKind.Treatment, "reaches-crop", ["true", "false"]),
        (FactKind.Treatment, "signal-word", ["caution", "danger"]),
        (FactKind.Treatment, "wait-after-potting-days", []),
        (FactKind.Treatment, "repeat-after-days", []),
        (FactKind.Practice, "id", ["pull"]),
        (FactKind.Action, "is", ["treatment", "practice"]),
        (FactKind.Action, "stock-stages", ["liners", "none-present"]),
    ];

    // What a variable of one attribute is held against: the first binds it.
    private static readonly (
        (FactKind Kind, string Attribute) Bound,
        (FactKind Kind, string Attribute) Held
    )[] s_joins =
    [
        ((FactKind.Site, "cover"), (FactKind.Treatment, "allowed-under")),
        ((FactKind.Site, "cover"), (FactKind.Treatment, "allowed-under")),
        ((FactKind.Site, "heated"), (FactKind.Site, "enclosed")),
        ((FactKind.Site, "enclosed"), (FactKind.Site, "heated")),
        ((FactKind.Site, "stock"), (FactKind.Action, "stock-stages")),
        ((FactKind.Site, "depth"), (FactKind.Weed, "cover-percent")),
        ((FactKind.Site, "depth"), (FactKind.Weed, "weeks-to-first-seed")),
        ((FactKind.Site, "depth"), (FactKind.Past, "days-ago")),
        ((FactKind.Site, "depth"), (FactKind.Treatment, "wait-after-potting-days")),
        ((FactKind.Site, "tools"), (FactKind.Site, "tools")),
        ((FactKind.Site, "tools"), (FactKind.Site, "depth")),
        // What does not apply, held against what is open.
        ((FactKind.Site, "tools"), (FactKind.Site, "heated")),
        ((FactKind.Site, "light"), (FactKind.Site, "heated")),
        ((FactKind.Site, "depth"), (FactKind.Weed, "weeks-to-first-seed")),
        ((FactKind.Weed, "cover-percent"), (FactKind.Weed, "cover-percent")),
        ((FactKind.Weed, "kind"), (FactKind.Weed, "kind")),
        ((FactKind.Weed, "weeks-to-first-seed"), (FactKind.Weed, "cover-percent")),
        ((FactKind.Weed, "stage"), (FactKind.Weed, "stage")),
        ((FactKind.Weed, "cover-percent"), (FactKind.Treatment, "repeat-after-days")),
        ((FactKind.Crop, "is-a"), (FactKind.Crop, "id")),
        ((FactKind.Crop, "is-a"), (FactKind.Treatment, "crops-tolerant")),
        ((FactKind.Past, "result"), (FactKind.Past, "result")),
        ((FactKind.Past, "latest"), (FactKind.Past, "latest")),
        ((FactKind.Past, "days-ago"), (FactKind.Treatment, "repeat-after-days")),
        ((FactKind.Past, "groups"), (FactKind.Treatment, "groups")),
        ((FactKind.Past, "treatment"), (FactKind.Treatment, "id")),
    ];

    /// <summary>Some judgements, in ordinal order of id.</summary>
    public static Gen<ImmutableArray<Judgement>> All { get; } =
        Gen.Select(Gen.Int[0, 5], Gen.Int[0, 2])
            .SelectMany(drawn =>
                Gen.Select(Conditions(drawn.Item1, drawn.Item2), Gen.Bool, (when, isHard) =>
                    (When: when, Then: Then(drawn.Item1, drawn.Item2, isHard))
                )
            )
            .Array[4, 8]
            .Select(rules =>
                rules
                    .Select((rule, at) => SmallKnowledge.Rule($"rule-{at:00}", rule.Then, rule.When))
                    .ToImmutableArray()
            );

    private static Consequence Then(int kind, int finding, bool isHard) =>
        kind switch
        {
            0 or 1 => new Consequence.MakesFinding(s_findings[finding], 0.5),
            2 => new Consequence.Argument(0.8, false),
            3 => new Consequence.Argument(0.4, true),
            4 => new Consequence.Bar(isHard ? Severity.Prohibited : Severity.Unsuitable),
            _ => new Consequence.Caution("mind it"),
        };

    // A finding builds on those before it; an argument or a bar speaks of an action, which stands last.
    private static Gen<ImmutableArray<Pattern>> Conditions(int kind, int finding)
    {
        Gen<Pattern> asked = Condition(kind < 2 ? finding : s_findings.Length);
        bool isOnAction = kind is 2 or 3 or 4;
        Gen<Pattern[]> joined = Joined(isOnAction);
        return Gen.Select(asked.Array[0, 2], joined, Plain(s_ofActions), Gen.Int[0, 2], (plain, join, action, how) =>
            ImmutableArray.CreateRange<Pattern>(
                OnceEach(
                    how == 0
                        ? [.. plain, .. join]
                        :
                        [
                            .. plain,
                            .. isOnAction ? [action]
                            : plain.Length == 0 ? join
                            : (Pattern[])[],
                        ]
                )
            )
        );
    }

    private static Gen<Pattern> Condition(int findings)
    {
        Gen<Pattern> fact = Plain(s_attributes);
        Gen<Pattern> inner =
            findings == 0
                ? fact
                : Gen.OneOf(
                    fact,
                    Gen.Int[0, findings - 1].Select(Pattern (at) => new Pattern.HasFinding(s_findings[at]))
                );
        return Gen.OneOf(
            inner,
            fact,
            inner.Select(Pattern (one) => new Pattern.Any(one)),
            inner.Select(Pattern (one) => new Pattern.None(one))
        );
    }

    private static Gen<Pattern> Plain((FactKind Kind, string Attribute, string[] Words)[] attributes) =>
        Gen.Select(Among(attributes), Among(attributes), Gen.Bool)
            .SelectMany(drawn =>
                Gen.Select(Test(drawn.Item1.Words), Test(drawn.Item2.Words), Pattern (first, second) =>
                    drawn.Item3
                    && drawn.Item1.Kind == drawn.Item2.Kind
                    && drawn.Item1.Attribute != drawn.Item2.Attribute
                        ? SmallKnowledge.Fact(
                            drawn.Item1.Kind,
                            (drawn.Item1.Attribute, first),
                            (drawn.Item2.Attribute, second)
                        )
                        : SmallKnowledge.Fact(drawn.Item1.Kind, (drawn.Item1.Attribute, first))
                )
            );

    private static Gen<AttributeTest> Test(string[] words) =>
        words.Length == 0
            ? Gen.OneOf(
                Limit,
                Gen.Select(Limit, Limit, AttributeTest (one, other) => new AttributeTest.Every([one, other])),
                OneOf("1", "2")
            )
            : OneOf(words);

    private static Gen<AttributeTest> OneOf(params string[] words) =>
        Gen.Select(Some(words), Gen.Bool, AttributeTest (some, isNot) =>
            new AttributeTest.Word(WordSet.Of(some), isNot)
        );

    private static Gen<AttributeTest> Limit =>
        Gen.Select(Gen.Enum<Comparison>(), Gen.Int[1, 2], AttributeTest (how, number) =>
            new AttributeTest.Limit(how, number)
        );

    // A variable and what is held against it, in a later pattern, or in an existence or absence.
    private static Gen<Pattern[]> Joined(bool isOnAction) =>
        Gen.Select(
            Among([.. s_joins.Where(join => isOnAction == join.Held.Kind is FactKind.Treatment or FactKind.Action)]),
            Gen.Enum<Comparison>(),
            Gen.Int[0, 3],
            Gen.Int[0, 2],
            (join, how, test, where) =>
            {
                AttributeTest held =
                    test == 0 ? new AttributeTest.Variable("v", false, true)
                    : test == 1 || !IsNumber(join.Held) ? new AttributeTest.Variable("v", false, false)
                    : new AttributeTest.VariableLimit(how, "v");
                Pattern.Fact bound = SmallKnowledge.Fact(
                    join.Bound.Kind,
                    (join.Bound.Attribute, new AttributeTest.Variable("v", true, false))
                );
                Pattern.Fact later = SmallKnowledge.Fact(join.Held.Kind, (join.Held.Attribute, held));
                Pattern second =
                    isOnAction || where == 0 ? later
                    : where == 1 ? new Pattern.Any(later)
                    : new Pattern.None(later);
                return (Pattern[])[bound, second];
            }
        );

    private static bool IsNumber((FactKind Kind, string Attribute) one) =>
        s_attributes
            .Concat(s_ofActions)
            .Any(other => other.Kind == one.Kind && other.Attribute == one.Attribute && other.Words.Length == 0);

    // The reader refuses a judgement that says the same twice.
    private static List<Pattern> OnceEach(IEnumerable<Pattern> patterns)
    {
        var kept = new List<Pattern>();
        foreach (Pattern pattern in patterns)
        {
            if (pattern is Pattern.Fact || !kept.Exists(one => Inner(one).Equals(Inner(pattern))))
                kept.Add(pattern);
        }

        return kept;
    }

    private static Pattern Inner(Pattern pattern) =>
        pattern switch
        {
            Pattern.Any any => any.Inner,
            Pattern.None none => none.Inner,
            _ => pattern,
        };
}

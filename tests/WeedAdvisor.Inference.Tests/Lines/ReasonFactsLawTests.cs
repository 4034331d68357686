using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Assembly;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Inference.Conditions;
using WeedAdvisor.Inference.Engine;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Lines;

/// <summary>
/// The facts that a line of a reason names are those it hangs on: alone they make its rule hold, without one of them it
/// is not certain, and nothing else moves it.
/// </summary>
public sealed class ReasonFactsLawTests
{
    private const string Elsewhere = "somewhere-else";

    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly RuleEngine s_engine = RuleEngine.Of(s_knowledge.Judgements, CatalogueFacts.Of(s_knowledge));

    // The seed of the area, and which of its certain lines is taken.
    private static readonly Gen<(AreaCase Area, int Line)> s_lines = Gen.Select(
        new RandomVisits(s_knowledge).Case,
        Gen.Int[0, 100_000]
    );

    [Fact]
    public void The_facts_named_alone_make_the_rule_hold_and_each_of_them_is_needed() =>
        EachDrawn(HoldsByItsFactsAlone);

    [Fact]
    public void What_a_line_does_not_name_does_not_move_it() => EachDrawn(NothingElseMovesIt);

    [Fact]
    public void A_value_that_a_condition_refuses_ends_the_match() => EachDrawn(WhatIsRefusedEndsIt);

    [Fact]
    public void The_laws_hold_for_a_line_with_each_kind_of_condition_that_the_rules_have()
    {
        var left = s_knowledge.Judgements.SelectMany(KindsOf).ToHashSet();
        Assert.True(left.Count > 40, $"only {left.Count} kinds of condition");
        foreach (AreaCase area in s_knowledge.WorkedVisits.SelectMany(worked => Areas(worked.Visit)))
        {
            foreach (Conclusion line in All(area).Where(one => one.IsCertain))
            {
                string[] fresh = [.. KindsOf(line.Judgement).Where(left.Contains).Distinct()];
                if (fresh.Length == 0)
                    continue;
                left.ExceptWith(fresh);
                Conclusion one = OneDerivation(line);
                HoldsByItsFactsAlone(one);
                NothingElseMovesIt(one);
                WhatIsRefusedEndsIt(one);
            }
        }

        Assert.Empty(left);
    }

    private static IEnumerable<AreaCase> Areas(Visit visit) =>
        Enumerable.Range(0, visit.Areas.Length).Select(at => AreaCase.Of(visit, at));

    // The kind of pattern, of fact and of test of each condition of a rule.
    private static IEnumerable<string> KindsOf(Judgement rule) =>
        rule.When.SelectMany(pattern =>
            pattern switch
            {
                Pattern.None none => Inner("none", none.Inner),
                Pattern.Any any => Inner("any", any.Inner),
                _ => Inner("", pattern),
            }
        );

    private static IEnumerable<string> Inner(string how, Pattern pattern) =>
        pattern is Pattern.Fact fact
            ? fact.Tests.Select(test => $"{how} {fact.Kind} {KindOf(test.Test)}").Append($"{how} {fact.Kind}")
            : [$"{how} {pattern.GetType().Name}"];

    private static string KindOf(AttributeTest test) =>
        test switch
        {
            AttributeTest.Word word => $"word {word.Negated}",
            AttributeTest.Limit limit => $"limit {limit.Comparison}",
            AttributeTest.Variable variable => $"variable {variable.Binds} {variable.Negated}",
            AttributeTest.VariableLimit limit => $"variable limit {limit.Comparison}",
            AttributeTest.Every every => $"every {string.Join(' ', every.Tests.Select(KindOf))}",
            _ => test.GetType().Name,
        };

    private static void EachDrawn(Action<Conclusion> holds) =>
        s_lines.Sample(
            one =>
            {
                if (LineOf(one.Area, one.Line) is { } line)
                    holds(line);
            },
            iter: Sizes.Of(60, 1000)
        );

    private static void HoldsByItsFactsAlone(Conclusion line)
    {
        var named = NamedBy(line).ToHashSet();
        Assert.Equal(Truth.Yes, TruthOf(line, (fact, attribute) => Kept(named, fact, attribute)));
        foreach ((string Fact, string Attribute) without in named)
        {
            Truth truth = TruthOf(line, (fact, attribute) =>
                (fact.Key, attribute) == without ? Open(attribute) : Kept(named, fact, attribute)
            );
            Assert.True(truth != Truth.Yes, $"{line.Key} holds without {without}");
        }
    }

    private static void NothingElseMovesIt(Conclusion line)
    {
        var named = NamedBy(line).ToHashSet();
        Assert.Equal(
            Truth.Yes,
            TruthOf(line, (fact, attribute) =>
                named.Contains((fact.Key, attribute)) ? fact.Read(attribute) : Reading.Of(Elsewhere)
            )
        );
    }

    private static void WhatIsRefusedEndsIt(Conclusion line)
    {
        foreach ((Pattern.Fact pattern, Fact fact) in FactsOf(line))
        {
            foreach (AttributeCondition condition in pattern.Tests)
            {
                if (Refused(condition.Test) is not { } refused)
                    continue;
                Truth truth = TruthOf(line, (of, attribute) =>
                    of.Key == fact.Key && attribute == condition.Attribute ? refused : of.Read(attribute)
                );
                Assert.True(
                    truth == Truth.No,
                    $"{line.Key} still holds where {condition.Attribute} of {fact.Key} is {refused.Text}"
                );
            }
        }
    }

    [Fact]
    public void A_line_that_hangs_on_absence_says_what_is_absent()
    {
        Judgement[] onAbsence =
        [
            .. s_knowledge.Judgements.Where(one =>
                one.When.Any(pattern => pattern is Pattern.None { Inner: Pattern.Fact })
            ),
        ];
        Assert.NotEmpty(onAbsence);
        s_lines.Sample(
            one =>
            {
                foreach (Conclusion line in All(one.Area).Where(line => onAbsence.Contains(line.Judgement)))
                {
                    Advice.Reason reason = new Reasons(s_knowledge).Of(line);
                    Assert.Contains(reason.Matched, match => match.Asked is Pattern.None);
                }
            },
            iter: Sizes.Of(10, 200)
        );
    }

    // One certain line of the area, with one derivation of each finding that it rests on; null where none is certain.
    private static Conclusion? LineOf(AreaCase area, int which)
    {
        Conclusion[] certain = [.. All(area).Where(one => one.IsCertain)];
        return certain.Length == 0 ? null : OneDerivation(certain[which % certain.Length]);
    }

    private static ImmutableArray<Conclusion> All(AreaCase area) =>
        s_engine.Open().Change(AreaFacts.Of(s_knowledge, area)).All();

    private static Conclusion OneDerivation(Conclusion line)
    {
        Bindings bindings = Bindings.None;
        var match = ImmutableArray.CreateBuilder<Matched>();
        for (int i = 0; i < line.Match.Length; i++)
        {
            Pattern pattern = line.Judgement.When[i];
            match.Add(
                (pattern, line.Match[i]) switch
                {
                    (Pattern.HasFinding or Pattern.Any, Matched.Evidence evidence) => new Matched.Evidence([
                        (FindingConclusion)OneDerivation(evidence.Conclusions.First(one => one.IsCertain)),
                    ]),
                    (Pattern.Any { Inner: Pattern.Fact inner }, Matched.Several several) => new Matched.Several([
                        several.Facts.First(fact => PatternTruth.Of(inner, fact, bindings).Truth == Truth.Yes),
                    ]),
                    (_, var other) => other,
                }
            );
            bindings = PatternHolds.Of(pattern, line.Match[i], bindings).Bindings;
        }

        ImmutableArray<Matched> all = match.ToImmutable();
        return Conclusion.Of(line.Judgement, all, MatchTruth.Of(line.Judgement, all));
    }

    private static IEnumerable<(string Fact, string Attribute)> NamedBy(Conclusion line) =>
        FactsOf(line).SelectMany(one => one.Pattern.Tests.Select(test => (one.Fact.Key, test.Attribute)));

    // The facts of the case that a line and the findings behind it were matched on; what the catalogue says stays.
    private static IEnumerable<(Pattern.Fact Pattern, Fact Fact)> FactsOf(Conclusion line) =>
        line.Match.SelectMany(
            (matched, at) =>
                (line.Judgement.When[at], matched) switch
                {
                    (Pattern.Fact pattern, Matched.One { Fact: not ActionFact } one) => [(pattern, one.Fact)],
                    (Pattern.Any { Inner: Pattern.Fact inner }, Matched.Several several) => several
                        .Facts.Where(fact => fact is not ActionFact)
                        .Select(fact => (inner, fact)),
                    (not Pattern.None, Matched.Evidence evidence) => evidence.Conclusions.SelectMany(FactsOf),
                    _ => Enumerable.Empty<(Pattern.Fact, Fact)>(),
                }
        );

    // The truth of the line where its facts read otherwise.
    private static Truth TruthOf(Conclusion line, Func<Fact, string, Reading> read) => Anew(line, read).Truth;

    private static MatchTruth Anew(Conclusion line, Func<Fact, string, Reading> read) =>
        MatchTruth.Of(line.Judgement, [.. line.Match.Select(matched => Anew(matched, read))]);

    private static Matched Anew(Matched matched, Func<Fact, string, Reading> read) =>
        matched switch
        {
            Matched.One { Fact: not ActionFact } one => new Matched.One(Anew(one.Fact, read)),
            Matched.Several several => new Matched.Several([.. several.Facts.Select(fact => Anew(fact, read))]),
            Matched.Evidence evidence => new Matched.Evidence([
                .. evidence
                    .Conclusions.Select(one =>
                    {
                        MatchTruth truth = Anew(one, read);
                        return truth.Truth == Truth.No ? null : Conclusion.Of(one.Judgement, one.Match, truth);
                    })
                    .OfType<FindingConclusion>(),
            ]),
            _ => matched,
        };

    private static Fact Anew(Fact fact, Func<Fact, string, Reading> read)
    {
        if (fact is ActionFact)
            return fact;
        Dictionary<string, Reading> readings = fact.Readings.Keys.ToDictionary(
            attribute => attribute,
            attribute => read(fact, attribute),
            StringComparer.Ordinal
        );
        string id = fact.Key[(fact.Key.IndexOf('/', StringComparison.Ordinal) + 1)..];
        return fact switch
        {
            SiteFact => new SiteFact(readings),
            WeedFact => new WeedFact(id, fact.Name, readings),
            CropFact => new CropFact(id, fact.Name, readings),
            PastFact => new PastFact(id, fact.Name, readings),
            ClosureFact => new ClosureFact(id, fact.Name, readings),
            LimitFact => new LimitFact(id, fact.Name, readings),
            EscapeFact => new EscapeFact(id, fact.Name, readings),
            _ => throw new InvalidOperationException(fact.Key),
        };
    }

    private static Reading Kept(HashSet<(string, string)> named, Fact fact, string attribute) =>
        named.Contains((fact.Key, attribute)) ? fact.Read(attribute) : Open(attribute);

    private static Reading Open(string attribute) => Reading.NotKnown(Need.Question(attribute));

    // A value that a test refuses by itself; null where that hangs on what stands elsewhere.
    private static Reading? Refused(AttributeTest test) =>
        test switch
        {
            AttributeTest.Word { Negated: false } => Reading.Of(Elsewhere),
            AttributeTest.Word word => Reading.Of(word.Words),
            AttributeTest.Limit { Comparison: Comparison.AtLeast or Comparison.MoreThan } => Reading.Of(-1_000_000),
            AttributeTest.Limit => Reading.Of(1_000_000),
            // What it refuses is what another condition was matched on.
            AttributeTest.Variable { Negated: true } => null,
            AttributeTest.Every every => every.Tests.Select(Refused).FirstOrDefault(one => one is not null),
            _ => Reading.Absent,
        };
}

using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.World;

/// <summary>Puts a random case into words, so that a failing one can be read.</summary>
public static class Describe
{
    public static string Case((ImmutableArray<Judgement> Rules, VisitArea[] Areas) one) =>
        string.Join('\n', one.Rules.Select(Rule).Concat(one.Areas.Select(Area)));

    public static string Of(AreaCase one) => string.Join(" || ", one.Others.Prepend(one.Area).Select(Area));

    private static string Rule(Judgement rule) =>
        $"{rule.Id}: {string.Join(" & ", rule.When.Select(Pattern))} -> {rule.Then}";

    private static string Pattern(Pattern pattern) =>
        pattern switch
        {
            Pattern.Fact fact =>
                $"{fact.Kind}({string.Join(", ", fact.Tests.Select(test => $"{test.Attribute} {Test(test.Test)}"))})",
            Pattern.HasFinding finding => $"finding {finding.Id}",
            Pattern.None none => $"none {Pattern(none.Inner)}",
            Pattern.Any any => $"any {Pattern(any.Inner)}",
            _ => "?",
        };

    private static string Test(AttributeTest test) =>
        test is AttributeTest.Word word ? (word.Negated ? "not " : "") + word.Words : test.ToString();

    private static string Area(VisitArea area) =>
        $"area {string.Join(", ", area.Answers.Select(answer => $"{answer.Key}={answer.Value}"))}; weeds "
        + (area.Weeds is { } weeds ? string.Join(", ", weeds) : "not known")
        + "; past "
        + (area.Past is { } past ? string.Join(", ", past) : "not known");
}

using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Catalogue;

/// <summary>A rule in words.</summary>
internal static class JudgementFields
{
    public static ImmutableArray<Field> Of(KnowledgeBase knowledge, Judgement judgement, DateOnly today) =>
        new Fields()
            .Add("topic", judgement.Topic)
            .Add("law of", judgement.Law is { } of ? new Names(knowledge).Word("country", of.Country) : null)
            .AddEach("answers", judgement.Law is { } law ? law.Topics : [])
            .AddEach("when", judgement.When.Select(Condition))
            .Add("then", Conclusion(judgement.Then))
            .Add("because", judgement.Because)
            .AddEach("source", RecordFields.Cited(judgement.Sources, knowledge))
            .Add("from memory, not confirmed", judgement.Memory.Select(Names.Field))
            .Add("last checked", judgement.Law is { IsHeld: true } held ? Checks.Told(held.Checked, today) : null)
            .Add("stands in", judgement.Where.ToString())
            .Done();

    /// <summary>A condition on one attribute in words.</summary>
    public static string Test(AttributeCondition condition) => $"{condition.Attribute} {Words(condition.Test)}";

    private static string Condition(Pattern pattern) =>
        pattern switch
        {
            Pattern.HasFinding finding => $"finding {finding.Id}",
            Pattern.None none => $"no {Condition(none.Inner)}",
            Pattern.Any any => $"at least one {Condition(any.Inner)}",
            Pattern.Fact { Tests.IsEmpty: true } fact => Kind(fact.Kind),
            Pattern.Fact fact => $"{Kind(fact.Kind)}: {string.Join("; ", fact.Tests.Select(Test))}",
            _ => throw new ArgumentOutOfRangeException(nameof(pattern), pattern, "not a pattern"),
        };

    private static string Kind(FactKind kind) =>
        kind switch
        {
            FactKind.Site => "site",
            FactKind.Weed => "weed",
            FactKind.Crop => "crop",
            FactKind.Practice => "practice",
            FactKind.Treatment => "treatment",
            FactKind.Action => "action",
            _ => "past application",
        };

    private static string Words(AttributeTest test) =>
        test switch
        {
            AttributeTest.Word word => $"{(word.Negated ? "is none of" : "is")} {string.Join(" or ", word.Words)}",
            AttributeTest.Limit limit => $"{Words(limit.Comparison)} {Figures.Plain(limit.Value)}",
            AttributeTest.Variable { Binds: true } variable => $"is called ${variable.Name}",
            AttributeTest.Variable { Negated: true } variable => $"shares nothing with ${variable.Name}",
            AttributeTest.Variable variable => $"agrees with ${variable.Name}",
            AttributeTest.VariableLimit limit => $"{Words(limit.Comparison)} ${limit.Name}",
            AttributeTest.Every every => string.Join(" and ", every.Tests.Select(Words)),
            _ => throw new ArgumentOutOfRangeException(nameof(test), test, "not a test"),
        };

    private static string Words(Comparison comparison) =>
        comparison switch
        {
            Comparison.LessThan => "less than",
            Comparison.AtMost => "at most",
            Comparison.AtLeast => "at least",
            _ => "more than",
        };

    private static string Conclusion(Consequence consequence) =>
        consequence switch
        {
            Consequence.MakesFinding finding => $"finding {finding.Id}, certainty {Number(finding.Certainty)}",
            Consequence.Argument { IsDoubt: true } doubt => $"doubt {Number(doubt.Certainty)}",
            Consequence.Argument support => $"support {Number(support.Certainty)}",
            Consequence.Bar { Severity: Severity.Prohibited } => "prohibited",
            Consequence.Bar => "unsuitable",
            Consequence.Caution caution => $"caution: {caution.Text}",
            _ => throw new ArgumentOutOfRangeException(nameof(consequence), consequence, "not a consequence"),
        };

    private static string Number(double value) => value.ToString("0.##", CultureInfo.InvariantCulture);
}

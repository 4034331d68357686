using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>Reasons taken apart: the rule, what it matched and read, the findings behind it, its sources.</summary>
public static class ReasonBlocks
{
    private const int Inner = 2,
        Step = 3,
        MostWords = 5;

    /// <summary>The reasons and everything below them.</summary>
    public static ItemList Of(Names names, ImmutableArray<Reason> reasons) =>
        new([.. reasons.Select(reason => ItemOf(names, reason))]);

    /// <summary>What a reason concludes, in a word or two.</summary>
    public static string Conclusion(Reason reason) =>
        reason.Then switch
        {
            Consequence.MakesFinding finding => $"finding {finding.Id} {Figures.Strength(reason)}",
            Consequence.Argument { IsDoubt: true } => $"doubt {Figures.Strength(reason)}",
            Consequence.Argument => $"support {Figures.Strength(reason)}",
            Consequence.Bar { Severity: Severity.Prohibited } => "prohibited",
            Consequence.Bar => "unsuitable",
            _ => "caution",
        };

    private static Item ItemOf(Names names, Reason reason)
    {
        string standing = reason.IsCertain ? "" : ", not sure yet";
        return new Item(Item.Dash, Names.UnderItsName(reason.Caution ?? reason.Said))
        {
            Below =
            [
                .. reason.Caution is null
                    ? []
                    : (Block[])[Set(new Keyed("because: ", Names.UnderItsName(reason.Said)))],
                Set(new Paragraph($"{Conclusion(reason)} by rule {reason.Judgement} ({reason.Topic}){standing}")),
                .. reason.Needs.Select(need => Set(new Keyed("waits for: ", names.Need(need)))),
                Set(new ItemList([.. reason.Matched.Select(match => ItemOf(names, reason, match))])),
                Set(new Keyed("sources: ", reason.Sources.IsEmpty ? "none named" : string.Join(", ", reason.Sources))),
            ],
        };
    }

    private static Item ItemOf(Names names, Reason reason, MatchedPattern match) =>
        new(Mark(match.Truth), match.Fact == match.Pattern ? match.Fact : $"{match.Pattern}: {match.Fact}")
        {
            Below =
            [
                .. match.Tests.IsEmpty
                    ? []
                    : (Block[])[new ItemList([.. match.Tests.Select(test => ItemOf(reason, test))]).At(Step)],
                .. match.Behind.IsEmpty ? [] : (Block[])[Of(names, match.Behind).At(Step)],
            ],
        };

    private static Item ItemOf(Reason reason, MatchedTest test) =>
        new(Mark(test.Truth), $"{test.Attribute}: {test.Expected}; read: {Read(reason, test)}");

    private static Block Set(Block block) => block.At(Inner);

    /// <summary>What was read. Of a long list what the rule compares comes first, and the rest is counted.</summary>
    private static string Read(Reason reason, MatchedTest test)
    {
        ImmutableArray<string> words = test.Words;
        if (words.Length <= MostWords + 1)
            return test.Read;
        HashSet<string> compared =
        [
            .. reason
                .Matched.SelectMany(match => match.Tests)
                .Where(other => other != test)
                .SelectMany(other => other.Words),
        ];
        var first = words.OrderByDescending(compared.Contains).Take(MostWords);
        string more = (words.Length - MostWords).ToString(CultureInfo.InvariantCulture);
        return $"{string.Join(", ", first)} and {more} more";
    }

    private static string Mark(Truth truth) =>
        truth switch
        {
            Truth.Yes => "[yes] ",
            Truth.NotKnown => "[?]   ",
            _ => "[no]  ",
        };
}

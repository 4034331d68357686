using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports;

/// <summary>A reason taken apart: its rule, what the rule matched and read, the findings behind it, its sources.</summary>
public static class ReasonText
{
    private const int Step = 3;
    private const int MostWords = 5;

    /// <summary>Writes a reason and everything below it.</summary>
    public static void Write(Page page, KnowledgeBase knowledge, Reason reason, int indent = 2) =>
        Write(page, new Names(knowledge), reason, indent);

    private static void Write(Page page, Names names, Reason reason, int indent)
    {
        page.Write(indent, "- ", Below(names, reason, reason.CautionText ?? reason.Text));
        int inner = indent + 2;
        if (reason.CautionText is not null)
            page.Write(inner, "because: ", Below(names, reason, reason.Text));
        string standing = reason.IsCertain ? "" : ", not sure yet";
        page.Write(inner, $"{Conclusion(reason)} by rule {reason.Judgement} ({reason.Topic}){standing}");
        foreach (Need need in reason.Needs)
            page.Write(inner, "waits for: ", names.Need(need));
        foreach (MatchedPattern match in reason.Matched)
            WriteMatch(page, names, reason, match, inner);
        page.Write(inner, "sources: ", Sources(reason.Sources));
    }

    private static string Below(Names names, Reason reason, string text) =>
        reason.Action is { } action ? names.UnderItsName(action, text) : Figures.Sentence(text);

    private static void WriteMatch(Page page, Names names, Reason reason, MatchedPattern match, int indent)
    {
        string text = match.Fact == match.Pattern ? match.Fact : $"{match.Pattern}: {match.Fact}";
        page.Write(indent, Mark(match.Truth), text);
        foreach (MatchedTest test in match.Tests)
        {
            string read = Read(reason, test);
            page.Write(indent + Step, Mark(test.Truth), $"{test.Attribute}: {test.Expected}; read: {read}");
        }

        foreach (Reason behind in match.Behind)
            Write(page, names, behind, indent + Step);
    }

    /// <summary>What was read. Of a long list what the rule compares comes first, and the rest is counted.</summary>
    private static string Read(Reason reason, MatchedTest test)
    {
        string[] words = test.Read.Split(", ");
        if (words.Length <= MostWords + 1)
            return test.Read;
        HashSet<string> compared =
        [
            .. reason.Matched
                .SelectMany(match => match.Tests)
                .Where(other => other != test)
                .SelectMany(other => other.Read.Split(", ")),
        ];
        var first = words.OrderByDescending(compared.Contains).Take(MostWords);
        string more = (words.Length - MostWords).ToString(CultureInfo.InvariantCulture);
        return $"{string.Join(", ", first)} and {more} more";
    }

    private static string Conclusion(Reason reason) => reason.Then switch
    {
        Consequence.Finding finding => $"finding {finding.Id} {Figures.Strength(reason)}",
        Consequence.Argument { IsDoubt: true } => $"doubt {Figures.Strength(reason)}",
        Consequence.Argument => $"support {Figures.Strength(reason)}",
        Consequence.Bar { Severity: Severity.Prohibited } => "prohibited",
        Consequence.Bar => "unsuitable",
        _ => "caution",
    };

    private static string Mark(Truth truth) => truth switch
    {
        Truth.Yes => "[yes] ",
        Truth.NotKnown => "[?]   ",
        _ => "[no]  ",
    };

    private static string Sources(ImmutableArray<string> sources) =>
        sources.IsEmpty ? "none named" : string.Join(", ", sources);
}

using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>
/// Findings must not depend on themselves, neither on being made nor on being absent: then there is an order in which
/// they can be concluded, and what is concluded does not depend on who comes first.
/// </summary>
internal sealed class FindingCycles
{
    private readonly ILookup<string, Edge> _needs;
    private readonly HashSet<string> _done = new(StringComparer.Ordinal);
    private readonly List<string> _path = [];
    private readonly List<Problem> _problems = [];

    private FindingCycles(IEnumerable<Judgement> judgements) =>
        _needs = judgements
            .Where(judgement => judgement.Then is Consequence.MakesFinding)
            .SelectMany(judgement =>
                judgement
                    .When.Select(FindingOf)
                    .OfType<string>()
                    .Distinct()
                    .Select(needs => new Edge(((Consequence.MakesFinding)judgement.Then).Id, needs, judgement))
            )
            .ToLookup(edge => edge.Made, StringComparer.Ordinal);

    /// <summary>One problem for each cycle met.</summary>
    public static IReadOnlyList<Problem> Of(IEnumerable<Judgement> judgements)
    {
        var search = new FindingCycles(judgements);
        foreach (string finding in search._needs.Select(group => group.Key).Order(StringComparer.Ordinal))
            search.Visit(finding, rule: null);
        return search._problems;
    }

    // Findings are dozens, and a chain of them is short, so the stack is enough.
    private void Visit(string finding, Judgement? rule)
    {
        int start = _path.IndexOf(finding);
        if (start >= 0)
        {
            string chain = string.Join(" needs ", _path.Skip(start).Append(finding));
            _problems.Add(
                new Problem(
                    rule!.Where,
                    $"findings that depend on themselves: {chain}",
                    "findings without such a circle"
                )
            );
            return;
        }

        if (!_done.Add(finding))
            return;
        _path.Add(finding);
        foreach (Edge edge in _needs[finding])
            Visit(edge.Needs, edge.Rule);
        _path.RemoveAt(_path.Count - 1);
    }

    private sealed record Edge(string Made, string Needs, Judgement Rule);

    private static string? FindingOf(Pattern pattern) =>
        pattern switch
        {
            Pattern.HasFinding finding => finding.Id,
            Pattern.None { Inner: Pattern.HasFinding finding } => finding.Id,
            Pattern.Any { Inner: Pattern.HasFinding finding } => finding.Id,
            _ => null,
        };
}

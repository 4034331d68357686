using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.RuleReaders;

/// <summary>
/// Findings must not depend on themselves, neither on being made nor on being absent: then there is an order in which
/// they can be concluded, and what is concluded does not depend on who comes first.
/// </summary>
internal sealed class FindingCycles
{
    private readonly ILookup<string, (string Needs, Judgement Rule)> _needs;
    private readonly HashSet<string> _done = new(StringComparer.Ordinal);
    private readonly List<(string Finding, Judgement? Rule)> _path = [];
    private readonly List<Problem> _problems = [];

    private FindingCycles(IEnumerable<Judgement> judgements) =>
        _needs = judgements
            .Where(judgement => judgement.Then is Consequence.Finding)
            .SelectMany(judgement => judgement.When.Select(FindingOf).OfType<string>().Distinct()
                .Select(needs => (Made: ((Consequence.Finding)judgement.Then).Id, Needs: needs, Rule: judgement)))
            .ToLookup(edge => edge.Made, edge => (edge.Needs, edge.Rule), StringComparer.Ordinal);

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
        int start = _path.FindIndex(step => step.Finding == finding);
        if (start >= 0)
        {
            string chain = string.Join(" needs ", _path.Skip(start).Select(step => step.Finding).Append(finding));
            _problems.Add(new Problem(
                rule!.Where, $"findings that depend on themselves: {chain}", "findings without such a circle"));
            return;
        }

        if (!_done.Add(finding))
            return;
        _path.Add((finding, rule));
        foreach ((string needs, Judgement by) in _needs[finding])
            Visit(needs, by);
        _path.RemoveAt(_path.Count - 1);
    }

    private static string? FindingOf(Pattern pattern) => pattern switch
    {
        Pattern.Finding finding => finding.Id,
        Pattern.None { Inner: Pattern.Finding finding } => finding.Id,
        Pattern.Any { Inner: Pattern.Finding finding } => finding.Id,
        _ => null,
    };
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Engine;

/// <summary>Orders judgements so that each comes after all that make the findings it builds on.</summary>
internal static class FindingOrder
{
    /// <summary>The judgements in that order; among equals by id.</summary>
    /// <exception cref="ArgumentException">Findings depend on themselves; the reader refuses such
    /// knowledge.</exception>
    public static ImmutableArray<Judgement> Of(IEnumerable<Judgement> judgements)
    {
        Judgement[] all = [.. judgements.OrderBy(judgement => judgement.Id, StringComparer.Ordinal)];
        ILookup<string, Judgement> makers = all.Where(judgement => judgement.Then is Consequence.MakesFinding)
            .ToLookup(judgement => ((Consequence.MakesFinding)judgement.Then).Id, StringComparer.Ordinal);
        var done = new HashSet<string>(StringComparer.Ordinal);
        var open = new HashSet<string>(StringComparer.Ordinal);
        ImmutableArray<Judgement>.Builder ordered = ImmutableArray.CreateBuilder<Judgement>(all.Length);
        foreach (Judgement judgement in all)
            Visit(judgement);
        return ordered.ToImmutable();

        void Visit(Judgement judgement)
        {
            if (done.Contains(judgement.Id))
                return;
            if (!open.Add(judgement.Id))
                throw new ArgumentException(
                    $"findings depend on themselves through '{judgement.Id}'",
                    nameof(judgements)
                );
            foreach (string finding in judgement.When.SelectMany(FindingsIn))
            {
                foreach (Judgement maker in makers[finding])
                    Visit(maker);
            }

            done.Add(judgement.Id);
            ordered.Add(judgement);
        }
    }

    /// <summary>The findings that a judgement makes or builds on.</summary>
    public static IEnumerable<string> NamedIn(Judgement judgement) =>
        judgement.When.SelectMany(FindingsIn).Concat(judgement.Then is Consequence.MakesFinding made ? [made.Id] : []);

    private static IEnumerable<string> FindingsIn(Pattern pattern) =>
        pattern switch
        {
            Pattern.HasFinding finding => [finding.Id],
            Pattern.None none => FindingsIn(none.Inner),
            Pattern.Any any => FindingsIn(any.Inner),
            _ => [],
        };
}

using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Plan;
using WeedAdvisor.Planning.Season.Programme;

namespace WeedAdvisor.Interview.Desks.Plan;

/// <summary>What a search came to.</summary>
/// <param name="Open">The case with no wishes but the pots; null when the area cannot be planned.</param>
/// <param name="Plan">The plan; null when the area, or what is wished, cannot be planned.</param>
/// <param name="Refusals">Why not, as sentences.</param>
public sealed record PlanAnswer(PlanCase? Open, AreaPlan? Plan, ImmutableArray<string> Refusals);

/// <summary>A search that is still to be made. It touches nothing of the desk, so any thread may run it.</summary>
/// <param name="advisor">Gives advice.</param>
/// <param name="area">The area as the visit found it.</param>
/// <param name="wishes">The wishes.</param>
/// <param name="open">The case with no wishes but the pots, where it is read already.</param>
public sealed class PlanJob(Advisor advisor, AreaCase area, PlanWishes wishes, PlanCase? open)
{
    /// <summary>The wishes that it is for.</summary>
    public PlanWishes Wishes { get; } = wishes;

    /// <summary>Searches. Takes seconds.</summary>
    /// <param name="stop">Stops early; what comes back then is of no use.</param>
    public PlanAnswer Run(CancellationToken stop)
    {
        PlanCase? read = open;
        if (read is null)
        {
            Outcome<PlanCase, string> found = PlanCase.Of(advisor, area, new PlanRequest { Pots = Wishes.Pots });
            if (!found.IsGood)
                return new PlanAnswer(null, null, found.Refusals);
            read = found.Value;
        }

        PlanRequest request = Wishes.Request(read.Measures);
        if (Missing(read, request) is { } why)
            return new PlanAnswer(read, null, [why]);
        return new PlanAnswer(read, PlanSearch.Of(Under(read, request), stop: stop), []);
    }

    // The rules need not be asked again: no wish changes what they allow.
    private PlanCase Under(PlanCase read, PlanRequest request) =>
        read with
        {
            Request = request,
            Measures = [.. read.Measures.Where(measure => !request.Without.Contains(measure.Id))],
            Season = read.Season?.With(
                new SeasonRequest
                {
                    Closed = Wishes.Closed,
                    Dropped = Wishes.Dropped,
                    MustUse = Wishes.Kept,
                },
                advisor.Knowledge
            ),
        };

    private string? Missing(PlanCase read, PlanRequest request)
    {
        HashSet<string> can =
        [
            .. read.Measures.Select(measure => measure.Id),
            .. read.Season?.Treatments.Select(treatment => treatment.Id) ?? [],
        ];
        return request.With.FirstOrDefault(id => !can.Contains(id)) is { } missing
            ? $"{advisor.Knowledge.ActionOf(missing)?.Name ?? missing} is not clear here any more: take it back with U."
            : null;
    }
}

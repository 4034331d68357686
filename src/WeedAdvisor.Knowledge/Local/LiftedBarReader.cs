using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.Local;

/// <summary>Reads which bars a nursery lifts: only those that call a practice not worth it here.</summary>
internal static class LiftedBarReader
{
    /// <summary>A lift.</summary>
    public static PlacedLift Read(MappingReader map)
    {
        string bar = map.Text("bar");
        var lift = new PlacedLift(new LiftedBar(bar, map.Text("because")), map.Where);
        map.Finish();
        return lift;
    }

    /// <summary>
    /// The problem of each lift that names no bar, or one that law, label or certain injury stand behind.
    /// </summary>
    public static IEnumerable<Problem> Wrong(IEnumerable<PlacedLift> lifts, ImmutableArray<Judgement> judgements)
    {
        string[] liftable = [.. judgements.Where(IsLiftable).Select(judgement => judgement.Id)];
        foreach (PlacedLift lift in lifts)
        {
            Judgement? named = judgements.FirstOrDefault(judgement => judgement.Id == lift.Bar.Judgement);
            if (named is not null && IsLiftable(named))
                continue;
            yield return new Problem(
                lift.Where,
                named?.Then is Consequence.Bar
                    ? $"'{lift.Bar.Judgement}', which bars chemicals, or behind which law or certain injury stand"
                    : $"'{lift.Bar.Judgement}'",
                "the id of a judgement that calls a practice unsuitable",
                NearestWord.Of(lift.Bar.Judgement, liftable)
            );
        }
    }

    // What a chemical may be used for is for its label to say, never for the nursery.
    private static bool IsLiftable(Judgement judgement) =>
        judgement.Then is Consequence.Bar { Severity: Severity.Unsuitable }
        && judgement.When.Where(pattern => pattern.IsOnAction()).All(IsOnPractice);

    private static bool IsOnPractice(Pattern pattern) => pattern is Pattern.Fact { Kind: FactKind.Practice };
}

/// <summary>A lift and where it stands.</summary>
internal sealed record PlacedLift(LiftedBar Bar, Place Where);

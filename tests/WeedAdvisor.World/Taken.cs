using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.World;

/// <summary>An area of which one thing less is told.</summary>
/// <param name="Owner">The area of which less is told.</param>
/// <param name="What">What was taken away, in words.</param>
/// <param name="Question">The question that asks for it.</param>
/// <param name="Less">What is left.</param>
public sealed record Taken(VisitArea Owner, string What, string Question, AreaCase Less)
{
    /// <summary>
    /// Everything that can be taken away from an area and from those that may share its roof, one at a time.
    /// </summary>
    public static ImmutableArray<Taken> From(AreaCase all) =>
        [
            .. FromArea(all.Area)
                .Select(one => new Taken(all.Area, one.What, one.Question, all with { Area = one.Less })),
            .. all.Others.SelectMany(
                (other, i) =>
                    FromArea(other)
                        .Select(one => new Taken(
                            other,
                            $"{other.Id}: {one.What}",
                            one.Question,
                            all with
                            {
                                Others = all.Others.SetItem(i, one.Less),
                            }
                        ))
            ),
        ];

    private static IEnumerable<(string What, string Question, VisitArea Less)> FromArea(VisitArea area) =>
        [
            .. area.Answers.Keys.Select(id => (id, id, area with { Answers = area.Answers.Remove(id) })),
            .. area.Weeds is { } weeds
                ? weeds
                    .SelectMany(
                        (seen, i) =>
                            FromWeed(seen)
                                .Select(less => ($"weed {i}", "weeds", area with { Weeds = weeds.SetItem(i, less) }))
                    )
                    .Append(("weeds", "weeds", area with { Weeds = null }))
                : [],
            .. area.Past is { } past
                ? past.SelectMany(
                        (use, i) =>
                            FromUse(use)
                                .Select(less =>
                                    ($"past {i}: {less.Field}", "past", area with { Past = past.SetItem(i, less.Less) })
                                )
                    )
                    .Append(("past", "past", area with { Past = null }))
                : [],
        ];

    private static IEnumerable<WeedSeen> FromWeed(WeedSeen seen) =>
        new[] { seen with { Stage = null }, seen with { CoverPercent = null } }.Where(less => less != seen);

    private static IEnumerable<(string Field, PastApplication Less)> FromUse(PastApplication use) =>
        new (string, PastApplication)[]
        {
            ("treatment", use with { Treatment = null }),
            ("actives", use with { Actives = WordSet.Empty }),
            ("groups", use with { Groups = WordSet.Empty }),
            ("kind", use with { Kind = null }),
            ("date", use with { Date = null }),
            ("hour", use with { Hour = null }),
            ("rate", use with { Rate = null, RateUnit = null }),
            ("method", use with { Method = null }),
            ("part-only", use with { PartOnly = null }),
            ("watered-in", use with { WateredIn = null }),
            ("aired", use with { Aired = null }),
            ("drifted", use with { Drifted = null }),
            ("result", use with { Result = null }),
            ("escaped", use with { Escaped = WordSet.Empty }),
            ("came-through", use with { CameThrough = null }),
            ("seasons-running", use with { SeasonsRunning = null }),
        }.Where(one => one.Item2 != use);
}

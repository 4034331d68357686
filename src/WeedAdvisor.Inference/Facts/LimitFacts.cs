using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>The facts of limits that one more use would break, may break, or keeps only at a low rate.</summary>
internal static class LimitFacts
{
    /// <summary>
    /// One fact for each limit that says the same of a set of treatments, in ordinal order of what they say.
    /// </summary>
    public static IEnumerable<LimitFact> Of(
        ImmutableArray<PastApplication>? past,
        DateOnly day,
        KnowledgeBase knowledge
    )
    {
        if (past is { IsEmpty: true })
            return [];
        IEnumerable<(Treatment Treatment, LimitVerdict Verdict)> found = past is { } uses
            ? LimitCheck.OfAll(day, uses, knowledge)
            : knowledge.Treatments.Values.SelectMany(
                treatment => LimitCheck.Of(treatment, day, null, knowledge),
                (treatment, verdict) => (treatment, verdict)
            );
        return found
            .GroupBy(one => new Said(one.Verdict))
            .OrderBy(group => group.Key.Text, StringComparer.Ordinal)
            .Select(
                (group, index) =>
                    Of(
                        group.First().Verdict,
                        WordSet.Of(group.Select(one => one.Treatment.Id)),
                        day,
                        index.ToString("000", CultureInfo.InvariantCulture)
                    )
            );
    }

    private static LimitFact Of(LimitVerdict verdict, WordSet treatments, DateOnly day, string id)
    {
        // A limit that holds and never ends is one that no use can keep: only the label can tell when.
        Reading open = new Reading.Open(
            verdict.Needs.IsEmpty ? [Need.Record(treatments.First(), "uses-per-year")] : verdict.Needs,
            null
        );
        return new LimitFact(
            id,
            verdict.Text,
            new Dictionary<string, Reading>
            {
                ["holds"] = verdict.Holds == Truth.NotKnown ? open : Reading.Of(verdict.Holds == Truth.Yes),
                ["treatments"] = Reading.Of(treatments),
                ["active"] = verdict.Active is { } active ? Reading.Of(active) : Reading.Absent,
                ["kind"] = Reading.Of(KindOf(verdict.Kind)),
                ["days-left"] = verdict.Until is { } until ? Reading.Of(until.DayNumber - day.DayNumber) : open,
            }
        );
    }

    private static string KindOf(LimitKind kind) =>
        kind switch
        {
            LimitKind.Uses => "uses",
            LimitKind.Amount => "amount",
            LimitKind.Interval => "interval",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "not a kind of limit"),
        };

    // Two limits say the same when every word and figure of them does.
    private sealed record Said
    {
        public Said(LimitVerdict verdict) =>
            Text = string.Join(
                '|',
                KindOf(verdict.Kind),
                verdict.Active,
                verdict.Holds,
                verdict.Until is { } until ? CalendarDay.Text(until) : null,
                string.Join(' ', verdict.Needs.Select(need => need.Id)),
                verdict.Text
            );

        public string Text { get; }
    }
}

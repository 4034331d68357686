using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Season;

/// <summary>What the season plan assumes, from <c>rules/season.yaml</c>.</summary>
public sealed class SeasonNumbers
{
    private readonly ImmutableSortedDictionary<string, SeasonNumber> _numbers;

    private SeasonNumbers(ImmutableSortedDictionary<string, SeasonNumber> numbers) => _numbers = numbers;

    /// <summary>The ids that the plan needs.</summary>
    public static ImmutableArray<string> Needed { get; } =
    [
        StatedHolds, FlushStarts, FlushEnds, RestStarts, Established, Rounds, UnknownInterval, BetweenAny,
        MostApplications, ControlLeft, PlantsHurt, Seen, Seeding, BlownIn,
    ];

    internal const string StatedHolds = "stated-holds-weeks";
    internal const string FlushStarts = "flush-starts-weeks-before-last-frost";
    internal const string FlushEnds = "flush-ends-weeks-after-last-frost";
    internal const string RestStarts = "rest-starts-weeks-after-first-frost";
    internal const string Established = "established-weeks-after-potting";
    internal const string Rounds = "rounds-weeks";
    internal const string UnknownInterval = "interval-weeks-when-unknown";
    internal const string BetweenAny = "weeks-between-any-two";
    internal const string MostApplications = "applications-a-year-at-most";
    internal const string ControlLeft = "control-left-percent-at-end-of-residual";
    internal const string PlantsHurt = "plants-hurt-per-10000-each-application";
    internal const string Seen = "seed-seen-percent-of-base";
    internal const string Seeding = "seed-seeding-now-percent-of-base";
    internal const string BlownIn = "seed-blown-in-percent-of-base";

    /// <summary>A value, in the unit that its id names.</summary>
    public decimal this[string id] => _numbers[id].Value;

    /// <summary>The numbers of the knowledge, or the ids that it lacks.</summary>
    public static (SeasonNumbers? Numbers, ImmutableArray<string> Missing) Of(KnowledgeBase knowledge)
    {
        ImmutableArray<string> missing = [.. Needed.Where(id => !knowledge.Season.ContainsKey(id))];
        return missing.IsEmpty ? (new SeasonNumbers(knowledge.Season), []) : (null, missing);
    }

    internal int Whole(string id) => (int)decimal.Ceiling(this[id]);
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Planning.OneYear;

/// <summary>An action in a way, and when it is done in the year.</summary>
/// <param name="Action">The action.</param>
/// <param name="Weeks">Weeks of the year from the visit in which it is done; empty for what holds the whole year after
/// one go.</param>
/// <param name="IsByBoom">Whether a boom sprayer does it, whatever the record's usual tool.</param>
public sealed record WayPart(CatalogueAction Action, ImmutableArray<int> Weeks, bool IsByBoom = false)
{
    /// <summary>How deep a mulch lies, centimetres; null for a working depth.</summary>
    public decimal? DepthCm { get; init; }

    /// <summary>Whether it is laid on pots right after the first round of the plan has cleaned them.</summary>
    public bool FollowsFirstRound { get; init; }

    /// <summary>How often it is done in the year.</summary>
    public int Times => Weeks.IsEmpty ? 1 : Weeks.Length;
}

/// <summary>A way through the year: what is done besides weeding, and how often the pots are weeded.</summary>
/// <param name="Id">Names it on the command line.</param>
/// <param name="Means">What is done besides the rounds, in plain words.</param>
/// <param name="IntervalWeeks">Weeks between rounds of weeding.</param>
/// <param name="Parts">What is done besides.</param>
public sealed record WayPlan(string Id, string Means, int IntervalWeeks, ImmutableArray<WayPart> Parts)
{
    /// <summary>The id of the way that the visit found.</summary>
    public const string Today = "today";

    /// <summary>The whole way in plain words: what is done besides the rounds, and how often they come.</summary>
    public string Name => KeepsRounds ? Means : $"{Means}, weeded {Rounds.InWords}";

    /// <summary>The rounds through the year.</summary>
    public YearRounds Rounds { get; init; } = YearRounds.Every(IntervalWeeks);

    /// <summary>
    /// A mulch that lies on the pots and that no practice of the knowledge lays, so that it costs nothing here; null
    /// for none.
    /// </summary>
    public PotMulch? LiesAlready { get; init; }

    /// <summary>The week in which a part that holds all the year is laid.</summary>
    public int LaidIn(WayPart part) => part.FollowsFirstRound ? FirstRoundWeek : 0;

    /// <summary>
    /// Whether its rounds are today's because it only adds to today's way, so that its name leaves them out.
    /// </summary>
    public bool KeepsRounds { get; init; }

    /// <summary>
    /// Weeks over which the first round is spread, and what is laid after it: an equal part of the pots in each, 1 or
    /// more. Each part is walked again with all others from the next round on.
    /// </summary>
    public int SpreadWeeks { get; init; } = 1;

    /// <summary>The week of the first round; rounds before it fall away.</summary>
    public int FirstRoundWeek { get; init; }

    /// <summary>
    /// Share of all seedlings that its applications stop in every week, 0 to 1, as the grower knows it; null for what
    /// the records say of each.
    /// </summary>
    public double? StatedControl { get; init; }
}

/// <summary>What a way costs in a year, for 1000 pots.</summary>
/// <param name="Plan">The way.</param>
/// <param name="Items">What it costs, item by item; ids are unique.</param>
/// <param name="Season">The weeding in it.</param>
/// <param name="Tools">What has to be bought for it.</param>
public sealed record Way(
    WayPlan Plan,
    ImmutableArray<CostItem> Items,
    WeedingSeason Season,
    ImmutableArray<BoughtTool> Tools
)
{
    /// <summary>
    /// The ways of the parts of the pots, each for 1000 pots, where the first round is spread; empty where it is not.
    /// </summary>
    public ImmutableArray<Way> Parts { get; init; } = [];

    /// <summary>The whole, US dollars for 1000 pots.</summary>
    public decimal Usd => Items.Sum(item => item.Usd);

    /// <summary>Hours of the year for 1000 pots.</summary>
    public decimal Hours => Items.Where(item => item.Kind != CostKind.NextYear).Sum(item => item.Hours);

    /// <summary>
    /// Hours of each week for 1000 pots: rounds, and what else is done in the week in which it begins. The last are the
    /// clearing when the year is over, spread like the first round. Together they are <see cref="Hours"/>.
    /// </summary>
    public ImmutableArray<decimal> HoursByWeek()
    {
        if (!Parts.IsEmpty)
        {
            ImmutableArray<decimal>[] parts = [.. Parts.Select(part => part.HoursByWeek())];
            return
            [
                .. Enumerable
                    .Range(0, parts.Max(part => part.Length))
                    .Select(week => parts.Average(part => week < part.Length ? part[week] : 0)),
            ];
        }

        // What was cleaned later is cleared later, as the stock is sold.
        int last = Season.Clearing.Week + Plan.FirstRoundWeek;
        decimal[] hours = new decimal[last + 1];
        foreach (WeedingRound round in Season.Rounds)
            hours[round.Week] += (decimal)round.Hours;
        hours[last] += (decimal)Season.Clearing.Hours;
        foreach (WayPart part in Plan.Parts)
        {
            decimal each = Items.Where(item => item.Action == part.Action.Id).Sum(item => item.Hours) / part.Times;
            foreach (int week in part.Weeks.IsEmpty ? [Plan.LaidIn(part)] : part.Weeks)
                hours[week] += each;
        }

        return [.. hours];
    }

    /// <summary>Price of what is bought for years, US dollars, for the whole area.</summary>
    public decimal OutlayUsd => Tools.Sum(tool => tool.PurchaseUsd);

    /// <summary>
    /// What the rounds cost: walking, pulling and what they use up, US dollars for 1000 pots.
    /// </summary>
    public decimal WeedingUsd =>
        Items.Where(item => item.Id is "walking" or "pulling" or "weeding-materials").Sum(item => item.Usd);

    /// <summary>What plants lost to weeds cost, US dollars for 1000 pots.</summary>
    public decimal LostUsd => Items.Where(item => item.Id == "lost-plants").Sum(item => item.Usd);

    /// <summary>What is done besides the rounds, tools that are bought among it, US dollars for 1000 pots.</summary>
    public decimal MeasuresUsd => Usd - WeedingUsd - LostUsd - Of(CostKind.NextYear);

    /// <summary>What licensed persons cost who are called in, US dollars for 1000 pots.</summary>
    public decimal CalledInUsd => Items.Where(CalledIn.Has).Sum(item => item.Usd);

    /// <summary>What the uses of one action cost, US dollars for 1000 pots.</summary>
    public decimal UsdOf(string action) => Items.Where(item => item.Action == action).Sum(item => item.Usd);

    /// <summary>
    /// What is spent whatever comes up: rounds that are walked, what is put on and bought, US dollars for 1000 pots.
    /// </summary>
    public decimal FixedUsd => Items.Where(item => !item.IsOfWeeds).Sum(item => item.Usd);

    /// <summary>The part of one kind, US dollars for 1000 pots.</summary>
    public decimal Of(CostKind kind) => Items.Where(item => item.Kind == kind).Sum(item => item.Usd);
}

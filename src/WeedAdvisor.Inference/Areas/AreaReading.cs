using System.Collections.Immutable;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Areas;

/// <summary>
/// An area as read once, for all sums and pages: no other room reads its answers. An answer to a question that does not
/// apply, or that contradicts another, is not told. Null says that nothing is told.
/// </summary>
public sealed record AreaReading
{
    private const string LateFlush = "flushes-after-bloom";
    private const string NoMulch = "none",
        NoStock = "none-present",
        PottingOn = "potting-on",
        Yes = "yes",
        No = "no";
    private const string PotTight = "pot-tight",
        WeedsSeedRoundAbout = "weedy-seeding";

    /// <summary>The longest interval between two rounds, whole weeks.</summary>
    public const int MostWeeks = 52;

    /// <summary>The area.</summary>
    public required VisitArea Area { get; init; }

    /// <summary>The kind of place.</summary>
    public required string? Place { get; init; }

    /// <summary>What stands over it.</summary>
    public required string? Cover { get; init; }

    /// <summary>What stock stands there.</summary>
    public required string? Stock { get; init; }

    /// <summary>Crops that stand there; empty also when not told.</summary>
    public required WordSet Crops { get; init; }

    /// <summary>
    /// The ground that is worked on, word of list <c>ground</c>: null when the place is not told.
    /// </summary>
    public required string? Ground { get; init; }

    /// <summary>
    /// Whether strips and verges are what is worked on: the ground is one of list <c>verge-ground</c>.
    /// </summary>
    public required bool IsVerge { get; init; }

    /// <summary>How far the crop's growth is.</summary>
    public required string? Growth { get; init; }

    /// <summary>Whether a crop that stands here flushes in spring after its bloom, so for longer than others.</summary>
    public required bool FlushesAfterBloom { get; init; }

    /// <summary>Whether plants ship soon.</summary>
    public required bool? ShipsSoon { get; init; }

    /// <summary>The region.</summary>
    public required Region? Region { get; init; }

    /// <summary>
    /// The zone by whose months weeds come up: that of a heated house where one is heated under a closed roof, else the
    /// region's.
    /// </summary>
    public required string? EmergenceZone { get; init; }

    /// <summary>The weeds to come: as told, else those that are usual here at this time of year.</summary>
    public required ComingWeeds Coming { get; init; }

    /// <summary>
    /// The weeds by which the effect of what stops weeds to come is reckoned: those told; where it is told that there
    /// are none, those taken to come; null when nobody told.
    /// </summary>
    public ImmutableArray<WeedSeen>? SeenOrToCome =>
        Area.Weeds is { IsEmpty: true } ? [.. WeedsToCome.Assumed(Area, Coming)] : Area.Weeds;

    /// <summary>What the weeds that stand there are, taken together.</summary>
    public required StandingWeeds Standing { get; init; }

    /// <summary>
    /// The question after the weeds where it is answered as far as it can be: every weed is told with its stage and
    /// with its cover or the share of pots that it stands in. What has no name is advised to be named; whoever counted
    /// the pots is not asked the whole list again. Null else.
    /// </summary>
    public string? AnsweredAboutWeeds =>
        Area.Weeds is { IsEmpty: false } weeds
        && weeds.All(seen => seen is { Stage: not null } && (seen.CoverPercent ?? seen.PotsPercent) is not null)
            ? QuestionIds.Weeds
            : null;

    /// <summary>How moist the surface is.</summary>
    public required string? Moisture { get; init; }

    /// <summary>What grows round about.</summary>
    public required string? Surroundings { get; init; }

    /// <summary>Whether weeds seed round about.</summary>
    public bool IsSeededInto => Surroundings == WeedsSeedRoundAbout;

    /// <summary>The mulch on the pots; null also when they are bare.</summary>
    public required string? Mulch { get; init; }

    /// <summary>How deep the mulch lies, centimetres.</summary>
    public required decimal? MulchDepthCm { get; init; }

    /// <summary>Whether the pots touch; not when that is not told.</summary>
    public required bool IsTight { get; init; }

    /// <summary>Tools that are there; empty also when not told.</summary>
    public required WordSet Equipment { get; init; }

    /// <summary>Whether tools were asked after and told.</summary>
    public required bool IsEquipmentTold { get; init; }

    /// <summary>
    /// The chemicals that lie in the store or are asked about, as they are called there; empty also when not told.
    /// </summary>
    public WordSet InHand { get; init; } = WordSet.Empty;

    /// <summary>Whether it was answered that nobody here is licensed.</summary>
    public bool HasNobodyLicensed { get; init; }

    /// <summary>Weeks between two rounds as answered; 0 says that nobody weeds.</summary>
    public required decimal? RoundsAnswered { get; init; }

    /// <summary>Whole weeks between two rounds where nobody says it.</summary>
    public required int UsualRoundsWeeks { get; init; }

    /// <summary>Cost of an hour as answered, US dollars.</summary>
    public required decimal? WageAnswered { get; init; }

    /// <summary>How many pots stand there, as answered.</summary>
    public required decimal? PotsAnswered { get; init; }

    /// <summary>How many pots are taken to stand there where nobody says it.</summary>
    public required int UsualPots { get; init; }

    /// <summary>How wide the pots are at the rim, centimetres: as answered, else the usual width.</summary>
    public required Told<decimal> PotWidthCm { get; init; }

    /// <summary>Whether the number of pots, their width and how they stand are all told.</summary>
    public required bool IsSizeTold { get; init; }

    /// <summary>The day of potting.</summary>
    public required DateOnly? PottedOn { get; init; }

    /// <summary>The day on which the stock is potted on next.</summary>
    public required DateOnly? PottingOnNext { get; init; }

    /// <summary>The day film goes on.</summary>
    public required DateOnly? CoveringOn { get; init; }

    /// <summary>The weather of the day; null when nobody said, empty when nothing of what is asked holds.</summary>
    public required WordSet? Weather { get; init; }

    /// <summary>Whether this kind of place holds pots; null when the place is not told.</summary>
    public required bool? IsForPots { get; init; }

    /// <summary>
    /// Whether pots stand in the area, as far as the answers say. Without an answer they are taken to.
    /// </summary>
    public bool HasPots => IsForPots != false && Stock != NoStock;

    /// <summary>
    /// Whole weeks between two rounds, 1 to <see cref="MostWeeks"/>, halves rounded up; null when it is not told, and
    /// when nobody weeds.
    /// </summary>
    public int? RoundsWeeks =>
        RoundsAnswered is { } weeks and > 0
            ? (int)Math.Clamp(Math.Round(weeks, MidpointRounding.AwayFromZero), 1, MostWeeks)
            : null;

    /// <summary>Whether it is told that none of some tools is there; needing none lacks none.</summary>
    /// <param name="tools">The tools, any one of which suffices.</param>
    public bool Lacks(WordSet tools) => tools.Count > 0 && IsEquipmentTold && !tools.Overlaps(Equipment);

    /// <summary>
    /// Whole weeks between two rounds: as set, else as answered, else the usual ones. That nobody weeds now is no
    /// interval to reckon with, so then the usual one counts too.
    /// </summary>
    /// <param name="set">Weeks set for this reckoning; null for none.</param>
    public Told<int> Rounds(int? set) =>
        set is { } weeks ? new Told<int>(weeks, Origin.Set)
        : RoundsWeeks is { } told ? new Told<int>(told, Origin.Answer)
        : new Told<int>(UsualRoundsWeeks, Origin.Assumed);

    /// <summary>How many pots stand there: as set, else as answered, else the usual number.</summary>
    /// <param name="set">Pots set for this reckoning; null for none.</param>
    public Told<int> Pots(int? set) =>
        set is { } given ? new Told<int>(given, Origin.Set)
        : PotsAnswered is { } answered ? new Told<int>((int)Math.Ceiling(answered), Origin.Answer)
        : new Told<int>(UsualPots, Origin.Assumed);

    /// <summary>
    /// What an hour of labour costs: as set, else as answered, else as the price list has it; null when none does.
    /// </summary>
    /// <param name="set">US dollars set for this reckoning; null for none.</param>
    /// <param name="prices">Finds a price by its id.</param>
    public Told<decimal>? Wage(decimal? set, Func<string, Price?> prices) =>
        set is { } given ? new Told<decimal>(given, Origin.Set)
        : WageAnswered is { } answered ? new Told<decimal>(answered, Origin.Answer)
        : prices(QuestionIds.Wage) is { } price ? new Told<decimal>(price.Value, Origin.PriceList)
        : null;

    /// <summary>Reads an area.</summary>
    /// <param name="area">The area.</param>
    /// <param name="day">The day on which it is looked at.</param>
    /// <param name="knowledge">The knowledge.</param>
    public static AreaReading Of(VisitArea area, DateOnly day, KnowledgeBase knowledge)
    {
        Dictionary<string, Reading> readings = SiteReadings.Of(knowledge, AreaCase.Alone(day, area));
        var site = new SiteValues(readings, day);
        Region? region = site.Word(QuestionIds.Region) is { } id ? knowledge.Regions.GetValueOrDefault(id) : null;
        var zone = Areas.EmergenceZone.Of(readings, knowledge);
        string? place = site.Word(QuestionIds.Place);
        string? stock = site.Word(QuestionIds.Stock);
        WordSet crops = site.Words(QuestionIds.Crops) ?? WordSet.Empty;
        var standing = StandingWeeds.Of(area.Weeds ?? [], knowledge);
        string? mulch = site.Word(QuestionIds.Mulch);
        string? ground = Grounds.Of(place, stock, stock == NoStock || standing.AreBesideThePots, knowledge);
        return new AreaReading
        {
            Area = area,
            Place = place,
            Cover = site.Word(QuestionIds.Cover),
            Stock = stock,
            Ground = ground,
            IsVerge = ground is not null && Grounds.IsVerge(ground, knowledge),
            Growth = site.Word(QuestionIds.Growth),
            Crops = crops,
            FlushesAfterBloom = crops.Any(crop =>
                knowledge.Crops.GetValueOrDefault(crop)?.Traits.Contains(LateFlush) == true
            ),
            ShipsSoon = site.Word(QuestionIds.Shipping) is { } soon ? soon == Yes : null,
            Region = region,
            EmergenceZone = zone.Taken,
            Coming = WeedsToCome.Of(area, readings, zone, day, knowledge),
            Standing = standing,
            Moisture = site.Word(QuestionIds.Moisture),
            Surroundings = site.Word(QuestionIds.Surroundings),
            Mulch = mulch == NoMulch ? null : mulch,
            MulchDepthCm = site.Number(QuestionIds.MulchDepth),
            IsTight = site.Word(QuestionIds.Spacing) == PotTight,
            Equipment = site.Words(QuestionIds.Equipment) ?? WordSet.Empty,
            IsEquipmentTold = site.Words(QuestionIds.Equipment) is not null,
            InHand = site.Words(QuestionIds.InHand) ?? WordSet.Empty,
            HasNobodyLicensed = site.Word(QuestionIds.Licensed) == No,
            RoundsAnswered = site.Number(QuestionIds.Rounds),
            UsualRoundsWeeks = knowledge.Usual.Whole(UsualIds.Rounds),
            WageAnswered = site.Number(QuestionIds.Wage),
            PotsAnswered = site.Number(QuestionIds.Pots),
            UsualPots = knowledge.Usual.Whole(UsualIds.Pots),
            PotWidthCm = site.Number(QuestionIds.PotWidth) is { } width
                ? new Told<decimal>(width, Origin.Answer)
                : new Told<decimal>(knowledge.Usual[UsualIds.PotWidth], Origin.Assumed),
            IsSizeTold =
                site.Number(QuestionIds.Pots) is not null
                && site.Number(QuestionIds.PotWidth) is not null
                && site.Word(QuestionIds.Spacing) is not null,
            PottedOn = site.Day(QuestionIds.PottedOn),
            PottingOnNext = site.Word(QuestionIds.ComesNext) == PottingOn ? site.Day(QuestionIds.ComesNextOn) : null,
            CoveringOn = site.Day(QuestionIds.CoveringDate),
            Weather = site.Words(QuestionIds.Weather),
            IsForPots = place is null ? null : PotPlaces.Contain(place, knowledge),
        };
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Robust;

/// <summary>
/// The figures behind some ways through a year, each with its range: those of the knowledge, published or marked as
/// assumed. What the grower has put in his own folder or price file without a range is certain; so are a dose and the
/// depth of a cover, which are chosen and not found out. A wage that is told is moved by the same share as that of the
/// price list: wages rise.
/// </summary>
public static class YearFigures
{
    private const string LabourRate = Weeding.Wage.PriceId;

    /// <summary>All figures, in ordinal order of id.</summary>
    /// <param name="year">The year.</param>
    /// <param name="ways">The ways; figures of actions are those of theirs.</param>
    public static ImmutableArray<MovedFigure> Of(YearCase year, IEnumerable<WayPlan> ways)
    {
        CatalogueAction[] actions =
        [
            .. ways.SelectMany(way => way.Parts)
                .Select(part => part.Action)
                .Concat(year.Acting.Select(acting => acting.Treatment))
                .DistinctBy(action => action.Id),
        ];
        return
        [
            .. Wage(year)
                .Concat(Prices(year))
                .Concat(Usuals(year))
                .Concat(Parameters(year))
                .Concat(year.Weeds.Counted.SelectMany(weed => OfWeed(weed.Weed)))
                .Concat(WorkingTimes(year))
                .Concat(actions.SelectMany(action => ActionFigures.Of(year, action)))
                .Where(figure => !figure.IsCertain)
                .OrderBy(figure => figure.Id, StringComparer.Ordinal),
        ];
    }

    private static IEnumerable<MovedFigure> Wage(YearCase year)
    {
        if (year.Prices.Find(LabourRate) is { Value: > 0, Range: { } range } price)
            yield return new MovedFigure(
                "wage",
                "an hour of work",
                "USD",
                FigureKind.Wage,
                year.WageUsd * range.Low / price.Value,
                year.WageUsd,
                year.WageUsd * range.High / price.Value,
                RangeOf(price)
            )
            {
                Put = (moved, usd) => moved.Wage(usd),
            };
    }

    private static IEnumerable<MovedFigure> Prices(YearCase year) =>
        year
            .Knowledge.Prices.Keys.Concat(year.Prices.Own.Select(price => price.Id))
            .Distinct(StringComparer.Ordinal)
            .Where(id => id != LabourRate)
            .Select(id => year.Prices.Find(id)!)
            .Where(price => price.Range is not null)
            .Select(price => new MovedFigure(
                $"price {price.Id}",
                price.Name,
                Units.OfPrice(price.Unit),
                price.Id is "finished-pot" || price.Id.StartsWith("unsaleable", StringComparison.Ordinal)
                    ? FigureKind.Loss
                    : FigureKind.Price,
                price.Range!.Value.Low,
                price.Value,
                price.Range.Value.High,
                RangeOf(price)
            )
            {
                Put = (moved, value) => moved.Price(price, value),
            });

    private static IEnumerable<MovedFigure> Usuals(YearCase year) =>
        year
            .Usual.Records.Values.Where(number => number.Range is not null)
            .Select(number => new MovedFigure(
                $"usual {number.Id}",
                number.Name,
                number.Id == UsualIds.PlantsHurt ? "plants" : Units.OfId(number.Id),
                number.Id switch
                {
                    UsualIds.PlantsHurt => FigureKind.Harm,
                    UsualIds.ControlLeft => FigureKind.Duration,
                    UsualIds.YearLate => FigureKind.Season,
                    _ => FigureKind.Emergence,
                },
                number.Range!.Value.Low,
                number.Value,
                number.Range.Value.High,
                RangeOf(number)
            )
            {
                Put = (moved, value) =>
                {
                    if (number.Id == UsualIds.YearLate)
                        moved.WeeksLate(value);
                    else
                        moved.Usual(number.Id, value);
                },
            });

    // A number that the grower has set for this sum stays.
    private static IEnumerable<MovedFigure> Parameters(YearCase year) =>
        year
            .Knowledge.Weeding.Values.Where(number => year.UsualSize[number.Id] == (double)number.Value)
            .Select(number => new MovedFigure(
                $"weeding {number.Id}",
                number.Name,
                Units.OfId(number.Id),
                KindOf(number.Id),
                number.Range.Low,
                number.Value,
                number.Range.High,
                RangeOf(number)
            )
            {
                Put = (moved, value) => moved.Number(number.Id, value),
            });

    private static FigureKind KindOf(string parameter) =>
        Starts(parameter, "seedlings-per", "surroundings-", "wet-surface", "dry-surface") ? FigureKind.Emergence
        : Starts(parameter, "pull-seconds", "walking-", "missed-", "smallest-pulled") ? FigureKind.Work
        : Starts(parameter, "mulch-control", "thin-mulch") ? FigureKind.Strength
        : Starts(parameter, "materials-") ? FigureKind.Price
        : FigureKind.Growth;

    private static bool Starts(string id, params ReadOnlySpan<string> beginnings)
    {
        foreach (string beginning in beginnings)
        {
            if (id.StartsWith(beginning, StringComparison.Ordinal))
                return true;
        }

        return false;
    }

    private static IEnumerable<MovedFigure> OfWeed(Weed weed)
    {
        if (weed.WeeksToFirstSeed is { } seeds)
            yield return new MovedFigure(
                $"weed {weed.Id} first seed",
                $"{weed.Name}: from seedling to first seed",
                "weeks",
                FigureKind.Growth,
                seeds.Low,
                seeds.Middle,
                seeds.High,
                weed.From.Of("weeks-to-first-seed")
            )
            {
                Put = (moved, weeks) => moved.FirstSeed(weed.Id, weeks),
            };
        if (weed.SeedLifeYears is { } life)
            yield return new MovedFigure(
                $"weed {weed.Id} seed life",
                $"{weed.Name}: how long its seed lives",
                "years",
                FigureKind.Growth,
                life.Low,
                life.Middle,
                life.High,
                weed.From.Of("seed-life-years")
            )
            {
                Put = (moved, years) => moved.Weed(weed.Id, one => one with { SeedLifeYears = life.To(years) }),
            };
    }

    private static IEnumerable<MovedFigure> WorkingTimes(YearCase year) =>
        year.Knowledge.WorkingTimes.Values.Select(time =>
        {
            Span range = time.At(year.Block.WidthCm.Value);
            return new MovedFigure(
                $"time {time.Id}",
                time.Name,
                Units.OfId(time.Id),
                FigureKind.Work,
                range.Low,
                range.Middle,
                range.High,
                time.Sources
            )
            {
                Put = (moved, value) => moved.WorkingTime(time.Id, one => Moved(one, range.PlaceOf(value))),
            };
        });

    private static WorkingTime Moved(WorkingTime time, decimal place) =>
        time with
        {
            Value = time.Value?.ToPlace(place),
            ByPotWidth = [.. time.ByPotWidth.Select(row => row with { Value = row.Value.ToPlace(place) })],
        };

    private static ImmutableArray<string> RangeOf(Record record) =>
        record.From.Of("range") is { IsEmpty: false } range ? range : record.Sources;
}

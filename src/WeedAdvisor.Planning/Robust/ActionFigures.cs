using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;

namespace WeedAdvisor.Planning.Robust;

/// <summary>The figures of one action: what it stops, how long it holds, what it takes.</summary>
internal static class ActionFigures
{
    public static IEnumerable<MovedFigure> Of(YearCase year, CatalogueAction action) =>
        [.. Strength(year, action), .. Duration(action), .. Cost(year, action)];

    // One figure for all weeds: where it stands in the published range of each.
    private static IEnumerable<MovedFigure> Strength(YearCase year, CatalogueAction action)
    {
        Span[] published =
        [
            .. year.Weeds.Counted.Select(weed => WayControl.Published(year, action, weed.Weed)).OfType<Span>(),
        ];
        if (published.Length == 0)
            yield break;
        var mean = new Span(published.Average(range => range.Low), published.Average(range => range.High));
        yield return new MovedFigure(
            $"action {action.Id} strength",
            $"{action.Name}: what it stops of these weeds, in the mean",
            "%",
            FigureKind.Strength,
            mean.Low,
            mean.Middle,
            mean.High,
            [
                .. (
                    action is Practice practice
                        ? practice.Effects.SelectMany(effect => effect.Sources)
                        : ((Treatment)action).Ratings.SelectMany(rating => rating.Sources)
                ).Distinct(StringComparer.Ordinal),
            ]
        )
        {
            Put = (moved, percent) =>
            {
                if (action is Practice)
                    moved.Practice(action.Id, one => Stronger(one, mean.PlaceOf(percent)));
                else
                    Stronger(moved, action.Id, mean.PlaceOf(percent));
            },
        };
    }

    // The sums take all figures of a weed as one range.
    private static Practice Stronger(Practice practice, decimal place)
    {
        var ranges = practice
            .Effects.GroupBy(effect => effect.On, StringComparer.Ordinal)
            .ToDictionary(
                effects => effects.Key,
                effects =>
                    new Span(
                        effects.Min(effect => effect.ReductionPercent.Low),
                        effects.Max(effect => effect.ReductionPercent.High)
                    ).ToPlace(place),
                StringComparer.Ordinal
            );
        return practice with
        {
            Effects = [.. practice.Effects.Select(effect => effect with { ReductionPercent = ranges[effect.On] })],
        };
    }

    // A grade stands for a range in all treatments: this one gets steps of its own.
    private static void Stronger(MovedYear moved, string id, decimal place)
    {
        foreach (ScaleStep step in moved.Knowledge.Treatments[id].Ratings.Select(Step).DistinctBy(one => one.Id))
            moved.Step(step with { Id = Own(step.Id), ReductionPercent = step.ReductionPercent.ToPlace(place) });
        moved.Treatment(id, one =>
            one with
            {
                Ratings = [.. one.Ratings.Select(rating => rating with { Grade = Own(rating.Grade) })],
            }
        );

        ScaleStep Step(Rating rating) => moved.Knowledge.Scale[rating.Grade];

        string Own(string grade) => $"{grade} of {id}";
    }

    private static IEnumerable<MovedFigure> Duration(CatalogueAction action)
    {
        if (action is not Treatment { ResidualWeeks: { } weeks } treatment)
            yield break;
        yield return new MovedFigure(
            $"action {action.Id} weeks",
            $"{action.Name}: how long it holds",
            "weeks",
            FigureKind.Duration,
            weeks.Low,
            weeks.Middle,
            weeks.High,
            treatment.From.Of("residual-weeks")
        )
        {
            Put = (moved, value) => moved.Treatment(action.Id, one => one with { ResidualWeeks = weeks.To(value) }),
        };
    }

    private static IEnumerable<MovedFigure> Cost(YearCase year, CatalogueAction action)
    {
        string? ground = year.Reading.Ground;
        if (action.CostOn(ground) is not { } cost)
            yield break;
        // Of chemicals the price of the active and the working times count.
        if (
            action is Practice
            && cost is { MaterialsUsd: { } usd, DepthCm: null }
            && year.Prices.OwnPriceOf(action) is null
        )
            yield return Of("materials", "materials for 1000 usual pots", "USD", FigureKind.Price, usd, (one, range) =>
                one with
                {
                    MaterialsUsd = range,
                }
            );
        if (cost.LabourHours is { } hours && cost.Work is null)
            yield return Of("labour", "work for 1000 usual pots", "h", FigureKind.Work, hours, (one, range) =>
                one with
                {
                    LabourHours = range,
                }
            );

        MovedFigure Of(
            string what,
            string words,
            string unit,
            FigureKind kind,
            Span range,
            Func<CostDrivers, Span, CostDrivers> with
        ) =>
            new(
                $"action {action.Id} {what}",
                $"{action.Name}: {words}",
                unit,
                kind,
                range.Low,
                range.Middle,
                range.High,
                cost.Sources
            )
            {
                Put = (moved, value) => Put(moved, action, ground, one => with(one, range.To(value))),
            };
    }

    private static void Put(
        MovedYear moved,
        CatalogueAction action,
        string? ground,
        Func<CostDrivers, CostDrivers> with
    )
    {
        if (action is Treatment)
            moved.Treatment(action.Id, one => one with { Cost = with(one.CostOn(ground)!) });
        else
            moved.Practice(action.Id, one => one with { Cost = with(one.CostOn(ground)!), CostOnGrounds = [] });
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>Speed of travel: fields for it, the sum, and the bounds beyond which it is not believed.</summary>
internal static class Pace
{
    /// <summary>Word for going on foot.</summary>
    public const string Foot = "foot";

    private const decimal MostOnFoot = 6;
    private const decimal MostAnywhere = 15;
    private const decimal MostSpread = 0.2m;

    /// <summary>A field for a speed.</summary>
    public static RateFieldKind.Measure Kind() =>
        Field.Measure("mph", "km/h", "ft/min", "m/min") with
        {
            Least = Quantity.Of(0.1m, "mph"),
        };

    /// <summary>The field that asks how one travels.</summary>
    public static RateField Travel { get; } =
        new(
            "travel",
            "On foot or on wheels",
            Field.Choice((Foot, "On foot"), ("wheels", "On wheels: tractor, cart or utility vehicle")),
            "It decides which speed is believed."
        )
        {
            Default = Foot,
        };

    /// <summary>Speed over a course: length ÷ time, through feet or metres a minute.</summary>
    /// <param name="sheet">The working.</param>
    /// <param name="course">The length.</param>
    /// <param name="time">The time, above zero.</param>
    /// <param name="metric">Whether to work in km/h; else mph.</param>
    /// <returns>mph or km/h.</returns>
    public static Quantity Speed(WorkingSheet sheet, Quantity course, Quantity time, bool metric)
    {
        Quantity length = sheet.Convert("Length of the course", course, metric ? "m" : "ft");
        Quantity minutes = sheet.Convert("Time in minutes", time, "min");
        Quantity perMinute = sheet.Line(
            "Way in a minute",
            $"{length} ÷ {minutes}",
            length / minutes,
            metric ? "m/min" : "ft/min"
        );
        return sheet.Convert("Speed", perMinute, metric ? "km/h" : "mph");
    }

    /// <summary>Why a speed is not believed; null when it is.</summary>
    /// <param name="speed">The speed.</param>
    /// <param name="isOnFoot">Whether somebody walks.</param>
    /// <param name="field">The field at fault.</param>
    public static RateProblem? Doubt(Quantity speed, bool isOnFoot, string field)
    {
        decimal mph = speed.In("mph");
        string shown = $"{speed.To("mph")} ({speed.To("km/h")})";
        if (mph > MostAnywhere)
            return new RateProblem(
                field,
                $"this gives {shown}, faster than anybody sprays or spreads; check length, time and units"
            );
        return isOnFoot && mph > MostOnFoot
            ? new RateProblem(
                field,
                $"this gives {shown}; on foot? Check length, time and units, or say that you travel on wheels"
            )
            : null;
    }

    /// <summary>
    /// What must be assumed when the times of the runs lie apart by more than a fifth of the shortest; else nothing.
    /// </summary>
    /// <param name="times">The times, at least one, above zero.</param>
    public static ImmutableArray<string> Spread(ImmutableArray<Quantity> times)
    {
        decimal least = times.Min(time => time.InBase),
            most = times.Max(time => time.InBase);
        return most > least * (1 + MostSpread)
            ?
            [
                "The mean stands for the runs, though their times differ by more than 20 %. Walk it again until the "
                    + "runs agree.",
            ]
            : [];
    }

    /// <summary>A speed as a figure in both systems.</summary>
    public static RateResult Result(Quantity speed, string label = "Speed") =>
        new(
            "speed",
            label,
            speed,
            UnitSystem.Units(
                UnitSystem.IsMetric(speed) ? "mph" : "km/h",
                UnitSystem.IsMetric(speed) ? "m/min" : "ft/min"
            )
        );
}

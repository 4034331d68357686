using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Costs;

/// <summary>The work of putting a treatment on an area with one tool, step by step.</summary>
/// <param name="Tool">The tool.</param>
/// <param name="Steps">Hours of each step.</param>
internal sealed record ApplicationWork(string Tool, ImmutableArray<CostLine> Steps)
{
    private const decimal SquareMInAcre = 4046.8564224m;
    private const decimal SquareMInHa = 10_000;
    private const decimal MinutesInHour = 60;
    private const decimal SecondsInHour = 3600;

    /// <summary>Hours of all steps.</summary>
    public Span Hours => Steps.Sum();

    /// <summary>The work with a tool. What is spent for each use is spent once, however small the area.</summary>
    /// <param name="tool">The tool.</param>
    /// <param name="site">The area.</param>
    /// <param name="knowledge">Where all working times stand.</param>
    public static ApplicationWork Of(string tool, CostSite site, KnowledgeBase knowledge)
    {
        WorkingTime Time(string id) => knowledge.WorkingTimes[id];
        return new ApplicationWork(
            tool,
            [
                Once("set-up", Time(WorkingTimeIds.Calibration)),
                .. Mixing(tool, site, Time),
                Going(tool, site, Time),
                Once("clean-up", Time(WorkingTimeIds.CleanUp)),
                Once("records", Time(WorkingTimeIds.Posting)),
            ]
        );
    }

    private static CostLine Once(string id, WorkingTime time)
    {
        Span minutes = time.Value!.Value;
        return new CostLine(
            id,
            time.Name,
            minutes.Times(1 / MinutesInHour),
            string.Create(CultureInfo.InvariantCulture, $"{minutes.Low:0.#} to {minutes.High:0.#} min, once")
        );
    }

    private static IEnumerable<CostLine> Mixing(string tool, CostSite site, Func<string, WorkingTime> time)
    {
        if (tool is not (ApplicationTools.Backpack or ApplicationTools.Boom))
            yield break;
        decimal holds = time(
            tool == ApplicationTools.Boom ? WorkingTimeIds.BoomTank : WorkingTimeIds.BackpackTank
        ).Value!.Value.Middle;
        Span litres = time(WorkingTimeIds.SprayVolume).Value!.Value.Times(site.GroundM2 / SquareMInHa);
        var tanks = new Span(Tanks(litres.Low, holds), Tanks(litres.High, holds));
        WorkingTime first = time(WorkingTimeIds.Mixing);
        Span mixed = first.Value!.Value,
            again = time(WorkingTimeIds.Refill).Value!.Value;
        var minutes = new Span(mixed.Low + ((tanks.Low - 1) * again.Low), mixed.High + ((tanks.High - 1) * again.High));
        yield return new CostLine(
            "mixing",
            first.Name,
            minutes.Times(1 / MinutesInHour),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{litres.Low:#,0} to {litres.High:#,0} litres in tanks of {holds:0.#}: {tanks.Low:0} to "
                    + $"{tanks.High:0}; "
                    + $"{mixed.Low:0.#} to {mixed.High:0.#} min for the first, {again.Low:0.#} to {again.High:0.#} for "
                    + $"each more"
            )
        );
    }

    private static decimal Tanks(decimal litres, decimal holds) => Math.Max(1, Math.Ceiling(litres / holds));

    private static CostLine Going(string tool, CostSite site, Func<string, WorkingTime> time)
    {
        if (tool == ApplicationTools.Spoon && site.Block is { } block)
        {
            WorkingTime dose = time(WorkingTimeIds.Spoon);
            Span seconds = dose.At(block.WidthCm.Value);
            return new CostLine(
                "application",
                dose.Name,
                seconds.Times(block.Pots.Value / SecondsInHour),
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"{block.Pots.Value:#,0} pots x {seconds.Low:0.#} to {seconds.High:0.#} s"
                )
            );
        }

        WorkingTime speed = time(ApplicationTools.SpeedOf(tool)!);
        Span acresAnHour = speed.Value!.Value;
        decimal acres = site.GroundM2 / SquareMInAcre;
        return new CostLine(
            "application",
            speed.Name,
            new Span(acres / acresAnHour.High, acres / acresAnHour.Low),
            string.Create(
                CultureInfo.InvariantCulture,
                $"{site.GroundM2:#,0.#} m², {acresAnHour.Low:0.##} to {acresAnHour.High:0.##} acres an hour"
            )
        );
    }
}

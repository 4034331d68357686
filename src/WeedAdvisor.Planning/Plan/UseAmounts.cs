using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Rates;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Products.Treatments;
using WeedAdvisor.Planning.Rates.Units;
using WeedAdvisor.Planning.Season.Programme;

namespace WeedAdvisor.Planning.Plan;

/// <summary>
/// What one use of a plan takes: product, tanks or doses, water. All of it comes from the sums of <c>rate</c>, so that
/// both say the same.
/// </summary>
public sealed record UseAmounts
{
    private const decimal LitresInMmOnSquareM = 1;

    /// <summary>The treatment's id.</summary>
    public required string Treatment { get; init; }

    /// <summary>The tool that it goes on with; null where the record names none.</summary>
    public required string? Tool { get; init; }

    /// <summary>
    /// The ground that the dose falls on, square metres: the beds, or with a spoon the mix in the pots.
    /// </summary>
    public required decimal GroundM2 { get; init; }

    /// <summary>The published rates that product was worked out for; empty where that could not be done.</summary>
    public ImmutableArray<RateAnswer> Products { get; init; } = [];

    /// <summary>
    /// Why no product is told, in the words of the rate sums; null where it is told.
    /// </summary>
    public string? NoProduct { get; init; }

    /// <summary>Tanks at the lowest rate, as <c>rate tank loads</c> has them; null where nothing is sprayed.</summary>
    public RateAnswer? Tanks { get; init; }

    /// <summary>The spray that the tanks are for, litres on a hectare; null where nothing is sprayed.</summary>
    public decimal? SprayLitresHa { get; init; }

    /// <summary>What a tank holds, litres; null where nothing is sprayed.</summary>
    public decimal? TankLitres { get; init; }

    /// <summary>
    /// Doses for one pot, as <c>rate product per-pot</c> has them; empty where nothing goes on with a spoon.
    /// </summary>
    public ImmutableArray<RateAnswer> Doses { get; init; } = [];

    /// <summary>Water to wash it in, litres on all beds; null where the record gives no depth.</summary>
    public Span? WaterLitres { get; init; }

    /// <summary>
    /// Product by the published rates: one for what is weighed and one for what is poured, where both are sold; empty
    /// where it is not told.
    /// </summary>
    public ImmutableArray<ProductRange> Ranges =>
        [
            .. Products
                .GroupBy(answer => answer["product"].Value.Dimension)
                .Select(answers => new ProductRange(Ends(answers, "product-per-area"), Ends(answers, "product"))),
        ];

    /// <summary>What one use of a plan takes.</summary>
    /// <param name="year">The year.</param>
    /// <param name="use">The use.</param>
    /// <param name="earlier">What the plan puts on before it: it counts in the limits of a year.</param>
    public static UseAmounts Of(YearCase year, PlannedUse use, IEnumerable<PlannedUse> earlier)
    {
        Treatment treatment = year.Knowledge.Treatments[use.Treatment];
        string? tool = WayCosting.CostOf(year, new WayPart(treatment, [use.Week])).Value?.Tool;
        decimal ground = TreatedGround.Of(year.Costed, tool).SquareM;
        VisitArea area = year.Area with
        {
            Past = [.. year.Area.Past ?? [], .. earlier.Select(one => one.DoneOn(one.Days.First))],
        };
        var site = new RateSite(year.Knowledge, area, use.Days.First);
        (ImmutableArray<RateAnswer> products, string? noProduct) = ProductOf(treatment, ground, site);
        var amounts = new UseAmounts
        {
            Treatment = treatment.Id,
            Tool = tool,
            GroundM2 = ground,
            Products = products,
            NoProduct = noProduct,
            WaterLitres = treatment.WaterInMm?.Times(LitresInMmOnSquareM * year.Costed.GroundM2),
        };
        return amounts.Ranges is [var first, ..] ? amounts.With(year, first.Rate) : amounts;
    }

    private UseAmounts With(YearCase year, RateRange rate)
    {
        if (Tool == ApplicationTools.Spoon)
            return this with
            {
                Doses =
                [
                    .. new[] { rate.Low, rate.High }
                        .Distinct()
                        .Select(one =>
                            Run(
                                "product",
                                "per-pot",
                                null,
                                ("rate", Typed(one)),
                                ("pot-width", Typed(year.Block.WidthCm.Value, "cm"))
                            ).Value
                        )
                        .OfType<RateAnswer>(),
                ],
            };
        if (Tool is not (ApplicationTools.Backpack or ApplicationTools.Boom))
            return this;
        KnowledgeBase knowledge = year.Knowledge;
        decimal spray = knowledge.WorkingTimes[WorkingTimeIds.SprayVolume].Value!.Value.Middle,
            tank =
                knowledge
                    .WorkingTimes[Tool == ApplicationTools.Boom ? WorkingTimeIds.BoomTank : WorkingTimeIds.BackpackTank]
                    .Value!
                    .Value
                    .Middle;
        return this with
        {
            SprayLitresHa = spray,
            TankLitres = tank,
            Tanks = Run(
                "tank",
                "loads",
                null,
                ("area", Typed(GroundM2, "m2")),
                ("spray-volume", Typed(spray, "L/ha")),
                ("tank", Typed(tank, "L")),
                ("rate", Typed(rate.Low))
            ).Value,
        };
    }

    private static RateRange Ends(IEnumerable<RateAnswer> answers, string id)
    {
        Quantity[] all = [.. answers.Select(answer => answer[id].Value)];
        return new RateRange(all.MinBy(one => one.InBase), all.MaxBy(one => one.InBase));
    }

    // Both ends of every published rate on an area; what the limits of a year no longer bear is left out.
    private static (ImmutableArray<RateAnswer> Answers, string? Problem) ProductOf(
        Treatment treatment,
        decimal ground,
        RateSite site
    )
    {
        ImmutableArray<PublishedRate> rates = PublishedRate.Of(treatment);
        string? problem = rates.IsEmpty ? "no rate is known here; only the label can give one" : null;
        var answers = ImmutableArray.CreateBuilder<RateAnswer>();
        for (int number = 0; number < rates.Length; number++)
        {
            if (rates[number].IsInWater)
                continue;
            foreach (string end in new[] { "low", "high" })
            {
                Outcome<RateAnswer, RateProblem> answer = Run(
                    "product",
                    "treatment",
                    site,
                    ("treatment", treatment.Id),
                    ("area", Typed(ground, "m2")),
                    ("published", (number + 1).ToString(CultureInfo.InvariantCulture)),
                    ("end", end)
                );
                if (answer.IsGood)
                    answers.Add(answer.Value);
                else
                    problem ??= answer.Refusals[0].Text;
            }
        }

        return (answers.ToImmutable(), answers.Count > 0 ? null : problem ?? "its rates are all for so much water");
    }

    private static string Typed(Quantity quantity) => Typed(quantity.Value, quantity.Unit.Symbol);

    private static string Typed(decimal value, string unit) =>
        string.Create(CultureInfo.InvariantCulture, $"{Figures.Of(value, 12)} {unit}");

    internal static Outcome<RateAnswer, RateProblem> Run(
        string group,
        string form,
        RateSite? site,
        params IEnumerable<(string Field, string Text)> typed
    ) =>
        RateForms
            .Groups.Single(one => one.Id == group)
            .Forms.Single(one => one.Id == form)
            .Run(typed.ToDictionary(one => one.Field, one => one.Text, StringComparer.Ordinal), site);
}

/// <summary>From one quantity to another that measures the same.</summary>
/// <param name="Low">The lower.</param>
/// <param name="High">The higher.</param>
public readonly record struct RateRange(Quantity Low, Quantity High);

/// <summary>A product by its published rates.</summary>
/// <param name="Rate">Product on an area.</param>
/// <param name="Product">Product on the whole ground.</param>
public readonly record struct ProductRange(RateRange Rate, RateRange Product);

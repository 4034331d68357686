using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Products.Treatments;

/// <summary>
/// Product of a treatment for an area, within its published rate, and what the use leaves of the yearly limits. Whether
/// the treatment may be used in the area at all is decided elsewhere.
/// </summary>
internal static class TreatmentRate
{
    private const int YearsFresh = 1;

    /// <summary>The form.</summary>
    public static RateForm Form { get; } =
        new(
            "product",
            "treatment",
            "Treatment at its published rate",
            "Product of a known treatment for an area. The published rate is kept at both ends, and this year's uses "
                + "of each active are"
                + " counted. It is not a label and not a permission: ask for advice first.",
            [
                new("treatment", "Treatment", new RateFieldKind.TreatmentId(), "Its id, as advice names it."),
                new("area", "Area to treat", Field.Ground(), "All ground that is covered, gaps between pots included."),
                new(
                    "published",
                    "Which published rate",
                    new RateFieldKind.Number(1, 20, IsWhole: true),
                    "Its number, when there are several; leave it blank to see them."
                )
                {
                    IsOptional = true,
                },
                new(
                    "end",
                    "End of the range",
                    Field.Choice(("low", "the low end"), ("high", "the high end")),
                    "In place of a rate; the low end is taken when nothing is entered."
                )
                {
                    IsOptional = true,
                },
                new(
                    "rate",
                    "Rate of product",
                    Field.Measure("lb/acre", "pt/acre", "fl-oz/acre", "kg/ha", "L/ha", "fl-oz/gal", "%"),
                    "The label's rate for this use."
                )
                {
                    IsOptional = true,
                },
                new(
                    "active",
                    "Rate of active ingredient",
                    ProductField.ActiveRate(),
                    "In place of the rate of product."
                )
                {
                    IsOptional = true,
                },
                new("spray", "Finished spray", Field.Liquid(), "For the whole area, when the rate is given in water.")
                {
                    IsOptional = true,
                },
            ],
            Work
        )
        {
            Example = Field.Example(("treatment", "prodiamine-granule"), ("area", "5000 ft2"), ("rate", "200 lb/acre")),
            NeedsKnowledge = true,
            MayReadArea = true,
        };

    private static Outcome<RateAnswer, RateProblem> Work(RateInputs inputs)
    {
        Treatment treatment = inputs.Site.Knowledge.Treatments[inputs.Word("treatment")];
        (PublishedRate? published, RateProblem? problem) = Choose(inputs, treatment);
        if (published is null)
            return problem!;
        var sheet = new WorkingSheet();
        (Quantity? product, problem) = ChosenRate.Of(sheet, inputs, published);
        if (product is not { } rate)
            return problem!;
        if (ProductField.DoubtRate("rate", rate) is { } absurd)
            return absurd;
        RateResult amount = OnArea.Amount(sheet, rate, inputs.Measure("area"), "product", "Product for the area");
        Quantity? active = published.ActiveInProduct is { } strength
            ? ToActive.Active(sheet, rate, strength, "Active ingredient on the area").To("kg/ha")
            : null;
        if (TooMuchActive(published, active) is { } tooMuch)
            return tooMuch;
        var year = new YearCheck(sheet, inputs.Site, treatment, active);
        if (year.Run() is { } refused)
            return refused;
        return new RateAnswer
        {
            Results =
            [
                ProductResults.PerArea("product-per-area", "Product", rate),
                amount,
                .. active is { } all ? new[] { Active(treatment, all) } : [],
                .. year.Results,
            ],
            Working = sheet.Lines,
            Notes = [$"Published rate: {published.Text}."],
            Assumed =
            [
                .. End(inputs),
                "The published rate stands in for the label; the label may say less or nothing of this use.",
                "Where strength and published figures differ, active ingredient is counted by the larger.",
                "Earlier uses count at the rate told with them, and at the highest published one where none is.",
            ],
            Cautions = [.. Cautions(inputs.Site, treatment, active), .. year.Cautions, .. ProductCautions.All],
            Sources = [.. published.Sources.Concat(year.Sources).Distinct(StringComparer.Ordinal)],
        };
    }

    private static (PublishedRate? Rate, RateProblem? Problem) Choose(RateInputs inputs, Treatment treatment)
    {
        if (treatment.Status != "current")
        {
            string status = inputs.Site.Knowledge.Vocabulary.GetValueOrDefault("status")?.TextOf(treatment.Status)
                ?? treatment.Status;
            return (null, new("treatment", $"{treatment.Name}: {status}; no rate is worked out for it"));
        }

        ImmutableArray<PublishedRate> rates = PublishedRate.Of(treatment);
        if (rates.IsEmpty)
            return (null, new("treatment", $"{treatment.Name}: no rate is known here; only the label can give one"));
        if (inputs.NumberOrNull("published") is { } number)
        {
            return number <= rates.Length
                ? (rates[(int)number - 1], null)
                : (null, new("published", FormattableString.Invariant($"there are only {rates.Length}: {All(rates)}")));
        }

        return rates is [var only]
            ? (only, null)
            : (null, new("published", $"say which of the published rates: {All(rates)}"));
    }

    private static string All(ImmutableArray<PublishedRate> rates) =>
        string.Join("; ", rates.Select((rate, i) => $"{(i + 1).ToString(CultureInfo.InvariantCulture)}: {rate.Text}"));

    private static IEnumerable<string> End(RateInputs inputs) =>
        inputs.Has("rate") || inputs.Has("active")
            ? []
            : [$"No rate was entered: the {inputs.WordOrNull("end") ?? "low"} end of the published rate was taken."];

    // A dose in water says nothing of how much goes on the ground; another published rate may.
    private static RateProblem? TooMuchActive(PublishedRate published, Quantity? active)
    {
        if (!published.IsInWater || active is not { } brought)
            return null;
        PublishedRate? limit = PublishedRate
            .Of(published.Treatment)
            .Where(rate => rate.MostActive is not null)
            .MaxBy(rate => rate.MostActive!.Value.InBase);
        return limit is not null && brought.InBase > limit.MostActive!.Value.InBase * 1.000000001m
            ? new("spray", $"so much spray brings {brought} of active; the published most is {limit.Text}")
            : null;
    }

    private static RateResult Active(Treatment treatment, Quantity all)
    {
        string label = treatment.Actives is [var only]
            ? $"Active ingredient, {only.Name}"
            : "Active ingredients together";
        return new("active", label, all, [UnitTable.Of("lb/acre"), UnitTable.Of("g/ha")]);
    }

    private static IEnumerable<string> Cautions(RateSite site, Treatment treatment, Quantity? active)
    {
        if (treatment.Label is { } label)
            yield return label.Line(site.Date ?? label.Read);
        yield return "Ask for advice on the area first: whether this may be used there is not decided here.";
        yield return "The rate here is a published one and not a label. Read the label for this site and crop before "
            + "you measure anything.";
        string[] recalled =
        [
            .. treatment.Memory.Where(field =>
                field is "rates" or "strength" or "yearly-limit-kg-ai-ha" or "uses-per-year" or "repeat-after-days"
            ),
        ];
        if (recalled.Length > 0)
            yield return $"From memory and not confirmed: {string.Join(", ", recalled)}.";
        if (active is null)
            yield return "No strength is known that fits this rate, so its active ingredient could not be counted.";
        if (site.Date is { } day && treatment.Checked.AddYears(YearsFresh) < day)
            yield return "These figures were last checked more than a year ago.";
        if (treatment.RestrictedUse)
            yield return "Only certified applicators may use it.";
        if (treatment.ProtectiveEquipment is { } equipment)
            yield return $"Wear at least: {equipment.TrimEnd('.')}.";
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>An attribute of a treatment with how it is read from the record.</summary>
/// <param name="Definition">Its name, shape and words.</param>
/// <param name="Read">What the record says.</param>
public sealed record TestableOfTreatment(AttributeDefinition Definition, Func<Treatment, Reading> Read)
{
    internal TestableOfTreatment(string name, AttributeShape shape, Func<Treatment, Reading> read)
        : this(new AttributeDefinition(name, shape), read) { }

    internal TestableOfTreatment(string name, AttributeShape shape, string words, Func<Treatment, Reading> read)
        : this(new AttributeDefinition(name, shape, words), read) { }
}

/// <summary>
/// Everything that a rule can test of a treatment's own record, in one table: the rule language and the facts are both
/// made from it. What tables rate of it is beside (<c>RatedWeeds</c>).
/// </summary>
public static class TreatmentTestables
{
    /// <summary>The attributes, in the order in which they are listed.</summary>
    public static ImmutableArray<TestableOfTreatment> All { get; } =
    [
        new("role", AttributeShape.Word, "list:role", one => Reading.Of(one.Role)),
        new("acts-on", AttributeShape.WordSet, "list:acts-on", one => Reading.Of(one.ActsOn)),
        new("applied", AttributeShape.WordSet, "list:application", one => Reading.Of(one.Applied)),
        new("formulation", AttributeShape.Word, "list:formulation", one => Reading.Of(one.Formulation)),
        new("reaches-crop", AttributeShape.Flag, one => Reading.Of(one.ReachesCrop)),
        new("allowed-under", AttributeShape.WordSet, "answers:cover", one => Reading.Of(one.AllowedUnder)),
        new("enclosed-use", AttributeShape.Word, "list:enclosed-use", one => Reading.Of(one.EnclosedUse)),
        new("crops-tolerant", AttributeShape.WordSet, "crops", one => Reading.Of(one.CropsTolerant)),
        new("crops-hurt", AttributeShape.WordSet, "crops", one => Reading.Of(one.CropsHurt)),
        FlagOrLabel("edible-ok", one => one.EdibleOk),
        FlagOrLabel("organic-ok", one => one.OrganicOk),
        OrLabel("wait-after-potting-days", one => one.WaitAfterPottingDays),
        OrLabel("wait-bare-root-days", one => one.WaitBareRootDays),
        OrLabel("days-before-covering", one => one.DaysBeforeCovering),
        new("not-at", AttributeShape.WordSet, "answers:growth-state", one => Reading.Of(one.NotAt)),
        new("volatile", AttributeShape.Word, "list:volatility", one => Reading.Of(one.Volatile)),
        new("root-inhibitor", AttributeShape.Flag, one => Reading.Of(one.RootInhibitor)),
        new("water-hazard", AttributeShape.Flag, one => Reading.Of(one.WaterHazard)),
        new("drift-hazard", AttributeShape.Flag, one => Reading.Of(one.DriftHazard)),
        new("restricted-use", AttributeShape.Flag, one => Reading.Of(one.RestrictedUse)),
        new("groups", AttributeShape.WordSet, "groups", one => Reading.Of(PastProduct.SitesOf(one))),
        new("sole-site", AttributeShape.Word, "groups", one => SoleSite(one)),
        new("actives", AttributeShape.WordSet, "actives", one => Reading.Of(PastProduct.ActivesOf(one))),
        new("residual-weeks-low", AttributeShape.Number, one => OrAbsent(one.ResidualWeeks?.Low)),
        new("residual-weeks-high", AttributeShape.Number, one => OrAbsent(one.ResidualWeeks?.High)),
        OrLabel("repeat-after-days", one => one.RepeatAfterDays),
        OrLabel("uses-per-year", one => one.UsesPerYear),
        new("registered-label", AttributeShape.Flag, one => Reading.Of(one.Label?.RegistrationNumber is not null)),
        new("status", AttributeShape.Word, "list:status", one => Reading.Of(one.Status)),
        new("withdrawn-in", AttributeShape.WordSet, Region.Countries, one => Reading.Of(one.WithdrawnIn)),
        new("signal-word", AttributeShape.Word, "list:signal-word", one =>
            one.SignalWord is { } word ? Reading.Of(word) : LabelTells(one, "signal-word")
        ),
        new("wants", AttributeShape.WordSet, "words:warmth|light", one => Reading.Of(one.Wants)),
        new("water-in", AttributeShape.Word, one =>
            Reading.Of(WateringIn.WordsOf(one) is { } water ? $"{water} (the label decides)" : "as its label says")
        ),
    ];

    // A mixture with an active of no known site has more than the one that is known.
    private static Reading SoleSite(Treatment treatment) =>
        PastProduct.SitesOf(treatment) is { Count: 1 } sites
        && treatment.Actives.All(active => sites.Contains(active.Group ?? ""))
            ? Reading.Of(sites)
            : Reading.Absent;

    // A figure that the record leaves out is not "no limit": only the label can tell, so it never clears a treatment.
    private static TestableOfTreatment OrLabel(string name, Func<Treatment, decimal?> value) =>
        new(name, AttributeShape.Number, treatment =>
            value(treatment) is { } number ? Reading.Of(number) : LabelTells(treatment, name)
        );

    private static TestableOfTreatment FlagOrLabel(string name, Func<Treatment, bool?> value) =>
        new(name, AttributeShape.Flag, treatment =>
            value(treatment) is { } flag ? Reading.Of(flag) : LabelTells(treatment, name)
        );

    private static Reading LabelTells(Treatment treatment, string field) =>
        Reading.NotKnown(Need.Record(treatment.Id, field));

    private static Reading OrAbsent(decimal? value) => value is { } number ? Reading.Of(number) : Reading.Absent;
}

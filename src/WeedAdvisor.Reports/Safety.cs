using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports;

/// <summary>What is said wherever a chemical is named. No rule and no option turns it off.</summary>
public static class Safety
{
    /// <summary>The standing lines.</summary>
    public static ImmutableArray<string> StandingLines { get; } =
    [
        "Read the label and follow it. The label is the law; this advice is not a label.",
        "Confirm that the product is registered for this site and this crop where you are.",
        "Leave it to a licensed applicator wherever the law or the label asks for one.",
        "Wear the protective equipment that the label names, and keep people out until its restricted-entry interval "
            + "ends.",
        "Test on a few plants first and wait for the result.",
    ];

    /// <summary>Whether the area's advice names a chemical anywhere.</summary>
    public static bool NamesTreatment(AreaAdvice area, KnowledgeBase knowledge) =>
        area
            .Clear.Select(action => action.Action)
            .Concat(area.Waiting.Select(action => action.Action))
            .Concat(area.Barred.Select(action => action.Action))
            .Concat(area.Conflicts.Select(conflict => conflict.Action))
            .Any(knowledge.Treatments.ContainsKey);

    /// <summary>
    /// What the record of a chemical says about handling it, and what has to be confirmed on its label.
    /// </summary>
    public static ImmutableArray<string> LinesFor(Names names, Treatment treatment, DateOnly day) =>
        LinesFor(names, treatment, day, fields =>
            $"confirm on the label: {string.Join(", ", fields.Select(Names.Field))} (from memory)"
        );

    /// <summary>
    /// The same in fewer words: of what has to be confirmed the gates are named, the rest is counted.
    /// </summary>
    public static ImmutableArray<string> BriefLinesFor(Names names, Treatment treatment, DateOnly day) =>
        LinesFor(names, treatment, day, Gates.ToConfirm);

    private static ImmutableArray<string> LinesFor(
        Names names,
        Treatment treatment,
        DateOnly day,
        Func<ImmutableArray<string>, string> confirm
    )
    {
        List<string> lines = [];
        if (treatment.RestrictedUse)
            lines.Add("restricted use: certified applicators only");
        lines.Add(treatment.SignalWord is { } signal ? $"signal word: {signal}" : "signal word: see the label");
        lines.Add($"restricted entry: {names.RestrictedEntry(treatment)}");
        lines.Add(
            treatment.ProtectiveEquipment is { } equipment
                ? $"protective equipment: {equipment.TrimEnd('.')}"
                : "protective equipment: see the label"
        );
        if (ToConfirm(treatment) is { IsEmpty: false } fields)
            lines.Add(confirm(fields));
        if (Checks.IsStale(treatment.Checked, day))
            lines.Add($"last checked {Checks.Told(treatment.Checked, day)}: check every value again");
        return [.. lines];
    }

    /// <summary>Fields of a record whose value is from memory and has to be confirmed, in ordinal order.</summary>
    public static ImmutableArray<string> ToConfirm(Record record) => [.. record.Memory.Order(StringComparer.Ordinal)];
}

using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Forms;

/// <summary>One entry of a form as it was typed and as it was read.</summary>
/// <param name="Field">The field.</param>
/// <param name="Typed">What was typed, or the field's usual value.</param>
/// <param name="IsUsual">Whether nothing was typed and the usual value was taken.</param>
/// <param name="Quantities">What was read of a measure or a number; empty for a word.</param>
/// <param name="Word">What was read of a choice or a treatment; null for a measure or a number.</param>
public sealed record RateEntry(
    RateField Field,
    string Typed,
    bool IsUsual,
    ImmutableArray<Quantity> Quantities,
    string? Word
)
{
    /// <summary>
    /// The entries as the form reads them, in the order of its fields, without those that were left out.
    /// </summary>
    /// <param name="form">The form.</param>
    /// <param name="typed">Text by field id.</param>
    /// <param name="site">The knowledge and the area; null for forms that need none.</param>
    /// <exception cref="ArgumentException">A field is typed that the form has not, or an entry cannot be
    /// read.</exception>
    public static ImmutableArray<RateEntry> AllOf(
        RateForm form,
        IReadOnlyDictionary<string, string> typed,
        RateSite? site = null
    )
    {
        (RateInputs? inputs, _) = FormReader.Read(form, typed, site);
        if (inputs is null)
            throw new ArgumentException("an entry cannot be read", nameof(typed));
        return [.. form.Fields.Where(field => inputs.Has(field.Id)).Select(field => Of(field, typed, inputs))];
    }

    /// <summary>What is wrong with the entries taken one by one; the sum is not done.</summary>
    /// <param name="form">The form.</param>
    /// <param name="typed">Text by field id.</param>
    /// <param name="site">The knowledge and the area; null for forms that need none.</param>
    /// <exception cref="ArgumentException">A field is typed that the form has not.</exception>
    public static ImmutableArray<RateProblem> ProblemsOf(
        RateForm form,
        IReadOnlyDictionary<string, string> typed,
        RateSite? site = null
    ) => FormReader.Read(form, typed, site).Problems;

    private static RateEntry Of(RateField field, IReadOnlyDictionary<string, string> typed, RateInputs inputs)
    {
        string? text = typed.GetValueOrDefault(field.Id);
        bool isUsual = string.IsNullOrWhiteSpace(text);
        string shown = isUsual ? field.Default ?? "" : text!.Trim();
        return field.Kind switch
        {
            RateFieldKind.Measure => new RateEntry(field, shown, isUsual, inputs.List(field.Id), null),
            RateFieldKind.Number => new RateEntry(
                field,
                shown,
                isUsual,
                [Quantity.Number(inputs.Number(field.Id))],
                null
            ),
            _ => new RateEntry(field, shown, isUsual, [], inputs.Word(field.Id)),
        };
    }
}

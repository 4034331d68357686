using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Units;

namespace WeedAdvisor.Planning.Rates.Forms;

/// <summary>Reads what was typed in a form and holds it against what its fields allow.</summary>
internal static class FormReader
{
    /// <summary>The entries, or all that is wrong with them in the order of the fields.</summary>
    public static (RateInputs? Inputs, ImmutableArray<RateProblem> Problems) Read(
        RateForm form,
        IReadOnlyDictionary<string, string> typed,
        RateSite? site
    )
    {
        if (typed.Keys.Except(form.Fields.Select(field => field.Id)).FirstOrDefault() is { } stranger)
            throw new ArgumentException($"the form {form.Group} {form.Id} has no field '{stranger}'", nameof(typed));
        var values = new Dictionary<string, object>(StringComparer.Ordinal);
        var problems = ImmutableArray.CreateBuilder<RateProblem>();
        foreach (RateField field in form.Fields)
        {
            string? text = typed.GetValueOrDefault(field.Id);
            if (string.IsNullOrWhiteSpace(text))
                text = field.Default;
            if (text is null)
            {
                if (field.IsRequired)
                    problems.Add(new RateProblem(field.Id, $"not entered: {Lowered(field.Label)}{Such(field.Kind)}"));
                continue;
            }

            (object? value, string? problem) = Value(field.Kind, text, site);
            if (value is null)
                problems.Add(new RateProblem(field.Id, problem!));
            else
                values.Add(field.Id, value);
        }

        return problems.Count > 0 ? (null, problems.ToImmutable()) : (new RateInputs(values, site), []);
    }

    private static string Lowered(string label) =>
        label.Length > 1 && char.IsLower(label[1]) ? char.ToLowerInvariant(label[0]) + label[1..] : label;

    private static string Such(RateFieldKind kind) =>
        kind switch
        {
            RateFieldKind.Measure measure => $" (in a unit such as {Names(measure.Units)})",
            RateFieldKind.Choice choice => $" ({string.Join(", ", choice.Words.Select(word => word.Key))})",
            _ => "",
        };

    private static (object? Value, string? Problem) Value(RateFieldKind kind, string text, RateSite? site) =>
        kind switch
        {
            RateFieldKind.Measure measure => Quantities(measure, text),
            RateFieldKind.Number number => Number(number, text),
            RateFieldKind.Choice choice => OneOf([.. choice.Words.Select(word => word.Key)], text, "word"),
            RateFieldKind.TreatmentId => OneOf([.. site?.Knowledge.Treatments.Keys ?? []], text, "treatment"),
            _ => throw new InvalidOperationException($"no reader for {kind}"),
        };

    private static (object? Value, string? Problem) Quantities(RateFieldKind.Measure measure, string text)
    {
        string names = Names(measure.Units);
        (ImmutableArray<Quantity> values, string? problem) = measure.IsList
            ? QuantityReader.ReadList(text, measure.Fallback, names)
            : Single(QuantityReader.Read(text, measure.Fallback, names));
        if (problem is not null)
            return (null, problem);
        foreach (Quantity value in values)
        {
            if (Doubt(value, measure, names) is { } doubt)
                return (null, doubt);
        }

        return (values, null);
    }

    private static (ImmutableArray<Quantity>, string?) Single((Quantity? Value, string? Problem) read) =>
        read.Value is { } value ? ([value], null) : ([], read.Problem);

    private static string? Doubt(Quantity value, RateFieldKind.Measure measure, string names)
    {
        if (!measure.Units.Any(unit => unit.Dimension == value.Dimension))
            return $"{value.Unit} does not measure this; use a unit such as {names}";
        if (value.Value < 0)
            return $"{value} is below zero; it must be above zero";
        if (value.Value == 0 && !measure.MayBeZero)
            return $"it is zero; it must be above zero";
        if (measure.Most is { } most && most.Dimension == value.Dimension && value.InBase > most.InBase)
            return $"{value} is more than can be believed ({most} at most); check the number and its unit";
        return
            measure.Least is { } least
            && least.Dimension == value.Dimension
            && value.InBase < least.InBase
            && value.Value != 0
            ? $"{value} is less than can be believed ({least} at least); check the number and its unit"
            : null;
    }

    private static (object? Value, string? Problem) Number(RateFieldKind.Number kind, string text)
    {
        const NumberStyles Plain = NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign;
        string kinds = kind.IsWhole ? "whole number" : "number";
        string expected = FormattableString.Invariant($"a {kinds} from {kind.Least} to {kind.Most}");
        if (!decimal.TryParse(text.Trim(), Plain, CultureInfo.InvariantCulture, out decimal value))
            return (null, $"'{text.Trim()}' is not {expected}");
        bool fits = value >= kind.Least && value <= kind.Most && (!kind.IsWhole || value == decimal.Truncate(value));
        return fits ? (value, null) : (null, $"{text.Trim()} is not {expected}");
    }

    private static (object? Value, string? Problem) OneOf(ImmutableArray<string> words, string text, string what)
    {
        string word = text.Trim();
        if (words.Contains(word))
            return (word, null);
        string hint = NearestWord.Of(word, words) is { } near ? $"; did you mean '{near}'?" : "";
        string all = words.Length <= 12 ? $" ({string.Join(", ", words)})" : "";
        return (null, $"no {what} '{word}'{hint}{all}");
    }

    private static string Names(ImmutableArray<Unit> units) => string.Join(", ", units);
}

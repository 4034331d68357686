using WeedAdvisor.Planning.Rates.Forms;

namespace WeedAdvisor.Reports.Rates;

/// <summary>
/// What may be entered in a field, in words: the same at the command line, in questions and on the screen.
/// </summary>
public static class FieldText
{
    /// <summary>What is to be written, such as <c>unit: fl-oz, gal, mL or L; several with commas between</c>.</summary>
    public static string Expected(RateField field) =>
        field.Kind switch
        {
            RateFieldKind.Measure measure => Units(measure),
            RateFieldKind.Number number => Numbers(number),
            RateFieldKind.Choice choice => string.Join(", ", choice.Words.Select(Word)),
            _ => "the id of a treatment",
        };

    /// <summary>What happens when nothing is entered; null when it must be entered.</summary>
    public static string? LeftOut(RateField field) =>
        field switch
        {
            { Default: { } usual } => $"{usual} when left out",
            { IsOptional: true } => "may be left out",
            _ => null,
        };

    /// <summary>Both in one: what is to be written and what happens when it is not.</summary>
    public static string Hint(RateField field) =>
        LeftOut(field) is { } leftOut ? $"{Expected(field)}; {leftOut}" : Expected(field);

    /// <summary>A placeholder for the value, such as <c>NUMBER UNIT</c>.</summary>
    public static string Placeholder(RateField field) =>
        field.Kind switch
        {
            RateFieldKind.Measure => "NUMBER UNIT",
            RateFieldKind.Number => "NUMBER",
            RateFieldKind.Choice => "WORD",
            _ => "ID",
        };

    private static string Units(RateFieldKind.Measure measure)
    {
        string[] units = [.. measure.Units.Select(unit => unit.Symbol)];
        string named = units is [.. { Length: > 0 } first, var last]
            ? $"{string.Join(", ", first)} or {last}"
            : units[0];
        string several = measure.IsList ? "; several with commas between" : "";
        return measure.Fallback is { } fallback
            ? $"unit: {named}; {fallback} when no unit is written{several}"
            : $"unit: {named}{several}";
    }

    private static string Numbers(RateFieldKind.Number number) =>
        FormattableString.Invariant(
            $"a {(number.IsWhole ? "whole number" : "number")} from {number.Least} to {number.Most}"
        );

    private static string Word(KeyValuePair<string, string> word) => $"{word.Key} ({word.Value})";
}

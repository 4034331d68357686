using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Labels;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Interview.Desks.Labels;

/// <summary>A label as it is typed, field by field. What is blank was not read.</summary>
/// <param name="Treatment">The treatment that the product is.</param>
/// <param name="Typed">Text by key of the field, to the letter; blank ones are not held.</param>
public sealed record LabelDraft(string Treatment, ImmutableSortedDictionary<string, string> Typed)
{
    /// <summary>Nothing typed yet.</summary>
    public static LabelDraft Begin(string treatment) =>
        new(treatment, ImmutableSortedDictionary.Create<string, string>(StringComparer.Ordinal));

    /// <summary>A label of the book, as it would be typed.</summary>
    public static LabelDraft Of(ProductLabel label)
    {
        LabelDraft draft = Begin(label.Treatment);
        foreach (LabelField field in LabelField.All)
            draft = draft.With(field, Text(label, field));
        return draft;
    }

    /// <summary>The same with a field typed.</summary>
    public LabelDraft With(LabelField field, string text) =>
        this with
        {
            Typed = string.IsNullOrWhiteSpace(text) ? Typed.Remove(field.Key) : Typed.SetItem(field.Key, text),
        };

    /// <summary>What is typed in a field; empty when nothing is.</summary>
    public string this[LabelField field] => Typed.GetValueOrDefault(field.Key, "");

    /// <summary>
    /// The value of a field as the label book writes it; null when it was not read. What can't be read is quoted, so
    /// that the reader of the book refuses it in its own words.
    /// </summary>
    /// <param name="field">The field.</param>
    /// <param name="today">The day that <c>today</c> means.</param>
    public string? Yaml(LabelField field, DateOnly today)
    {
        string text = this[field].Trim();
        if (text.Length == 0)
            return field.Key == LabelField.Read.Key ? CalendarDay.Text(today) : null;
        return field.Kind switch
        {
            LabelFieldKind.Day => TypedAnswer.ReadDay(text, today) is { } day
                ? CalendarDay.Text(day)
                : ScalarText.Quoted(text),
            LabelFieldKind.Number => TypedAnswer.ReadFigure(text) is { } figure
                ? Figure(figure)
                : ScalarText.Quoted(text),
            LabelFieldKind.Word => Word(text),
            LabelFieldKind.Words => $"[{string.Join(", ", Parts(text).Select(Word))}]",
            LabelFieldKind.Rates => RateWords.Yaml(text) ?? ScalarText.Quoted(text),
            _ => ScalarText.Of(text),
        };
    }

    /// <summary>What the label book holds of it, in the order in which it is written.</summary>
    /// <param name="today">The day that <c>today</c> means.</param>
    public IEnumerable<LabelEdit> Values(DateOnly today) =>
        LabelField
            .All.Select(field => new LabelEdit(field.Key, Yaml(field, today)))
            .Where(value => value.Yaml is not null)
            .Prepend(new LabelEdit("treatment", Treatment));

    private static string Text(ProductLabel label, LabelField field) =>
        field.Key switch
        {
            "name" => label.Name,
            "read" => CalendarDay.Text(label.Read),
            "registration-number" => label.RegistrationNumber ?? "",
            "entry-hours" => Figure(label.EntryHours),
            "sites" => string.Join(", ", label.Sites),
            "crops" => string.Join(", ", label.Crops),
            "wait-after-potting-days" => Figure(label.WaitAfterPottingDays),
            "wait-bare-root-days" => Figure(label.WaitBareRootDays),
            "days-before-covering" => Figure(label.DaysBeforeCovering),
            "repeat-after-days" => Figure(label.RepeatAfterDays),
            "uses-per-year" => Figure(label.UsesPerYear),
            "yearly-limit-kg-ai-ha" => Figure(label.YearlyLimitKgAiHa),
            "water-in-within-days" => Figure(label.WaterInWithinDays),
            "signal-word" => label.SignalWord ?? "",
            "rates" => RateWords.Of(label.Rates),
            _ => throw new ArgumentOutOfRangeException(nameof(field), field.Key, "not a field of a label"),
        };

    private static string[] Parts(string text) =>
        text.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);

    private static string Word(string text) =>
        NearWords.Fold(text) is { Length: > 0 } word ? word : ScalarText.Quoted(text);

    private static string Figure(decimal? number) =>
        number is { } figure ? figure.ToString("0.######", CultureInfo.InvariantCulture) : "";
}

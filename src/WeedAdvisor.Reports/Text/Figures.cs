using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Reports.Text;

/// <summary>Numbers and strengths in plain words, the same in every culture.</summary>
public static class Figures
{
    /// <summary>A number between 0 and 1 with two decimals.</summary>
    public static string Share(double value) => value.ToString("0.00", CultureInfo.InvariantCulture);

    /// <summary>A share as a whole percentage.</summary>
    public static string Percent(double share) => (share * 100).ToString("0", CultureInfo.InvariantCulture) + " %";

    /// <summary>A number without needless decimals.</summary>
    public static string Plain(decimal value) => value.ToString("#,0.##", CultureInfo.InvariantCulture);

    /// <summary>US dollars: cents only where they matter.</summary>
    public static string Dollars(decimal usd) =>
        "$" + usd.ToString(usd < 10 ? "0.00" : "#,0", CultureInfo.InvariantCulture);

    /// <summary>A published range: one number when both ends agree.</summary>
    public static string Range(decimal low, decimal high) =>
        low == high ? Plain(low) : $"{Plain(low)} to {Plain(high)}";

    /// <summary>A published range.</summary>
    public static string Range(Span span) => Range(span.Low, span.High);

    /// <summary>A date as <c>YYYY-MM-DD</c>.</summary>
    public static string Day(DateOnly date) => CalendarDay.Text(date);

    /// <summary>A count with its noun.</summary>
    public static string Count(int count, string one, string many) =>
        string.Create(CultureInfo.InvariantCulture, $"{count} {(count == 1 ? one : many)}");

    /// <summary>A date as people write it, such as <c>2 June 2026</c>.</summary>
    public static string LongDay(DateOnly date) => date.ToString("d MMMM yyyy", CultureInfo.InvariantCulture);

    /// <summary>
    /// A text whose sentences start with a capital: rules start some with a name as its record writes it.
    /// </summary>
    public static string Sentence(string text) => string.Create(text.Length, text, static (letters, from) =>
        {
            from.CopyTo(letters);
            for (int i = 0; i < letters.Length; i++)
            {
                if (i == 0 || (i > 1 && letters[i - 1] == ' ' && letters[i - 2] == '.'))
                    letters[i] = char.ToUpperInvariant(letters[i]);
            }
        });

    /// <summary>How strong a case for an action is.</summary>
    public static string CaseWord(double certainty) =>
        certainty switch
        {
            >= Strengths.Decisive => "very strong",
            >= Strengths.Strong => "strong",
            >= Strengths.Fair => "fair",
            >= Strengths.Weak => "weak",
            _ => "slight",
        };

    /// <summary>How sure a finding is.</summary>
    public static string FindingWord(double certainty) =>
        certainty switch
        {
            >= 0.9 => "almost certain",
            >= 0.7 => "likely",
            >= 0.4 => "quite possible",
            _ => "a slight sign",
        };

    /// <summary>How the worth of an action comes about.</summary>
    public static string Worth(ClearAction action) =>
        $"Worth {Share(action.Worth)} = case {Share(action.Certainty)} ({CaseWord(action.Certainty)})"
        + $" x effect {Share(action.EffectCounted)}"
        + (action.Effect.Reduction is null ? " (no figure: the least of its group)" : "");

    /// <summary>Keys of sources in brackets; nothing when there are none.</summary>
    public static string Keys(ImmutableArray<string> sources) =>
        sources.IsEmpty ? "" : $" [{string.Join(", ", sources)}]";

    /// <summary>The strength with which a reason argues.</summary>
    public static string Strength(Reason reason) => Share(reason.Certainty);
}

using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Schema;

/// <summary>Single values: ids, texts, words, numbers, flags, dates.</summary>
internal sealed partial class MappingReader
{
    // Stands in for a date that could not be read, so that what else is wrong is found too; there is room to count on
    // both sides.
    private static readonly DateOnly s_someDay = new(2000, 1, 1);

    private const string NumberForm = "a number such as 12, 0.5 or -3";

    /// <summary>A required id.</summary>
    public string Id(string key = "id")
    {
        if (Scalar(Required(key), "an id such as 'hairy-bittercress'") is not { } node)
            return "";
        if (!ScalarGrammar.IsId(node.Text))
            Context.Report(node, node.Described, "an id: lower-case words joined by hyphens");
        return node.Text;
    }

    /// <summary>A required text.</summary>
    public string Text(string key) => Scalar(Required(key), "text")?.Text ?? "";

    /// <summary>A text, or null when the key is missing.</summary>
    public string? OptionalText(string key) =>
        Optional(key) is { } node ? Scalar(node, "text, or no such key")?.Text : null;

    /// <summary>A required word from the words of the notation (see <see cref="Lexicon"/>).</summary>
    public string Word(string key, string notation) => Word(Required(key), notation) ?? "";

    /// <summary>A word from the words of the notation, or null when the key is missing.</summary>
    public string? OptionalWord(string key, string notation) => Word(Optional(key), notation);

    /// <summary>A required number between the limits.</summary>
    public decimal Number(string key, decimal low, decimal high) => Number(Required(key), low, high) ?? 0;

    /// <summary>A number between the limits, or null when the key is missing.</summary>
    public decimal? OptionalNumber(string key, decimal low, decimal high) => Number(Optional(key), low, high);

    /// <summary>A required certainty: a word of <see cref="Strengths"/>, or a number above 0 and at most 1.</summary>
    public double Certainty(string key)
    {
        if (Required(key) is not { } node)
            return 1;
        if (node is ScalarNode { Text: var word } && Strengths.Of(word) is { } strength)
            return strength;
        if (node is ScalarNode { Text: [>= 'a' and <= 'z', ..] other })
        {
            Context.Report(
                node,
                $"'{other}'",
                $"{string.Join(", ", Strengths.Words)}, or a number above 0 and at most 1"
            );
            return 1;
        }

        if (Number(node, 0, 1) is not { } certainty)
            return 1;
        if (certainty == 0)
            Context.Report(node, "the certainty 0", "a certainty above 0 and at most 1");
        return (double)certainty;
    }

    /// <summary>A required flag, <c>true</c> or <c>false</c>.</summary>
    public bool Flag(string key) => Word(Required(key), "words:true|false") == "true";

    /// <summary>A flag, or null when the key is missing.</summary>
    public bool? FlagIfKnown(string key) => Optional(key) is { } node ? Word(node, "words:true|false") == "true" : null;

    /// <summary>A flag that is off when the key is missing.</summary>
    public bool OptionalFlag(string key) => Word(Optional(key), "words:true|false") == "true";

    /// <summary>A required date.</summary>
    public DateOnly Date(string key) => Date(Required(key)) ?? s_someDay;

    /// <summary>A date, or null when the key is missing.</summary>
    public DateOnly? OptionalDate(string key) => Date(Optional(key));

    /// <summary>An hour of the day, or null when the key is missing.</summary>
    public TimeOnly? OptionalTime(string key)
    {
        if (Scalar(Optional(key), "an hour such as 14:30") is not { } scalar)
            return null;
        if (ScalarGrammar.TryTime(scalar.Text, out TimeOnly time))
            return time;
        Context.Report(scalar, scalar.Described, "an hour, HH:MM");
        return null;
    }

    /// <summary>A day of any year, <c>MM-DD</c>, or null when the key is missing.</summary>
    public string? OptionalDayOfYear(string key)
    {
        if (Scalar(Optional(key), "a day such as 04-15") is not { } node)
            return null;
        if (!ScalarGrammar.IsDayOfYear(node.Text))
            Context.Report(node, node.Described, "a day of the year, MM-DD");
        return node.Text;
    }

    private string? Word(Node? node, string notation)
    {
        if (Scalar(node, Context.Lexicon.Of(notation)?.Expected ?? "a word") is not { } scalar)
            return null;
        Context.CheckWord(scalar, scalar.Text, Context.Lexicon.Of(notation));
        return scalar.Text;
    }

    private decimal? Number(Node? node, decimal low, decimal high)
    {
        if (Scalar(node, NumberForm) is not { } scalar)
            return null;
        if (!ScalarGrammar.TryNumber(scalar.Text, out decimal number))
        {
            Context.Report(scalar, scalar.Described, NumberForm);
            return null;
        }

        if (number < low || number > high)
            Context.Report(scalar, scalar.Text, ScalarGrammar.Between(low, high));
        return number;
    }

    private DateOnly? Date(Node? node)
    {
        if (Scalar(node, "a date") is not { } scalar)
            return null;
        if (ScalarGrammar.TryDate(scalar.Text, out DateOnly date))
            return date;
        Context.Report(scalar, scalar.Described, CalendarDay.ExpectedInsteadOf(scalar.Text));
        return null;
    }

    // A missing key has been reported, or may be missing; a key without a value never may.
    private ScalarNode? Scalar(Node? node, string expected)
    {
        if (node is null)
            return null;
        if (node is ScalarNode { Text.Length: > 0 } scalar && !string.IsNullOrWhiteSpace(scalar.Text))
            return scalar;
        Context.Report(node, node.Described, expected);
        return null;
    }
}

using System.Collections.Immutable;
using System.Globalization;
using System.Text.RegularExpressions;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Words;

/// <summary>Reads answers that were typed: a number from the list, a word, a figure, a date.</summary>
public static partial class TypedAnswer
{
    private static readonly string[] s_notKnown =
    [
        "-",
        "don't know",
        "dont know",
        "do not know",
        "not known",
        "not-known",
        "unknown",
    ];

    /// <summary>Whether the text says that the grower does not know.</summary>
    public static bool IsNotKnown(string text) =>
        s_notKnown.Contains(text.Trim().Replace('’', '\''), StringComparer.OrdinalIgnoreCase);

    /// <summary>Reads an answer to a question that takes words, a number or a date.</summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="question">The question.</param>
    /// <param name="text">What was typed.</param>
    /// <param name="visit">The day of the visit.</param>
    public static Typed<Answer> Read(KnowledgeBase knowledge, Question question, string text, DateOnly visit)
    {
        if (IsNotKnown(text))
            return Typed<Answer>.As(new Answer.NotKnown());
        return question.Kind switch
        {
            QuestionKind.Number => ReadNumber(question, text),
            QuestionKind.Date => ReadDate(question, text, visit),
            QuestionKind.Name => ReadName(text),
            QuestionKind.Chemicals => ReadChemicals(text),
            _ when Answering.TakesSeveral(question) => ReadSeveral(Answering.ChoicesOf(knowledge, question), text),
            _ => ReadOne(Answering.ChoicesOf(knowledge, question), text),
        };
    }

    // Capitals and blanks are the grower's; in the file a name is lower-case words joined by hyphens.
    private static Typed<Answer> ReadName(string text)
    {
        char[] plain = [.. text.Trim().ToLowerInvariant().Select(c => char.IsAsciiLetterOrDigit(c) ? c : '-')];
        string name = string.Join('-', new string(plain).Split('-', StringSplitOptions.RemoveEmptyEntries));
        return name.Length > 0
            ? Typed<Answer>.As(new Answer.Words(WordSet.Of([name])))
            : Typed<Answer>.Wrong("Give a short name in letters and digits, such as house-2.");
    }

    // Any name is taken: whether it is known the page says. The comma in 2,4-D parts nothing.
    private static Typed<Answer> ReadChemicals(string text)
    {
        string[] parts = [.. PartingComma().Split(text).Select(part => part.Trim()).Where(part => part.Length > 0)];
        if (parts is [var only] && only.Equals("none", StringComparison.OrdinalIgnoreCase))
            return Typed<Answer>.As(new Answer.Words(WordSet.Empty));
        string?[] words = [.. parts.Select(ChemicalWords.Of)];
        return words.Length > 0 && Array.TrueForAll(words, word => word is not null)
            ? Typed<Answer>.As(new Answer.Words(WordSet.Of(words.OfType<string>())))
            : Typed<Answer>.Wrong(
                "Give the active that stands on the bag, several with commas between, or none; a name has at most "
                    + $"{ChemicalWords.LongestName} letters."
            );
    }

    [GeneratedRegex(@"(?<!\d),|,(?!\d)")]
    private static partial Regex PartingComma();

    /// <summary>The one answer that a number or word picks from a list.</summary>
    public static Typed<AnswerChoice> Pick(ImmutableArray<AnswerChoice> choices, string text)
    {
        string typed = text.Trim();
        if (typed.Length > 0 && typed.All(char.IsAsciiDigit))
        {
            return
                int.TryParse(typed, NumberStyles.None, CultureInfo.InvariantCulture, out int at)
                && at >= 1
                && at <= choices.Length
                ? Typed<AnswerChoice>.As(choices[at - 1])
                : Typed<AnswerChoice>.Wrong($"There is no answer {typed}; give a number from 1 to {choices.Length}.");
        }

        string folded = NearWords.Fold(typed);
        if (folded.Length == 0)
            return Typed<AnswerChoice>.Wrong("Give the number or the word of an answer.");
        // A bare yes or no is never the beginning of another answer: "no" is not "nothing".
        if (folded is "yes" or "no" && !choices.Any(c => c.Id == folded || NearWords.Fold(c.Text) == folded))
            return Typed<AnswerChoice>.Wrong(
                $"This is not a question of yes or no; give a number from 1 to {choices.Length}, or a word."
            );
        return Single(choices.Where(c => c.Id == folded || NearWords.Fold(c.Text) == folded))
            ?? Single(choices.Where(c => Starts(c.Id, folded) || Starts(NearWords.Fold(c.Text), folded)))
            ?? Single(
                choices.Where(c =>
                    NearWords.HasWords(c.Id, folded) || NearWords.HasWords(NearWords.Fold(c.Text), folded)
                )
            )
            ?? Typed<AnswerChoice>.Wrong(NoSuch(choices, typed));
    }

    /// <summary>Reads a date: year, month, day, or the words today and yesterday.</summary>
    public static DateOnly? ReadDay(string text, DateOnly visit) =>
        text.Trim().ToLowerInvariant() switch
        {
            "today" => visit,
            "yesterday" => visit.AddDays(-1),
            string other => CalendarDay.Typed(other),
        };

    /// <summary>Reads a plain number; null when it is none.</summary>
    public static decimal? ReadFigure(string text) =>
        decimal.TryParse(
            text.Trim(),
            NumberStyles.AllowDecimalPoint | NumberStyles.AllowLeadingSign,
            CultureInfo.InvariantCulture,
            out decimal value
        )
            ? value
            : null;

    private static Typed<Answer> ReadNumber(Question question, string text)
    {
        string figure = text.Trim();
        if (question.Unit is { } unit && figure.EndsWith(unit, StringComparison.OrdinalIgnoreCase))
            figure = figure[..^unit.Length];
        if ((ReadFigure(figure) ?? NamedSize.Find(question.Sizes, text)?.Value) is not { } value)
        {
            string hint = figure.Contains(',') ? ", with a point for the decimal" : "";
            return Typed<Answer>.Wrong(
                $"\"{text.Trim()}\" is not a number. Give {Answering.Expected(question)}{hint}."
            );
        }

        return question.Between is { } between && (value < between.Low || value > between.High)
            ? Typed<Answer>.Wrong($"{Answering.Number(value)} is out of range. Give {Answering.Expected(question)}.")
            : Typed<Answer>.As(new Answer.Number(value));
    }

    private static Typed<Answer> ReadDate(Question question, string text, DateOnly visit)
    {
        if (ReadDay(text, visit) is not { } day)
            return Typed<Answer>.Wrong($"\"{text.Trim()}\" is not a date. Give {Answering.Expected(question)}.");
        return question.PastOnly && day > visit
            ? Typed<Answer>.Wrong(
                $"{Answering.Date(day)} lies after the visit of {Answering.Date(visit)}. Give "
                    + $"{Answering.Expected(question)}."
            )
            : Typed<Answer>.As(new Answer.Date(day));
    }

    private static Typed<Answer> ReadOne(ImmutableArray<AnswerChoice> choices, string text)
    {
        Typed<AnswerChoice> picked = Pick(choices, text);
        return picked.Value is { } choice
            ? Typed<Answer>.As(new Answer.Words(WordSet.Of(choice.Id)))
            : Typed<Answer>.Wrong(picked.Error!);
    }

    private static Typed<Answer> ReadSeveral(ImmutableArray<AnswerChoice> choices, string text)
    {
        string[] parts = text.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        string[] spaced = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        if (parts.Length == 1 && spaced.All(part => part.All(char.IsAsciiDigit)))
            parts = spaced;
        if (parts is ["none"] && !choices.Any(c => c.Id == "none"))
            return Typed<Answer>.As(new Answer.Words(WordSet.Empty));
        if (parts.Length == 0)
            return Typed<Answer>.Wrong("Give numbers or words of answers, with commas between, or none.");
        var words = new List<string>();
        foreach (string part in parts)
        {
            Typed<AnswerChoice> picked = Pick(choices, part);
            if (picked.Value is null)
                return Typed<Answer>.Wrong(picked.Error!);
            words.Add(picked.Value.Id);
        }

        return Typed<Answer>.As(new Answer.Words(WordSet.Of(words)));
    }

    /// <summary>The only one; an error naming them when there are several; null when there is none.</summary>
    private static Typed<AnswerChoice>? Single(IEnumerable<AnswerChoice> found)
    {
        AnswerChoice[] several = [.. found.Take(4)];
        return several.Length switch
        {
            0 => null,
            1 => Typed<AnswerChoice>.As(several[0]),
            _ => Typed<AnswerChoice>.Wrong(
                "That fits several answers: "
                    + string.Join(", ", several.Take(3).Select(c => c.Id))
                    + (several.Length > 3 ? " and more." : ".")
            ),
        };
    }

    private static string NoSuch(ImmutableArray<AnswerChoice> choices, string typed)
    {
        string? near = NearWords.Nearest(typed, choices.Select(c => c.Id).Concat(choices.Select(c => c.Text)));
        return near is null
            ? $"\"{typed}\" is not among the answers; give a number from 1 to {choices.Length}, or a word."
            : $"\"{typed}\" is not among the answers. Did you mean \"{near}\"?";
    }

    private static bool Starts(string word, string start) => word.StartsWith(start, StringComparison.Ordinal);
}

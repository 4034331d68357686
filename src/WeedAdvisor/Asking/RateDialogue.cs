using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Forms;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Rates;
using WeedAdvisor.Reports.Units;

namespace WeedAdvisor.Asking;

/// <summary>Asks line by line for the entries of a rate sum, then does it.</summary>
/// <param name="form">The form.</param>
/// <param name="site">The knowledge and the area; null for forms that need none.</param>
/// <param name="sources">What the sums cite, by key.</param>
/// <param name="lines">The two ends of the line.</param>
/// <param name="width">Columns of the answer.</param>
public sealed class RateDialogue(
    RateForm form,
    RateSite? site,
    ImmutableSortedDictionary<string, Source> sources,
    Lines lines,
    int width
)
{
    private readonly Dictionary<string, string> _typed = new(StringComparer.Ordinal);

    /// <summary>The units in which the answer is printed; null for those of the visit.</summary>
    public UnitsWanted? Units { get; init; }

    /// <summary>Asks until there is an answer, the lines end or the grower leaves.</summary>
    public void Run()
    {
        lines.Say($"{form.Title}. {form.About}");
        lines.Say("? tells how to find a figure, back goes one question back, quit leaves.");
        int at = 0;
        while (true)
        {
            if (at == form.Fields.Length)
            {
                if (Finish() is not { } back)
                    return;
                at = back;
            }

            if (Ask(at) is not { } next)
                return;
            at = next;
        }
    }

    /// <summary>Asks for a field; the number of the field to ask next, or null when it is over.</summary>
    private int? Ask(int at)
    {
        RateField field = form.Fields[at];
        lines.Say();
        lines.Say($"[{at + 1} of {form.Fields.Length}] {field.Label}");
        lines.Say($"({FieldText.Hint(field)})", "  ");
        while (lines.Hear("") is { } typed)
        {
            switch (typed.ToLowerInvariant())
            {
                case "quit":
                    return null;
                case "?":
                    lines.Say(field.Help, "  ");
                    continue;
                case "back":
                    return Math.Max(0, at - 1);
            }

            if (Take(field, typed) is not { } problem)
                return at + 1;
            lines.Say(Sentence(problem), "  ");
        }

        return null;
    }

    /// <summary>Keeps what was typed for a field; what is wrong with it when it cannot be read.</summary>
    private string? Take(RateField field, string typed)
    {
        _typed[field.Id] = typed;
        return RateEntry.ProblemsOf(form, _typed, site).FirstOrDefault(problem => problem.Field == field.Id)?.Text;
    }

    /// <summary>Does the sum; the number of the field to ask again when the entries do not fit together.</summary>
    private int? Finish()
    {
        Outcome<RateAnswer, RateProblem> outcome = form.Run(_typed, site);
        lines.Say();
        if (outcome.Value is { } answer)
        {
            Tell(answer);
            return null;
        }

        foreach (RateProblem problem in outcome.Refusals)
            lines.Say($"{LabelOf(problem.Field)}: {problem.Text}.");
        string first = outcome.Refusals[0].Field;
        return form.Fields.IndexOf(form.Fields.Single(field => field.Id == first));
    }

    private void Tell(RateAnswer answer)
    {
        ImmutableArray<RateEntry> entries = RateEntry.AllOf(form, _typed, site);
        Document document = RateDocument.Of(new RateReport(form, entries, answer, sources));
        string text = DocumentText.Of(DocumentUnits.In(document, Units ?? site?.Units, []), width);
        foreach (string line in text.TrimEnd('\n').Split('\n'))
            lines.SayAsIs(line);
        lines.Say();
        lines.Say("The same in one line:");
        IEnumerable<RateEntry> typed = entries.Where(entry => !entry.IsUsual);
        lines.SayAsIs(
            "  " + RateCommandLine.Of(form, typed.Select(entry => KeyValuePair.Create(entry.Field.Id, entry.Typed)))
        );
    }

    private string LabelOf(string id) => form.Fields.Single(field => field.Id == id).Label;

    private static string Sentence(string text) => $"{char.ToUpperInvariant(text[0])}{text[1..]}.";
}

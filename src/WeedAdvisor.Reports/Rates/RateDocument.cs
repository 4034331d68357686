using System.Collections.Immutable;
using WeedAdvisor.Planning.Rates.Answers;
using WeedAdvisor.Planning.Rates.Units;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Rates;

/// <summary>A rate sum: the figures first, then how they come about.</summary>
public static class RateDocument
{
    private const int Significant = 4,
        MostSignificant = 6,
        WidestLabel = 34,
        Left = 2;

    /// <summary>The answer with its working, what was assumed, what to mind, and the sources.</summary>
    public static Document Of(RateReport report) =>
        new(
            report.Form.Title,
            [
                Heading.Section("Result"),
                new FieldList([.. report.Answer.Results.Select(EntryOf)], WidestLabel).At(Left),
                .. report.Answer.Notes.Select(note => new Paragraph(note).At(Left)),
                .. List("Working", report.Answer.Working.Select(line => line.ToString()), Tone.Normal)
                    .Select(block => block with { KeepsUnits = true }),
                .. List("Assumed", report.Assumed, Tone.Normal),
                .. List("Mind", report.Answer.Cautions, Tone.Warning),
                .. Sources(report),
            ]
        );

    /// <summary>A figure in its unit and the others, to four significant figures.</summary>
    public static Line Shown(RateResult result) => new Measured([.. result.Shown], Significant);

    private static FieldEntry EntryOf(RateResult result) =>
        new(result.Label, result.IsMeasuredOut ? [Shown(result), MeasuredOut(result)] : [Shown(result)]);

    /// <summary>What a scale or a jug can show of a figure that is weighed or poured.</summary>
    private static Line MeasuredOut(RateResult result)
    {
        ImmutableArray<Quantity> amounts = MeasuringOut.Of(result.Value);
        return amounts.IsEmpty
            ? "too little to measure out"
            : Line.Of($"measure out {new Measured(amounts, MostSignificant) { IsChoice = true }}");
    }

    private static IEnumerable<Block> List(string title, IEnumerable<string> texts, Tone tone)
    {
        Line[] lines = [.. texts.Select(text => Line.FromString(text) with { Tone = tone })];
        return lines.Length == 0 ? [] : [Heading.Section(title), ItemList.Dashes(lines).At(Left)];
    }

    private static IEnumerable<Block> Sources(RateReport report) =>
        report.Answer.Sources.IsEmpty
            ? []
            :
            [
                Heading.Section("Sources"),
                .. report.Answer.Sources.Select(key => new Citation(
                    key,
                    report.CitationOf(key) is { } citation ? Line.FromString(citation) : null
                )
                {
                    IsBeside = true,
                    Indent = Left,
                }),
            ];
}

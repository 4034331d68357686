using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Why;

/// <summary>Why an action stands where it stands, area by area: everything for it, against it and in its way.</summary>
public static class WhyDocument
{
    /// <summary>The document.</summary>
    public static Document Of(VisitAdvice advice, CatalogueAction action, KnowledgeBase knowledge)
    {
        Line title = Line.Of($"{new Named(action.Name)} ({action.Id})") with { Action = action.Id };
        var names = new Names(knowledge);
        return new Document(
            title,
            [
                .. advice.Areas.SelectMany(
                    (area, at) =>
                        at == 0
                            ? OfArea(advice, area, action, names)
                            :
                            [
                                new Blank(),
                                new Heading(HeadingLevel.Title, title),
                                .. OfArea(advice, area, action, names),
                            ]
                ),
            ]
        );
    }

    private static IEnumerable<Block> OfArea(VisitAdvice advice, AreaAdvice area, CatalogueAction action, Names names)
    {
        DateOnly day = advice.Visit.Date;
        Reason[] reasons = [.. area.AllConclusions().Where(reason => reason.Action == action.Id)];
        bool isClear = area.Clear.Any(clear => clear.Action == action.Id);
        return
        [
            new Paragraph(
                $"{area.Area.Name}, visit {advice.Visit.Id}, {Figures.Day(day)}; knowledge {advice.Knowledge.Brief}"
            ),
            .. LiftedBars.Of(advice.Knowledge),
            new Blank(),
            new Paragraph(action.WhatOn(area.Reading.Ground)),
            new Blank(),
            new Paragraph(Standing(names, area, action.Id, day) with { Tone = Tone.Strong }),
            .. (isClear ? DateLines.Of(names.Dates(action.Id, area.Area, day), day) : []).Select(line => new Paragraph(
                line
            )),
            .. Needs(names, area, action.Id),
            .. ReasonKind.All.SelectMany(kind => Kind(names, kind.Title, [.. reasons.Where(kind.Holds)])),
            .. RecordCautions(action),
            .. Values(action, reasons),
            .. action is Treatment treatment ? BeforeUse(treatment, day) : [],
        ];
    }

    private static Line Standing(Names names, AreaAdvice area, string action, DateOnly day)
    {
        string status = StatusWords.Of(area, action, names.NeedInShort, day);
        if (area.Clear.FirstOrDefault(clear => clear.Action == action) is { } clear)
            return $"Here: {status}, rank {clear.Rank}. {Figures.Worth(clear)}.";
        return area.Barred.FirstOrDefault(barred => barred.Action == action) is { } barred
            ? $"Here: {status}, {StatusWords.Of(barred.Severity)}."
            : $"Here: {status}.";
    }

    private static IEnumerable<Block> Needs(Names names, AreaAdvice area, string action)
    {
        if (area.Waiting.FirstOrDefault(waiting => waiting.Action == action) is { } waiting)
        {
            yield return Heading.Section("It becomes clear, or barred, once this is known");
            yield return Asked(names, waiting.Needs);
        }

        if (area.Clear.FirstOrDefault(clear => clear.Action == action) is { Unless.IsEmpty: false } clear)
        {
            yield return Heading.Section("Clear unless this tells otherwise");
            yield return Asked(names, clear.Unless);
        }
    }

    private static Block Asked(Names names, ImmutableArray<Need> needs) =>
        ItemList.Dashes(needs.Select(need => Line.FromString(names.Need(need)))).At(2);

    private static IEnumerable<Block> Kind(Names names, string title, ImmutableArray<Reason> reasons) =>
        reasons.IsEmpty ? [] : [Heading.Section(title), ReasonBlocks.Of(names, reasons).At(2)];

    private static IEnumerable<Block> RecordCautions(CatalogueAction action) =>
        action.Cautions.IsEmpty
            ? []
            :
            [
                Heading.Section("What its record says to mind, wherever it is done"),
                ItemList
                    .Dashes(
                        action.Cautions.Select(caution =>
                            Line.FromString(Names.UnderItsName(caution)) with
                            {
                                Tone = Tone.Warning,
                            }
                        )
                    )
                    .At(2),
            ];

    private static IEnumerable<Block> Values(CatalogueAction action, IEnumerable<Reason> reasons) =>
        ValuesRead.Of(action, reasons) is { IsEmpty: false } lines
            ?
            [
                Heading.Section("Where the values come from that bar it or have to be minded"),
                ItemList.Dashes(lines.Select(Line.FromString)).At(2),
            ]
            : [];

    private static IEnumerable<Block> BeforeUse(Treatment treatment, DateOnly day) =>
        SafetyBlocks.Standing([
            .. treatment.Label is { } label ? [label.Line(day)] : (string[])[],
            $"Its record: {string.Join("; ", Safety.LinesFor(treatment, day))}.",
        ]);
}

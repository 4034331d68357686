using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports;

/// <summary>Why an action stands where it stands in an area: everything for it, against it and in its way.</summary>
public static class WhyText
{
    /// <summary>The reasons as text; lines end with a line feed.</summary>
    public static string Of(
        VisitAdvice advice, AreaAdvice area, CatalogueAction action, KnowledgeBase knowledge, int width)
    {
        var page = new Page(width);
        var names = new Names(knowledge);
        page.Write(0, $"{action.Name} ({action.Id})");
        string visit = $"visit {advice.Visit.Id}, {Figures.Day(advice.Visit.Date)}";
        page.Write(0, $"{area.Area.Name}, {visit}; knowledge {advice.Knowledge.Brief}");
        page.Gap();
        page.Write(0, action.What);
        page.Gap();
        page.Write(0, $"Here: {Standing(names, area, action.Id, advice.Visit.Date)}");
        if (area.Clear.Any(clear => clear.Action == action.Id))
            DateLines.Write(page, 0, names.Dates(action.Id, area.Area, advice.Visit.Date), advice.Visit.Date);
        WriteNeeds(page, names, area, action.Id);
        foreach (ReasonKind kind in ReasonKind.All)
            WriteKind(page, knowledge, kind, [.. area.AllConclusions().Where(r => r.Action == action.Id && kind.Holds(r))]);
        WriteRecordCautions(page, names, action);
        if (action is Treatment treatment)
            WriteSafety(page, treatment, advice.Visit.Date);
        return page.ToString();
    }

    private static string Standing(Names names, AreaAdvice area, string action, DateOnly day)
    {
        string status = StatusWords.Of(area, action, names.NeedInShort, day);
        if (area.Clear.FirstOrDefault(clear => clear.Action == action) is { } clear)
            return $"{status}, rank {clear.Rank}. {Figures.Merit(clear)}.";
        return area.Barred.FirstOrDefault(barred => barred.Action == action) is { } barred
            ? $"{status}, {StatusWords.Of(barred.Severity)}."
            : $"{status}.";
    }

    private static void WriteNeeds(Page page, Names names, AreaAdvice area, string action)
    {
        if (area.Waiting.FirstOrDefault(waiting => waiting.Action == action) is { } waiting)
            WriteNeeds(page, names, "It becomes clear, or barred, once this is known", waiting.Needs);
        if (area.Clear.FirstOrDefault(clear => clear.Action == action) is { Unless.IsEmpty: false } clear)
            WriteNeeds(page, names, "Clear unless this tells otherwise", clear.Unless);
    }

    private static void WriteNeeds(Page page, Names names, string title, ImmutableArray<Need> needs)
    {
        page.Heading(title);
        foreach (Need need in needs)
            page.Write(2, "- ", names.Need(need));
    }

    private static void WriteKind(Page page, KnowledgeBase knowledge, ReasonKind kind, ImmutableArray<Reason> reasons)
    {
        if (reasons.IsEmpty)
            return;
        page.Heading(kind.Title);
        foreach (Reason reason in reasons)
            ReasonText.Write(page, knowledge, reason);
    }

    private static void WriteRecordCautions(Page page, Names names, CatalogueAction action)
    {
        if (action.Cautions.IsEmpty)
            return;
        page.Heading("What its record says to mind, wherever it is done");
        foreach (string caution in action.Cautions)
            page.Write(2, "- ", names.UnderItsName(action.Id, caution));
    }

    private static void WriteSafety(Page page, Treatment treatment, DateOnly day)
    {
        page.Heading("Before any chemical");
        foreach (string line in Safety.StandingLines)
            page.Write(2, "- ", line);
        if (treatment.Label is { } label)
            page.Write(2, "- ", label.Line(day));
        page.Write(2, "- ", $"Its record: {string.Join("; ", Safety.LinesFor(treatment, day))}.");
    }

    private static bool IsSupport(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: false };

    /// <summary>A kind of reason with its heading, in the order of reading.</summary>
    private sealed record ReasonKind(string Title, Func<Reason, bool> Holds)
    {
        public static ImmutableArray<ReasonKind> All { get; } =
        [
            new("What bars it", reason => reason.Then is Consequence.Bar && reason.IsCertain),
            new("What may bar it", reason => reason.Then is Consequence.Bar && !reason.IsCertain),
            new("What speaks for it", reason => IsSupport(reason) && reason.IsCertain),
            new("What may speak for it", reason => IsSupport(reason) && !reason.IsCertain),
            new("What speaks against it", reason => IsDoubt(reason) && reason.IsCertain),
            new("What may speak against it", reason => IsDoubt(reason) && !reason.IsCertain),
            new("What to mind with it", reason => reason.Then is Consequence.Caution),
        ];

        private static bool IsDoubt(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: true };
    }
}

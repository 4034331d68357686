using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Advise.InHand;
using WeedAdvisor.Reports.Documents;
using static WeedAdvisor.Interview.Pages.PageLines;

namespace WeedAdvisor.Interview.Pages;

/// <summary>The answers on the chemicals that the grower has, asks about or used last.</summary>
internal static class HeldPart
{
    public static IEnumerable<Block> Of(KnowledgeBase knowledge, AreaAdvice advice)
    {
        ImmutableArray<Line> lines = HeldLines.Of(knowledge, advice, advice.Reading.Coming.Day);
        return lines.IsEmpty ? [] : [.. Head(HeldLines.Title), .. lines.Select(line => ItemList.One("- ", line))];
    }
}

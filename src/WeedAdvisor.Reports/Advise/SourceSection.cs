using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Advise;

/// <summary>The sources behind an advice, cited in full.</summary>
internal static class SourceSection
{
    public static IEnumerable<Block> Of(KnowledgeBase knowledge, IReadOnlyCollection<string> keys) =>
        [
            Heading.Section("Sources"),
            .. keys.Count == 0 ? [new Paragraph("None is named in this advice.").At(2)] : (Block[])[],
            .. keys.Select(key => new Citation(key, Cited(knowledge, key)).At(2)),
        ];

    /// <summary>A source in full.</summary>
    public static string Cited(KnowledgeBase knowledge, string key)
    {
        if (!knowledge.Sources.TryGetValue(key, out Source? source))
            return "not in the list of sources";
        return source.Note is { } note ? $"{source.Citation}. {note}" : source.Citation;
    }

    /// <summary>Keys of the sources that the advice on an area names, some of them more than once.</summary>
    public static IEnumerable<string> KeysOf(AreaAdvice area) =>
        area
            .Findings.SelectMany(finding => finding.Because)
            .SelectMany(reason => reason.Sources)
            .Concat(area.Clear.SelectMany(action => action.Sources))
            .Concat(area.Clear.SelectMany(action => action.Because).SelectMany(reason => reason.Sources))
            .Concat(area.Clear.SelectMany(action => action.Effect.Parts).SelectMany(part => part.Sources))
            .Concat(area.Barred.SelectMany(action => action.Because).SelectMany(reason => reason.Sources))
            .Concat(area.Cautions.SelectMany(caution => caution.Because.Sources))
            .Concat(area.Conflicts.SelectMany(c => c.For.Concat(c.Against)).SelectMany(reason => reason.Sources));
}

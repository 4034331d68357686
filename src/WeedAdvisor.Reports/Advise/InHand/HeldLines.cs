using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Advise.OnePage;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.InHand;

/// <summary>The answers on chemicals that somebody has or asks about, a line each, for pages of other layers.</summary>
public static class HeldLines
{
    /// <summary>What stands above them.</summary>
    public static string Title => HeldSection.Title;

    /// <summary>The lines; none where nothing is held.</summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="area">The advice on the area.</param>
    /// <param name="day">The day of the visit, whose year need not be said.</param>
    public static ImmutableArray<Line> Of(KnowledgeBase knowledge, AreaAdvice area, DateOnly day) =>
        [
            .. HeldSection
                .Alike(HeldAnswers.Of(new Names(knowledge), area, day))
                .Select(alike => HeldSection.LineOf([], alike)),
        ];
}

using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Facts;

/// <summary>The area as it would be read if one question more were answered.</summary>
internal static class AnsweredSite
{
    /// <summary>The fact of the area with the answer.</summary>
    public static SiteFact Of(AreaCase looked, string question, string answer, KnowledgeBase knowledge)
    {
        VisitArea area = looked.Area with
        {
            Answers = looked.Area.Answers.SetItem(question, new Answer.Words(WordSet.OfOne(answer))),
        };
        return new SiteFact(SiteReadings.Of(knowledge, looked with { Area = area }));
    }
}

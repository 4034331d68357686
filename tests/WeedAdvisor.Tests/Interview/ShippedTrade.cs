using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Tests.Interview;

/// <summary>The knowledge that ships, with its engine and its demo visit.</summary>
internal static class ShippedTrade
{
    public static KnowledgeBase Knowledge { get; } =
        KnowledgeFolder.Load(Path.Combine(ExpectedText.RepositoryFolder(), "rules")).Value!;

    public static Advisor Advisor { get; } = Advisor.Of(Knowledge);

    public static Visit Demo => Knowledge.WorkedVisits.Single(worked => worked.Visit.Id == "demo-spring").Visit;

    /// <summary>The interview of the demo visit, at one of its areas.</summary>
    public static InterviewSession At(string area, Func<VisitArea, VisitArea>? change = null)
    {
        Visit visit = Demo;
        int index = visit.Areas.Select((one, i) => (one, i)).Single(one => one.one.Id == area).i;
        if (change is not null)
            visit = visit.WithArea(index, change(visit.Areas[index]));
        var session = new InterviewSession(Knowledge, new LiveAdviceSource(Advisor), visit);
        session.GoToArea(index);
        return session;
    }
}

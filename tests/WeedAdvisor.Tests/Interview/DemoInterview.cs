using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Tests.Interview;

/// <summary>Interviews of the demo visit, under the knowledge that ships.</summary>
internal static class DemoInterview
{
    /// <summary>The whole visit, at one of its areas.</summary>
    public static InterviewSession At(string area, Func<VisitArea, VisitArea>? change = null)
    {
        Visit visit = ShippedRules.Demo;
        int index = visit.Areas.Select((one, i) => (one, i)).Single(one => one.one.Id == area).i;
        if (change is not null)
            visit = visit.WithArea(index, change(visit.Areas[index]));
        var session = new InterviewSession(ShippedRules.Knowledge, new LiveAdviceSource(ShippedRules.Advisor), visit);
        session.GoToArea(index);
        return session;
    }

    /// <summary>A visit to one of its areas alone.</summary>
    public static InterviewSession Alone(string area = "container-yard", Func<VisitArea, VisitArea>? change = null)
    {
        Visit visit = ShippedRules.Demo;
        return new(
            ShippedRules.Knowledge,
            new LiveAdviceSource(ShippedRules.Advisor),
            visit with
            {
                Areas = [.. visit.Areas.Where(one => one.Id == area).Select(change ?? (one => one))],
            }
        );
    }
}

using WeedAdvisor.Golden;
using WeedAdvisor.Inference;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Tests.Interview;

/// <summary>An interview at an area of the shipped demo visit, under the shipped knowledge.</summary>
internal static class DemoYard
{
    public static KnowledgeBase Knowledge { get; } =
        KnowledgeFolder.Load(Path.Combine(ExpectedText.RepositoryFolder(), "rules")).Value!;

    public static Visit Visit { get; } =
        Knowledge.WorkedVisits.Single(worked => worked.Visit.Id == "demo-spring").Visit;

    private static readonly Lazy<Advisor> s_advisor = new(() => Advisor.Of(Knowledge));

    /// <summary>The interview at the container yard, after a change of it.</summary>
    public static InterviewSession Yard(Func<VisitArea, VisitArea>? change = null, string area = "container-yard") =>
        new(
        Knowledge,
        new LiveAdviceSource(s_advisor.Value),
        Visit with { Areas = [.. Visit.Areas.Where(one => one.Id == area).Select(change ?? (one => one))] });
}

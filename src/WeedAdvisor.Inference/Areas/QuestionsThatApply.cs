using System.Collections.Immutable;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Areas;

/// <summary>
/// Whether questions apply in an area, judged from the answers given so far. A question whose condition rests on an
/// answer that is missing may apply: nothing is taken for granted.
/// </summary>
public sealed class QuestionsThatApply
{
    private readonly KnowledgeBase _knowledge;
    private readonly VisitArea _area;
    private readonly Dictionary<string, Reading> _told;

    /// <summary>Looks at an area.</summary>
    public QuestionsThatApply(KnowledgeBase knowledge, VisitArea area)
    {
        _knowledge = knowledge;
        _area = area;
        _told = SiteReadings.AsTold(knowledge, area);
    }

    /// <summary>Whether a question applies here.</summary>
    public Truth Applies(Question question) => SiteReadings.Applies(question, _told);

    /// <summary>
    /// The questions that have not been answered in any way and on which it depends whether this one applies.
    /// </summary>
    public ImmutableArray<string> WaitsFor(Question question) =>
        Applies(question) != Truth.NotKnown
            ? []
            :
            [
                .. question
                    .AskedWhen.Select(condition => condition.Attribute)
                    .Where(id =>
                        _knowledge.QuestionOf(id) is { } other
                        && !_area.Answers.ContainsKey(id)
                        && Applies(other) != Truth.No
                    ),
            ];
}

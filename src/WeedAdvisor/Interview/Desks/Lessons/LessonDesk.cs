using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Lessons;

namespace WeedAdvisor.Interview.Desks.Lessons;

/// <summary>A lesson on a desk: which one, and how far it is shown.</summary>
/// <param name="knowledge">The knowledge with its lessons and worked visits.</param>
public sealed class LessonDesk(KnowledgeBase knowledge)
{
    private readonly Lazy<Advisor> _advisor = new(() => Advisor.Of(knowledge));
    private ImmutableArray<ImmutableArray<Block>> _pages = [];
    private int _shown;

    /// <summary>The lessons there are.</summary>
    public ImmutableArray<Lesson> Lessons => knowledge.Lessons;

    /// <summary>The lesson that is taken; null while none is chosen.</summary>
    public Lesson? Taken { get; private set; }

    /// <summary>Whether something is still to be shown.</summary>
    public bool HasMore => _shown < _pages.Length;

    /// <summary>What the page now shown says.</summary>
    public ImmutableArray<Block> Page => _shown == 0 ? [] : _pages[_shown - 1];

    /// <summary>Takes a lesson from its beginning.</summary>
    public void Take(Lesson lesson)
    {
        Visit visit = knowledge.WorkedVisits.First(worked => worked.Visit.Id == lesson.Visit).Visit;
        AreaAdvice area = _advisor.Value.Advise(visit).Areas.First(one => one.Area.Id == lesson.Area);
        _pages = new LessonPages(knowledge).Of(lesson, area);
        Taken = lesson;
        _shown = 1;
    }

    /// <summary>Shows what comes next: the answer, and the next question.</summary>
    public void Next() => _shown = Math.Min(_pages.Length, _shown + 1);

    /// <summary>Puts the lesson back.</summary>
    public void PutBack()
    {
        Taken = null;
        _pages = [];
        _shown = 0;
    }
}

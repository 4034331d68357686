using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Lessons;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Interview.Desks.Lessons;

/// <summary>A lesson on a desk: which one, how far it is shown, and the trainee's own order of the work.</summary>
/// <param name="knowledge">The knowledge with its lessons and worked visits.</param>
public sealed class LessonDesk(KnowledgeBase knowledge)
{
    private readonly Names _names = new(knowledge);
    private readonly Lazy<Advisor> _advisor = new(() => Advisor.Of(knowledge));
    private ImmutableArray<ImmutableArray<Block>> _pages = [];
    private AreaAdvice? _area;
    private int _shown;

    /// <summary>The lessons there are.</summary>
    public ImmutableArray<Lesson> Lessons => knowledge.Lessons;

    /// <summary>The lesson that is taken; null while none is chosen.</summary>
    public Lesson? Taken { get; private set; }

    /// <summary>Whether something is still to be shown.</summary>
    public bool HasMore => _shown < _pages.Length;

    /// <summary>What the page now shown says.</summary>
    public ImmutableArray<Block> Page => _shown == 0 ? [] : _pages[_shown - 1];

    /// <summary>The trainee's order of the work, of what may be chosen here.</summary>
    public TraineeOrder Order { get; private set; } = TraineeOrder.None;

    /// <summary>The trainee's order held against the advice; nothing while he has named nothing.</summary>
    public ImmutableArray<Block> Score =>
        Taken is { } lesson && _area is { } area && !Order.Named.IsEmpty
            ? LessonDocument.Scored(lesson, area, Order.Named, knowledge).Blocks
            : [];

    /// <summary>The name of an action that may be chosen.</summary>
    public string NameOf(string action) => _names.Action(action);

    /// <summary>Takes a lesson from its beginning.</summary>
    public void Take(Lesson lesson)
    {
        Visit visit = knowledge.WorkedVisits.First(worked => worked.Visit.Id == lesson.Visit).Visit;
        _area = _advisor.Value.Advise(visit).Areas.First(one => one.Area.Id == lesson.Area);
        _pages = new LessonPages(knowledge).Of(lesson, _area);
        Order = new TraineeOrder(TraineeChoices.Of(_area, knowledge), []);
        Taken = lesson;
        _shown = 1;
    }

    /// <summary>Shows what comes next: the answer, and the next question.</summary>
    public void Next() => _shown = Math.Min(_pages.Length, _shown + 1);

    /// <summary>Puts an action last in the trainee's order, or takes it out of it.</summary>
    /// <param name="choice">Its place among the choices, from 0.</param>
    public void Turn(int choice) => Order = Order.Turned(choice);

    /// <summary>Puts the lesson back.</summary>
    public void PutBack()
    {
        Taken = null;
        _area = null;
        _pages = [];
        Order = TraineeOrder.None;
        _shown = 0;
    }
}

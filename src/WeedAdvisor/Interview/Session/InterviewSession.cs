using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Interview.Files;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <summary>
/// An interview under way: the visit as it now stands, the area and question it is at, and the advice that follows.
/// All decisions of the interview are taken here; the screens and the line-by-line interview only show them. Not safe
/// to share between threads.
/// </summary>
public sealed partial class InterviewSession
{
    private IAdviceSource _source;
    private readonly IDraftKeeper? _keeper;
    private readonly Dictionary<string, Trail> _trails = new(StringComparer.Ordinal);
    private ImmutableDictionary<string, QuestionNotes> _notes = ImmutableDictionary.Create<string, QuestionNotes>(
        StringComparer.Ordinal
    );

    /// <summary>Begins, or goes on with, the interview of a visit that has at least one area.</summary>
    /// <param name="knowledge">The knowledge.</param>
    /// <param name="source">Where the advice comes from.</param>
    /// <param name="visit">The visit.</param>
    /// <param name="keeper">Keeps the draft after every change; null to keep nothing.</param>
    public InterviewSession(KnowledgeBase knowledge, IAdviceSource source, Visit visit, IDraftKeeper? keeper = null)
    {
        Knowledge = knowledge;
        _source = source;
        _keeper = keeper;
        Visit = visit.Areas.IsEmpty ? visit.WithNewArea(null) : visit;
        _savedText = VisitText.Of(Visit);
        Refresh();
        EnterTrail();
    }

    /// <summary>The knowledge behind the questions.</summary>
    public KnowledgeBase Knowledge { get; private set; }

    /// <summary>The visit as it now stands.</summary>
    public Visit Visit { get; private set; }

    /// <summary>
    /// The units in which its pages are printed; null for those in which the sources have their quantities.
    /// </summary>
    public UnitsWanted? Units => VisitUnits.Of(Visit, Knowledge);

    /// <summary>Which area the interview is at, from 0.</summary>
    public int AreaIndex { get; private set; }

    /// <summary>The area the interview is at.</summary>
    public VisitArea Area => Visit.Areas[AreaIndex];

    /// <summary>The advice for that area as it now stands.</summary>
    public AreaAdvice Advice { get; private set; } = null!;

    /// <summary>The engine behind the advice; null where there is none.</summary>
    public Advisor? Engine => _source.Engine;

    /// <summary>The area on screen as it is looked at.</summary>
    public AreaCase Looked => AreaCase.Of(Visit, AreaIndex);

    /// <summary>The advice for an area on any day; the interview stays where it is.</summary>
    public AreaAdvice AdviceOn(AreaCase area) => _source.Of(area);

    /// <summary>The questions of that area that apply or may apply, in the order of asking.</summary>
    public ImmutableArray<QuestionEntry> Questions { get; private set; }

    /// <summary>The file the visit was read from or last saved to; null when there is none yet.</summary>
    public string? FilePath { get; private set; }

    /// <summary>Whether everything is saved.</summary>
    public bool IsSaved { get; private set; } = true;

    /// <summary>Where the draft is kept between saves, in words; null when it is not kept.</summary>
    public string? DraftPlace => _keeper?.Where;

    /// <summary>Why the last change could not be kept for recovery, in one line; null when all is well.</summary>
    public string? DraftTrouble { get; private set; }

    /// <summary>Where the answers are when the program ends before they are saved, or why they are nowhere.</summary>
    public string WhereAnswersAre =>
        DraftPlace is { } place && DraftTrouble is null
            ? $"The answers are kept in {place} and are offered at the next start."
            : $"The answers could not be kept: {DraftTrouble ?? "there is no place for them"}.";

    /// <summary>Raised after every change of answers, area or question.</summary>
    public event Action? Changed;

    /// <summary>Answers the current area has, against those still wanted.</summary>
    public InterviewProgress Progress =>
        new(
            Questions.Count(q => q.State == QuestionState.Answered),
            Questions.Count(q => q.State == QuestionState.NotKnown),
            Questions.Count(q => q.IsSettled || q.Matters),
            Questions.Count(q => q.State == QuestionState.Skipped && q.Matters),
            Questions.Count(q => q.IsWorthAgain)
        );

    private Trail CurrentTrail => _trails[Area.Id];

    private QuestionNotes Notes
    {
        get => _notes.GetValueOrDefault(Area.Id, QuestionNotes.Empty);
        set => _notes = _notes.SetItem(Area.Id, value);
    }

    /// <summary>How far a question has got.</summary>
    public QuestionState StateOf(Question question) => QuestionList.StateOf(question, Area, Notes);

    /// <summary>Notes that the visit now stands in a file, and forgets the draft.</summary>
    public void MarkSaved(string path)
    {
        FilePath = path;
        IsSaved = true;
        _savedText = VisitText.Of(Visit);
        DraftTrouble = null;
        _keeper?.Discard();
        Changed?.Invoke();
    }

    /// <summary>
    /// Goes on with another visit in place of this one. What is not saved of this one is kept for the next start.
    /// </summary>
    /// <param name="visit">The visit.</param>
    /// <param name="path">The file it was read from; null when it stands in no file.</param>
    public void Open(Visit visit, string? path) => Begin(visit, path, isSaved: path is not null);

    /// <summary>Goes on with a draft that was recovered, which is not saved.</summary>
    /// <param name="draft">The draft.</param>
    /// <param name="path">The file that it belongs to; null when there is none yet.</param>
    public void Resume(Visit draft, string? path) => Begin(draft, path, isSaved: false);

    private void Begin(Visit visit, string? path, bool isSaved)
    {
        if (!IsSaved)
            _keeper?.LetGo();
        _trails.Clear();
        _notes = _notes.Clear();
        _history = VisitHistory.Empty;
        SetAside = [];
        AreaIndex = 0;
        Visit = visit.Areas.IsEmpty ? visit.WithNewArea(null) : visit;
        FilePath = path;
        IsSaved = isSaved;
        DraftTrouble = null;
        _savedText = IsSaved ? VisitText.Of(Visit) : null;
        Refresh();
        EnterTrail();
        Changed?.Invoke();
    }

    /// <summary>Goes by other knowledge from now on: the grower has read a label.</summary>
    /// <param name="knowledge">The knowledge; its questions are the same.</param>
    /// <param name="source">The advice that follows from it.</param>
    public void GoBy(KnowledgeBase knowledge, IAdviceSource source)
    {
        Knowledge = knowledge;
        _source = source;
        Refresh();
        Changed?.Invoke();
    }

    /// <summary>The file name to offer for saving.</summary>
    public string SuggestedPath => FilePath ?? Visit.Id + ".yaml";

    /// <summary>Saves the visit to a file.</summary>
    /// <param name="store">Where visits are saved.</param>
    /// <param name="path">The file.</param>
    /// <param name="over">Whether to write over a file that was changed by others since it was read.</param>
    public Outcome<Saved, NotSaved> SaveTo(IVisitStore store, string path, bool over = false)
    {
        Outcome<Saved, NotSaved> outcome = store.Save(path, Visit, FilePath, over);
        if (outcome.IsGood)
            MarkSaved(path);
        return outcome;
    }

    private void Refresh()
    {
        Advice = _source.Of(Looked);
        Questions = QuestionList.Of(Knowledge, Area, Advice, Notes);
    }
}

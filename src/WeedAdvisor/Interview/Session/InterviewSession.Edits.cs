using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <content>
/// The edits. Every one goes through <see cref="Edit"/>, so that every one is kept for recovery and can be undone.
/// </content>
public sealed partial class InterviewSession
{
    private VisitHistory _history = VisitHistory.Empty;
    private string? _savedText;

    /// <summary>How many edits can be undone.</summary>
    public int EditsDone => _history.Done.Count();

    /// <summary>How many edits can be done again.</summary>
    public int EditsUndone => _history.Undone.Count();

    /// <summary>Questions whose answers the last edit set aside because they no longer apply.</summary>
    public ImmutableArray<Question> SetAside { get; private set; } = [];

    /// <summary>What the last edit changed beside what was said, in a sentence; null when nothing.</summary>
    public string? Remark { get; private set; }

    /// <summary>
    /// Gives an answer to a question that takes words, a number or a date. <see cref="Answer.NotKnown"/> says that the
    /// grower does not know.
    /// </summary>
    public void Say(string question, Answer answer) =>
        SayTo(Knowledge.QuestionOf(question), question, answer, Notes.Without(question));

    /// <summary>Says that the grower does not know.</summary>
    public void SayNotKnown(Question question)
    {
        QuestionNotes notes = Notes.Without(question.Id);
        if (question.Kind is QuestionKind.Weeds or QuestionKind.Past)
            EditArea(Area.WithoutAnswer(question), notes with { NotKnown = notes.NotKnown.Add(question.Id) }, question);
        else
            SayTo(question, question.Id, new Answer.NotKnown(), notes);
    }

    /// <summary>Takes an answer back: the question is open again.</summary>
    public void Clear(Question question)
    {
        if (question.IsOfNursery)
            SayTo(question, question.Id, null, Notes.Without(question.Id));
        else
            EditArea(Area.WithoutAnswer(question), Notes.Without(question.Id), question);
    }

    /// <summary>Whether an answer given here now is one for the whole nursery.</summary>
    public bool IsForAll(Question question) => HeadAnswers.IsForAll(Visit, Area, Notes, question);

    /// <summary>
    /// Says whether the answer to a question of the whole nursery is to be given for all of it, or for this area alone.
    /// An area that goes back to the whole nursery takes over what was said there.
    /// </summary>
    public void AnswerForAll(Question question, bool isForAll)
    {
        if (!question.IsOfNursery || isForAll == IsForAll(question))
            return;
        QuestionNotes notes = Notes.Without(question.Id);
        if (!isForAll)
            Notes = notes with { OnlyHere = notes.OnlyHere.Add(question.Id) };
        else
            EditArea(Area.WithAnswerOrNone(question.Id, Visit.Head.GetValueOrDefault(question.Id)), notes, question);
        Changed?.Invoke();
    }

    /// <summary>Changes the area as a whole, such as its list of weeds.</summary>
    public void Change(VisitArea area)
    {
        QuestionNotes notes = Notes;
        foreach (Question question in Knowledge.Questions)
        {
            if (
                (question.Kind == QuestionKind.Weeds && area.Weeds is not null)
                || (question.Kind == QuestionKind.Past && area.Past is not null)
            )
            {
                notes = notes.Without(question.Id);
            }
        }

        EditArea(area, notes, about: null);
    }

    /// <summary>Adds an area and goes there.</summary>
    /// <param name="name">Its name; when empty, it is numbered.</param>
    public void AddArea(string? name) =>
        Edit(Visit.WithNewArea(name), _notes, Here(), to: new(Visit.Areas.Length, null));

    /// <summary>Renames an area, counted from 0. An empty name changes nothing.</summary>
    public void RenameArea(int index, string name)
    {
        if (!string.IsNullOrWhiteSpace(name))
            Edit(Visit.WithAreaNamed(index, name), _notes, Here(), Here());
    }

    /// <summary>Removes an area, counted from 0. The last one stays.</summary>
    /// <returns>False when it is the last one.</returns>
    public bool RemoveArea(int index)
    {
        if (Visit.Areas.Length == 1)
            return false;
        int stay = AreaIndex > index ? AreaIndex - 1 : Math.Min(AreaIndex, Visit.Areas.Length - 2);
        Spot gone = index == AreaIndex ? Here() : new(index, null);
        Edit(Visit.WithoutArea(index), _notes.Remove(Visit.Areas[index].Id), gone, to: new(stay, null));
        return true;
    }

    /// <summary>
    /// Changes the day of the visit, its title and the name of the nursery; empty texts mean that there is none.
    /// </summary>
    /// <returns>Why the day cannot be that one, in a sentence, or null when it is done.</returns>
    public string? Describe(DateOnly date, string? title, string? nursery) =>
        Describe(date, title, nursery, Visit.Units);

    /// <summary>The same, and the units in which its pages are printed; null leaves these to its region.</summary>
    /// <returns>Why the day cannot be that one, in a sentence, or null when it is done.</returns>
    public string? Describe(DateOnly date, string? title, string? nursery, UnitsWanted? units)
    {
        if (Lately.WhyNotOn(Knowledge, Visit, date) is { } trouble)
            return trouble;
        Visit described = Visit with
        {
            Date = date,
            Title = string.IsNullOrWhiteSpace(title) ? null : title.Trim(),
            Nursery = string.IsNullOrWhiteSpace(nursery) ? null : nursery.Trim(),
            Units = units,
            Areas = [.. Visit.Areas.Select(area => Lately.Settle(Knowledge, area, date).Area)],
        };
        Edit(described, _notes, Here(), Here());
        return null;
    }

    /// <summary>Undoes the last edit and goes to where it was made.</summary>
    /// <returns>The edit's name; null when there is none to undo.</returns>
    public string? Undo()
    {
        if (_history.Undo() is not var (history, edit))
            return null;
        _history = history;
        Return(edit.Before);
        return edit.Name;
    }

    /// <summary>Does the edit undone last again and goes to where it was made.</summary>
    /// <returns>The edit's name; null when there is none to do again.</returns>
    public string? Redo()
    {
        if (_history.Redo() is not var (history, edit))
            return null;
        _history = history;
        Return(edit.After);
        return edit.Name;
    }

    private Spot Here() => new(AreaIndex, CurrentTrail.Current);

    private void SayTo(Question? about, string question, Answer? answer, QuestionNotes notes)
    {
        if (about is { IsOfNursery: true } && IsForAll(about))
            EditVisit(Visit.WithNurseryAnswer(AreaIndex, question, answer), notes, about);
        else // For which area it holds is not forgotten with the answer.
            EditArea(Area.WithAnswerOrNone(question, answer), notes with { OnlyHere = Notes.OnlyHere }, about);
    }

    private void EditArea(VisitArea area, QuestionNotes notes, Question? about) =>
        EditVisit(Visit.WithArea(AreaIndex, area), notes, about);

    private void EditVisit(Visit visit, QuestionNotes notes, Question? about)
    {
        (VisitArea area, notes) = AnswerParking.Settle(Knowledge, visit.Areas[AreaIndex], notes);
        (area, Remark) = Lately.Settle(Knowledge, area, visit.Date);
        Spot here = about is null ? Here() : new(AreaIndex, about.Id);
        Edit(visit.WithArea(AreaIndex, area), _notes.SetItem(area.Id, notes), here, here, about);
    }

    /// <summary>The one door through which a visit is edited.</summary>
    private void Edit(
        Visit visit,
        ImmutableDictionary<string, QuestionNotes> notes,
        Spot from,
        Spot to,
        Question? about = null
    )
    {
        var before = new InterviewMoment(Visit, _notes, from.Area, from.Question);
        var after = new InterviewMoment(visit, notes, to.Area, to.Question);

        // The same answer again is no edit: undoing it would do nothing that can be seen.
        bool isSame = IsSame(visit, Visit);
        if (!isSame || SaidNotKnown(notes) != SaidNotKnown(_notes))
        {
            string name = about is null
                ? EditNames.Of(Knowledge, Visit, visit)
                : EditNames.Of(about, Visit, visit, to.Area);
            _history = _history.With(new VisitEdit(name, before, after));
        }

        SetAside = NewlyParked(before, after);
        Stand(after, isSame ? null : Keep);
    }

    /// <summary>Back to a moment, at the question where the edit was made.</summary>
    private void Return(InterviewMoment moment)
    {
        SetAside = [];
        Remark = null;
        Stand(moment, Keep, turns: true);
    }

    private void Stand(InterviewMoment moment, Action? keep, bool turns = false)
    {
        Visit = moment.Visit;
        _notes = moment.Notes;
        AreaIndex = moment.AreaIndex;
        foreach (string gone in _trails.Keys.Except(Visit.Areas.Select(area => area.Id)).ToArray())
            _trails.Remove(gone);
        Refresh();
        EnterTrail();
        if (turns && moment.Question is { } question && Applies(question))
            CurrentTrail.MoveTo(question);
        keep?.Invoke();
        Changed?.Invoke();
    }

    private void Keep()
    {
        IsSaved = VisitText.Of(Visit) == _savedText;
        if (IsSaved)
            _keeper?.Rest(Visit);
        DraftTrouble = IsSaved ? null : _keeper?.Keep(Visit, FilePath);
    }

    private ImmutableArray<Question> NewlyParked(InterviewMoment before, InterviewMoment after)
    {
        string area = after.Visit.Areas[after.AreaIndex].Id;
        var old = before.Notes.GetValueOrDefault(area, QuestionNotes.Empty).Parked;
        var parked = after.Notes.GetValueOrDefault(area, QuestionNotes.Empty).Parked;
        return [.. Knowledge.Questions.Where(q => parked.ContainsKey(q.Id) && !old.ContainsKey(q.Id))];
    }

    // The text alone does not tell an answer that was taken back from one not known where the head of the visit has it.
    private static bool IsSame(Visit visit, Visit other) =>
        VisitText.Of(visit) == VisitText.Of(other)
        && visit.Areas.Zip(other.Areas).All(pair => pair.First.Answers.SequenceEqual(pair.Second.Answers));

    // Weeds and earlier applications that are not known leave no mark in the visit itself.
    private static string SaidNotKnown(ImmutableDictionary<string, QuestionNotes> notes) =>
        string.Join(
            ' ',
            notes
                .SelectMany(area => area.Value.NotKnown.Select(question => area.Key + "/" + question))
                .Order(StringComparer.Ordinal)
        );

    /// <summary>A page of the interview; without a question, the one at which the area's interview stands.</summary>
    private readonly record struct Spot(int Area, string? Question);
}

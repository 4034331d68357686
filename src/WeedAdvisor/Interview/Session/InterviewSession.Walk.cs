using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Session;

/// <content>The way through the questions and the areas.</content>
public sealed partial class InterviewSession
{
    /// <summary>The question the interview is at; null at the end page of an area.</summary>
    public Question? Current => CurrentTrail.Current is { } id ? Knowledge.QuestionOf(id) : null;

    /// <summary>The entry of the question the interview is at; null at the end page.</summary>
    public QuestionEntry? CurrentEntry =>
        Current is { } question
            ? Questions.FirstOrDefault(entry => entry.Question.Id == question.Id)
                ?? new QuestionEntry(question, StateOf(question), Matters: false)
            : null;

    /// <summary>
    /// The question to put next: first what was put on lately, when something was; then those that every area is asked,
    /// then the one that settles most, then any other that could still change the advice, then those not known that are
    /// being put once more. Null when none is left but those passed over.
    /// </summary>
    public Question? Suggested
    {
        get
        {
            QuestionEntry? told = null,
                basic = null,
                best = null,
                other = null,
                again = null;
            string? wanted = Advice.NextQuestion is { } next ? QuestionList.PutFirst(Knowledge, Area, next.Id) : null;
            foreach (QuestionEntry entry in Questions)
            {
                if (entry.State == QuestionState.NotKnown && Notes.Again.Contains(entry.Question.Id))
                    again ??= entry;
                if (entry.State != QuestionState.Open || !entry.Matters)
                    continue;
                other ??= entry;
                if (entry.Question.Kind == QuestionKind.Past && Area.WordOf(PutOnLately.Question) == PutOnLately.Yes)
                    told = entry;
                if (basic is null && QuestionList.Always.Contains(entry.Question.Id, StringComparer.Ordinal))
                    basic = entry;
                if (entry.Question.Id == wanted)
                    best = entry;
            }

            return (told ?? basic ?? best ?? other ?? again)?.Question;
        }
    }

    /// <summary>
    /// Goes on: along the way already gone when there is one ahead, else to the suggested question, else to the end
    /// page. A question left open is passed over. From the end page it takes up what was passed over.
    /// </summary>
    public void Next()
    {
        PassOver();
        if (IsToTellUse())
        {
            CurrentTrail.GoTo(Knowledge.Questions.First(question => question.Kind == QuestionKind.Past).Id);
        }
        else if (!CurrentTrail.Forward(Applies))
        {
            if (Suggested is null && Current is null)
                TakeUpSkipped();
            CurrentTrail.GoTo(Suggested?.Id);
        }

        Changed?.Invoke();
    }

    /// <summary>Goes back one question.</summary>
    /// <returns>False when this is the first.</returns>
    public bool Back()
    {
        bool moved = CurrentTrail.Back(Applies);
        Changed?.Invoke();
        return moved;
    }

    /// <summary>
    /// Puts the questions once more that are not known and whose answers could still change the advice.
    /// </summary>
    /// <returns>False when there is none.</returns>
    public bool AskAgain()
    {
        Notes = Notes with
        {
            Again = [.. Questions.Where(entry => entry.IsWorthAgain).Select(entry => entry.Question.Id)],
        };
        if (Notes.Again.IsEmpty || Suggested is not { } first)
            return false;
        PassOver();
        CurrentTrail.GoTo(first.Id);
        Changed?.Invoke();
        return true;
    }

    /// <summary>Passes the current question over for now and goes on.</summary>
    public void Skip() => Next();

    /// <summary>Goes straight to a question.</summary>
    public void GoTo(Question question)
    {
        PassOver();
        CurrentTrail.GoTo(question.Id);
        Changed?.Invoke();
    }

    /// <summary>Goes to the end page of the area.</summary>
    public void GoToEnd()
    {
        CurrentTrail.GoTo(null);
        Changed?.Invoke();
    }

    /// <summary>Goes to another area, counted from 0.</summary>
    public void GoToArea(int index)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(index);
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(index, Visit.Areas.Length);
        AreaIndex = index;
        Refresh();
        EnterTrail();
        Changed?.Invoke();
    }

    // Who has just said that something was put on goes on to tell it, also when older uses are told already.
    private bool IsToTellUse() =>
        Current?.Id == PutOnLately.Question
        && Area.WordOf(PutOnLately.Question) == PutOnLately.Yes
        && PutOnLately.LastTold(Area, Visit.Date) is null
        && Knowledge.Questions.Any(question =>
            question.Kind == QuestionKind.Past && StateOf(question) != QuestionState.NotKnown
        );

    private bool Applies(string id) => Questions.Any(entry => entry.Question.Id == id);

    private void PassOver()
    {
        if (Current is not { } question)
            return;
        Notes = Notes with { Again = Notes.Again.Remove(question.Id) };
        if (StateOf(question) != QuestionState.Open)
            return;
        Notes = Notes with { Skipped = Notes.Skipped.Add(question.Id) };
        Questions = QuestionList.Of(Knowledge, Area, Advice, Notes);
    }

    private void TakeUpSkipped()
    {
        Notes = Notes with { Skipped = Notes.Skipped.Clear() };
        Questions = QuestionList.Of(Knowledge, Area, Advice, Notes);
    }

    private void EnterTrail()
    {
        if (_trails.ContainsKey(Area.Id))
            return;
        var trail = new Trail();
        trail.GoTo(Suggested?.Id);
        _trails[Area.Id] = trail;
    }
}

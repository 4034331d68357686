using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview;

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
    /// The question to put next: first those that every area is asked, then the one that settles most, then any other
    /// that could still change the advice. Null when none is left but those passed over.
    /// </summary>
    public Question? Suggested
    {
        get
        {
            QuestionEntry? basic = null, best = null, other = null;
            string? wanted = Advice.NextQuestion is { } next
                ? QuestionList.PutFirst(Knowledge, Area, next.Id)
                : null;
            foreach (QuestionEntry entry in Questions)
            {
                if (entry.State != QuestionState.Open || !entry.Matters)
                    continue;
                other ??= entry;
                if (basic is null && QuestionList.Always.Contains(entry.Question.Id, StringComparer.Ordinal))
                    basic = entry;
                if (entry.Question.Id == wanted)
                    best = entry;
            }

            return (basic ?? best ?? other)?.Question;
        }
    }

    /// <summary>
    /// Goes on: along the way already gone when there is one ahead, else to the suggested question, else to the end
    /// page. A question left open is passed over. From the end page it takes up what was passed over.
    /// </summary>
    public void Next()
    {
        PassOver();
        if (!CurrentTrail.Forward(Applies))
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

    /// <summary>Adds an area and goes there.</summary>
    /// <param name="name">Its name; when empty, it is numbered.</param>
    public void AddArea(string? name)
    {
        SetVisit(Visit.WithNewArea(name));
        GoToArea(Visit.Areas.Length - 1);
    }

    /// <summary>Renames an area, counted from 0. An empty name changes nothing.</summary>
    public void RenameArea(int index, string name)
    {
        if (!string.IsNullOrWhiteSpace(name) && name.Trim() != Visit.Areas[index].Name)
            SetVisit(Visit.WithAreaNamed(index, name));
    }

    /// <summary>Removes an area, counted from 0. The last one stays.</summary>
    /// <returns>False when it is the last one.</returns>
    public bool RemoveArea(int index)
    {
        if (Visit.Areas.Length == 1)
            return false;
        string id = Visit.Areas[index].Id;
        int stay = AreaIndex > index ? AreaIndex - 1 : Math.Min(AreaIndex, Visit.Areas.Length - 2);
        AreaIndex = 0;
        SetVisit(Visit.WithoutArea(index));
        _trails.Remove(id);
        _notes.Remove(id);
        GoToArea(stay);
        return true;
    }

    /// <summary>Changes the day of the visit, its title and the name of the nursery; empty texts mean that there is none.</summary>
    public void Describe(DateOnly date, string? title, string? nursery)
    {
        Visit described = Visit with
        {
            Date = date,
            Title = string.IsNullOrWhiteSpace(title) ? null : title.Trim(),
            Nursery = string.IsNullOrWhiteSpace(nursery) ? null : nursery.Trim(),
        };
        if (described != Visit)
            SetVisit(described);
    }

    private bool Applies(string id) => Questions.Any(entry => entry.Question.Id == id);

    private void PassOver()
    {
        if (Current is not { } question || StateOf(question) != QuestionState.Open)
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

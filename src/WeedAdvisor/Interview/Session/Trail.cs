namespace WeedAdvisor.Interview.Session;

/// <summary>The questions an interview has been through in one area, and where on that way it stands.</summary>
public sealed class Trail
{
    private readonly List<string?> _steps = [];
    private int _at = -1;

    /// <summary>The id of the question it stands at; null at the end page, and before the first question.</summary>
    public string? Current => _at < 0 ? null : _steps[_at];

    /// <summary>Whether it has begun.</summary>
    public bool HasBegun => _at >= 0;

    /// <summary>Goes to a question (null: the end page), cutting off what lay ahead.</summary>
    public void GoTo(string? question)
    {
        if (HasBegun && Current == question)
            return;
        _steps.RemoveRange(_at + 1, _steps.Count - _at - 1);
        _steps.Add(question);
        _at = _steps.Count - 1;
    }

    /// <summary>
    /// Goes to a question that lies on the way already gone, which stays as it is; else as <see cref="GoTo"/>.
    /// </summary>
    public void MoveTo(string question)
    {
        int at = _at < 0 ? -1 : _steps.LastIndexOf(question, _at);
        if (at < 0)
            at = _steps.IndexOf(question);
        if (at < 0)
            GoTo(question);
        else
            _at = at;
    }

    /// <summary>Goes one step back, past questions that no longer apply.</summary>
    /// <returns>False when there is nothing to go back to.</returns>
    public bool Back(Func<string, bool> applies) => Step(-1, applies);

    /// <summary>Goes one step on along the way already gone.</summary>
    /// <returns>False at its end.</returns>
    public bool Forward(Func<string, bool> applies) => Step(+1, applies);

    private bool Step(int direction, Func<string, bool> applies)
    {
        for (int i = _at + direction; i >= 0 && i < _steps.Count; i += direction)
        {
            if (_steps[i] is not { } id || !applies(id))
                continue;
            _at = i;
            return true;
        }

        return false;
    }
}

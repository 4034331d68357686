namespace WeedAdvisor.Planning.Season.Search.Kernel;

/// <summary>The steps of all plans, each pointing back at the one before.</summary>
internal sealed class PlanTrail
{
    private readonly List<(int Before, int Candidate, int Week)> _steps = [];

    /// <summary>Adds a step after another; -1 is the start.</summary>
    public int Add(int before, int candidate, int week)
    {
        _steps.Add((before, candidate, week));
        return _steps.Count - 1;
    }

    /// <summary>The applications that lead to a step, in order of week.</summary>
    public PlanStep[] To(int step)
    {
        var back = new List<PlanStep>();
        for (int at = step; at >= 0; at = _steps[at].Before)
            back.Add(new PlanStep(_steps[at].Candidate, _steps[at].Week));
        back.Reverse();
        return [.. back];
    }
}

/// <summary>One application, by number.</summary>
internal readonly record struct PlanStep(int Candidate, int Week);

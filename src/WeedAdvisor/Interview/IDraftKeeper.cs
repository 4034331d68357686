using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview;

/// <summary>Keeps the unfinished visit where a crash, a closed terminal or a power cut cannot reach it.</summary>
public interface IDraftKeeper
{
    /// <summary>Where the draft is kept, in words for the grower.</summary>
    public string Where { get; }

    /// <summary>Keeps the draft as it now stands. Never throws.</summary>
    /// <returns>Why it could not be kept, in one line, or null when it was.</returns>
    public string? Keep(Visit draft);

    /// <summary>Forgets the draft: it has been saved where the grower wanted it. Never throws.</summary>
    public void Discard();
}

using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Files;

/// <summary>Keeps the unfinished visit where a crash, a closed terminal or a power cut cannot reach it.</summary>
public interface IDraftKeeper
{
    /// <summary>Where the draft is kept, in words for the grower.</summary>
    public string Where { get; }

    /// <summary>Keeps the draft as it now stands. Never throws.</summary>
    /// <param name="draft">The visit.</param>
    /// <param name="file">The file it was read from or last saved to; null when there is none.</param>
    /// <returns>Why it could not be kept, in one line, or null when it was.</returns>
    public string? Keep(Visit draft, string? file);

    /// <summary>
    /// The visit was edited back to what is saved already, so that there is no draft of it. Never throws.
    /// </summary>
    /// <param name="visit">The visit as it now stands.</param>
    public void Rest(Visit visit);

    /// <summary>Forgets the draft: it has been saved where the grower wanted it. Never throws.</summary>
    public void Discard();

    /// <summary>Leaves the draft for the next start: the interview goes on with another visit. Never throws.</summary>
    public void LetGo();
}

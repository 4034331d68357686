using WeedAdvisor.Interview;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Asking;

/// <summary>Offers an interview that was broken off.</summary>
internal static class AskRecovery
{
    /// <summary>
    /// Offers it when there is one. Anything but yes puts it aside, so that a script that knows nothing of it loses
    /// nothing.
    /// </summary>
    /// <returns>A line that was neither yes nor no and so belongs to the interview; else null.</returns>
    public static string? Offer(InterviewSession session, RecoveryFile? recovery, Lines lines)
    {
        if (recovery is null)
            return null;
        (Visit? draft, string? trouble) = recovery.Offer();
        if (trouble is not null)
            lines.Say(trouble);
        if (draft is null)
            return null;
        string areas = string.Join(", ", draft.Areas.Select(area => area.Name).Take(4));
        lines.Say($"The interview of {Answering.Date(draft.Date)} ({areas}) was broken off before it was saved.");
        string? said = lines.Hear("Go on with it? yes or no");
        if (said is null)
            return null;
        if (said.Equals("yes", StringComparison.OrdinalIgnoreCase) || said.Equals("y", StringComparison.OrdinalIgnoreCase))
        {
            session.Open(draft, null);
            return null;
        }

        lines.Say(recovery.SetAside() is { } failed
            ? $"It could not be put aside: {failed}"
            : $"It is put aside in {recovery.AsidePath}.");
        return said.Length == 0 || said.Equals("no", StringComparison.OrdinalIgnoreCase)
            || said.Equals("n", StringComparison.OrdinalIgnoreCase) ? null : said;
    }
}

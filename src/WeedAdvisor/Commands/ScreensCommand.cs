using WeedAdvisor.Interview.Files;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Screens;

namespace WeedAdvisor.Commands;

/// <summary>The program without a command, at a terminal: the screens.</summary>
internal static class ScreensCommand
{
    /// <summary>
    /// Opens the screens on a knowledge folder and a label book, if one is named, and gives the exit code.
    /// </summary>
    public static int Run(Surroundings surroundings, string folder, string? labels)
    {
        KnowledgeBase knowledge = KnowledgeOption.Load(folder, surroundings, KnowledgeScope.WithoutWorkedVisits);
        using InterviewStart start = InterviewStart.Of(knowledge, labels, null, null, surroundings);
        (IReadOnlyList<RecoveryOffer> offers, IReadOnlyList<string> troubles) = start.Offers();
        bool isPlain = ScreenSettings.WantsNoColour(surroundings.Environment);
        int code = ScreenHost.Run(
            start.Session,
            new ScreenSettings(start.Store, isPlain, offers, troubles, start.Labels),
            surroundings.Error);
        if (start.Session is { IsSaved: false, DraftPlace: { } place, DraftTrouble: null } && code == ExitCode.Done)
            surroundings.Error.WriteLine($"The answers are kept in {place} and are offered at the next start.");
        return code;
    }
}

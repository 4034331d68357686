using WeedAdvisor.Interview.Desks.Lessons;
using WeedAdvisor.Interview.Files;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Screens;

namespace WeedAdvisor.Commands;

/// <summary>The program without a command, at a terminal: the screens.</summary>
internal static class ScreensCommand
{
    /// <summary>Opens the screens and gives the exit code.</summary>
    public static int Run(Surroundings surroundings, ScreensAsked asked)
    {
        KnowledgeBase knowledge = KnowledgeOption.Load(asked.Folders, surroundings, KnowledgeScope.WithoutWorkedVisits);
        VisitDocument? document = asked.Visit is { } path
            ? VisitArgument.Document(path, knowledge, surroundings)
            : null;
        using InterviewStart start = InterviewStart.Of(knowledge, asked.Labels, document, asked.Visit, surroundings);
        (IReadOnlyList<RecoveryOffer> offers, IReadOnlyList<string> troubles) = start.Offers();
        bool isPlain = ScreenSettings.WantsNoColour(surroundings.Environment);
        int code = ScreenHost.Run(
            start.Session,
            new ScreenSettings(start.Store, isPlain, offers, troubles, start.Labels)
            {
                Lessons = () => new LessonDesk(KnowledgeOption.Load(asked.Folders, surroundings, KnowledgeScope.Whole)),
            },
            surroundings.Error
        );
        if (start.Session is { IsSaved: false, DraftPlace: not null, DraftTrouble: null } && code == ExitCode.Done)
            surroundings.Error.WriteLine(start.Session.WhereAnswersAre);
        return code;
    }
}

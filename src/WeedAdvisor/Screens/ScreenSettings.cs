using WeedAdvisor.Interview.Desks.Labels;
using WeedAdvisor.Interview.Desks.Lessons;
using WeedAdvisor.Interview.Files;

namespace WeedAdvisor.Screens;

/// <summary>What the screens are given.</summary>
/// <param name="Store">Where visits are read and saved.</param>
/// <param name="IsPlain">Whether to draw without any colour.</param>
/// <param name="Offers">Interviews that were broken off, to offer first, one after another; null when there are
/// none.</param>
/// <param name="Troubles">What went wrong with such interviews, to tell first, a line each; null when all is
/// well.</param>
/// <param name="Labels">The label book; null when none can be kept.</param>
public sealed record ScreenSettings(
    IVisitStore Store,
    bool IsPlain,
    IReadOnlyList<RecoveryOffer>? Offers = null,
    IReadOnlyList<string>? Troubles = null,
    LabelShelf? Labels = null
)
{
    /// <summary>Gives the lessons when they are first wanted; null where there are none.</summary>
    public Func<LessonDesk>? Lessons { get; init; }

    /// <summary>Runs a search where it does not hold up the keys.</summary>
    public Action<Action> Beside { get; init; } = search => Task.Run(search);

    /// <summary>
    /// Whether the environment asks for no colour: NO_COLOR is set and not empty, or the terminal is dumb.
    /// </summary>
    /// <param name="environment">Reads an environment variable; null when it is not set.</param>
    public static bool WantsNoColour(Func<string, string?> environment) =>
        !string.IsNullOrEmpty(environment("NO_COLOR")) || environment("TERM") == "dumb";
}

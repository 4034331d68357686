using WeedAdvisor.Interview;
using WeedAdvisor.Interview.Labels;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <summary>What the screens are given.</summary>
/// <param name="Store">Where visits are read and saved.</param>
/// <param name="IsPlain">Whether to draw without any colour.</param>
/// <param name="Recovered">A draft of an interview that was broken off, to offer first; null when there is none.</param>
/// <param name="SetAside">Puts that draft aside when the grower does not want it; it is not thrown away.</param>
/// <param name="Trouble">What went wrong with such a draft, to tell first; null when all is well.</param>
/// <param name="Labels">The label book; null when none can be kept.</param>
public sealed record ScreenSettings(
    IVisitStore Store, bool IsPlain, Visit? Recovered = null, Action? SetAside = null, string? Trouble = null,
    LabelShelf? Labels = null)
{
    /// <summary>Whether the environment asks for no colour: NO_COLOR is set and not empty, or the terminal is dumb.</summary>
    /// <param name="environment">Reads an environment variable; null when it is not set.</param>
    public static bool WantsNoColour(Func<string, string?> environment) =>
        !string.IsNullOrEmpty(environment("NO_COLOR")) || environment("TERM") == "dumb";
}

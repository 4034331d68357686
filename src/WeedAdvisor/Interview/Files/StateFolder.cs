namespace WeedAdvisor.Interview.Files;

/// <summary>Where the program keeps what is under way: the XDG base directory for state.</summary>
public static class StateFolder
{
    /// <summary>
    /// <c>$XDG_STATE_HOME/weedadvisor</c>, or <c>~/.local/state/weedadvisor</c> when the variable is unset, empty or
    /// relative; null when the home folder is not known either.
    /// </summary>
    /// <param name="environment">Reads an environment variable; null when it is not set.</param>
    /// <param name="home">The home folder; empty when there is none.</param>
    public static string? Of(Func<string, string?> environment, string home)
    {
        string? state = environment("XDG_STATE_HOME");
        if (!string.IsNullOrEmpty(state) && Path.IsPathFullyQualified(state))
            return Path.Combine(state, "weedadvisor");
        return home.Length == 0 ? null : Path.Combine(home, ".local", "state", "weedadvisor");
    }
}

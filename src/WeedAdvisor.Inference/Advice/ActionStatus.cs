namespace WeedAdvisor.Inference.Advice;

/// <summary>How an action stands in an area: one of seven, the same words in every medium.</summary>
public enum ActionStatus
{
    /// <summary>No bar and no doubt that would outweigh it holds or could still hold.</summary>
    Clear,

    /// <summary>As clear, but for a doubt that could still outweigh it; the question is named.</summary>
    ClearUnless,

    /// <summary>
    /// A bar could still hold, or nothing speaks for it until an answer is known; the questions are named.
    /// </summary>
    Waits,

    /// <summary>What speaks against it weighs more, or nothing speaks for it.</summary>
    NotAdvised,

    /// <summary>Barred until a day or a state.</summary>
    NotYet,

    /// <summary>Barred in this way; the same product may be put on in another.</summary>
    NotThisWay,

    /// <summary>Barred here for good.</summary>
    Never,
}

/// <summary>The words for each status.</summary>
public static class ActionStatuses
{
    /// <summary>The word of a status, such as <c>not-yet</c>, as files and JSON write it.</summary>
    public static string Word(ActionStatus status) =>
        status switch
        {
            ActionStatus.Clear => "clear",
            ActionStatus.ClearUnless => "clear-unless",
            ActionStatus.Waits => "waits",
            ActionStatus.NotAdvised => "not-advised",
            ActionStatus.NotYet => "not-yet",
            ActionStatus.NotThisWay => "not-this-way",
            ActionStatus.Never => "never",
            _ => throw new ArgumentOutOfRangeException(nameof(status), status, "not a status"),
        };

    /// <summary>The status as people say it, such as <c>not yet</c>.</summary>
    public static string Text(ActionStatus status) => Word(status).Replace('-', ' ');
}

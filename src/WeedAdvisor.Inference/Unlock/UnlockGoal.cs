namespace WeedAdvisor.Inference.Unlock;

/// <summary>What is wanted of an action.</summary>
public enum UnlockGoal
{
    /// <summary>It is clear, or clear unless a doubt holds.</summary>
    Clear,

    /// <summary>A bar holds for sure.</summary>
    Bar,

    /// <summary>It is clear and stands before all else that is for the same time.</summary>
    First,
}

/// <summary>How far answers may be taken for other ones.</summary>
public enum UnlockReach
{
    /// <summary>What is not told yet, and what the grower can change.</summary>
    Grower,

    /// <summary>That, and what time changes.</summary>
    Time,

    /// <summary>Every answer, also what nothing changes.</summary>
    All,
}

namespace WeedAdvisor.Knowledge;

/// <summary>How much of a knowledge folder is read. The stamp is always that of all its files.</summary>
public enum KnowledgeScope
{
    /// <summary>Everything, with every check.</summary>
    Whole,

    /// <summary>All but the worked visits.</summary>
    WithoutWorkedVisits,

    /// <summary>
    /// What an advice rests on: neither the worked visits nor what the sources are called; keys of sources are not
    /// held against the list.
    /// </summary>
    ForAdvice,
}

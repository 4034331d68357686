namespace WeedAdvisor.Planning.OneYear;

/// <summary>Why a weed is counted.</summary>
public enum WeedOrigin
{
    /// <summary>It was seen at the visit, or is expected from earlier years.</summary>
    Seen,

    /// <summary>It was seen with ripe seed: more of it is to come.</summary>
    Seeding,

    /// <summary>It came through an earlier treatment.</summary>
    CameThrough,

    /// <summary>None is told, and it is common in such a place at this time of the year.</summary>
    ToCome,

    /// <summary>Weeds seed round about and it flies.</summary>
    BlownIn,
}

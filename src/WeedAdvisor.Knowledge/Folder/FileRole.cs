namespace WeedAdvisor.Knowledge.Folder;

/// <summary>What a file of the knowledge folder holds; its place says which.</summary>
internal enum FileRole
{
    /// <summary>The version of the knowledge.</summary>
    Version,

    /// <summary>Lists of words.</summary>
    Vocabulary,

    /// <summary>Questions.</summary>
    Questions,

    /// <summary>Sources.</summary>
    Sources,

    /// <summary>Findings.</summary>
    Findings,

    /// <summary>Crops.</summary>
    Crops,

    /// <summary>Regions.</summary>
    Regions,

    /// <summary>Steps of the rating scale.</summary>
    Scales,

    /// <summary>Prices.</summary>
    Prices,

    /// <summary>What the worked visits need not show.</summary>
    Coverage,

    /// <summary>Yearly limits of actives.</summary>
    Limits,

    /// <summary>Resistance of weeds that is on record.</summary>
    Resistance,

    /// <summary>What is taken for usual where nobody says it.</summary>
    Usual,

    /// <summary>Parameters of the hand-weeding model.</summary>
    Weeding,

    /// <summary>How long the work takes.</summary>
    WorkingTimes,

    /// <summary>Weeds.</summary>
    Weeds,

    /// <summary>Practices.</summary>
    Practices,

    /// <summary>Actives.</summary>
    Actives,

    /// <summary>Actives that may not be used any more.</summary>
    Withdrawn,

    /// <summary>Treatments.</summary>
    Treatments,

    /// <summary>Tables of ratings, one a source.</summary>
    Ratings,

    /// <summary>Judgements.</summary>
    Judgements,

    /// <summary>The law of a country.</summary>
    Law,

    /// <summary>Lessons.</summary>
    Lessons,

    /// <summary>Worked visits.</summary>
    Visits,

    /// <summary>Bars that a nursery lifts; in a local folder only.</summary>
    Lifts,

    /// <summary>Places of a nursery's own; in a local folder only.</summary>
    Places,
}

namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>What a pattern of a judgement is matched against.</summary>
public enum FactKind
{
    /// <summary>The area with its answers.</summary>
    Site,

    /// <summary>A weed seen in the area, with what its record says of it.</summary>
    Weed,

    /// <summary>A crop that stands in the area.</summary>
    Crop,

    /// <summary>A non-chemical action of the catalogue.</summary>
    Practice,

    /// <summary>A chemical use of the catalogue.</summary>
    Treatment,

    /// <summary>A practice or a treatment.</summary>
    Action,

    /// <summary>An earlier application in the area.</summary>
    Past,

    /// <summary>
    /// An application, here or under the same roof, whose entry interval runs or may run on the day of the visit.
    /// </summary>
    Closure,

    /// <summary>
    /// A weed that came through a site of action here although it is rated good on it, or may have done so.
    /// </summary>
    Escape,

    /// <summary>A limit of an active that keeps treatments out, or may do so, until a day.</summary>
    Limit,
}

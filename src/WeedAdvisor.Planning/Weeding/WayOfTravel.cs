using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>The way by which most of a weed's seed reaches pots; each has its own base pressure.</summary>
public enum WayOfTravel
{
    /// <summary>Thrown from the pod.</summary>
    Ballistic,

    /// <summary>Spores on the air, or gemmae splashed from cups.</summary>
    Spores,

    /// <summary>On the wind.</summary>
    Wind,

    /// <summary>Splashed or washed.</summary>
    WaterSplash,

    /// <summary>Only with pots, mix, tools and roots.</summary>
    Carried,
}

/// <summary>Finds the way of travel of a weed.</summary>
public static class WaysOfTravel
{
    /// <summary>
    /// The first of thrown, spores or gemmae, wind, splash that the weed's record lists; otherwise carried.
    /// </summary>
    public static WayOfTravel Of(Weed weed)
    {
        if (weed.SpreadsBy.Contains("ballistic"))
            return WayOfTravel.Ballistic;
        if (weed.SpreadsBy.Contains("gemmae") || weed.SpreadsBy.Contains("spores"))
            return WayOfTravel.Spores;
        if (weed.SpreadsBy.Contains("wind"))
            return WayOfTravel.Wind;
        return weed.SpreadsBy.Contains("water-splash") ? WayOfTravel.WaterSplash : WayOfTravel.Carried;
    }

    /// <summary>The end of the ids of its parameters.</summary>
    internal static string Ending(this WayOfTravel way) =>
        way switch
        {
            WayOfTravel.Ballistic => "ballistic",
            WayOfTravel.Spores => "spores",
            WayOfTravel.Wind => "wind",
            WayOfTravel.WaterSplash => "water-splash",
            _ => "carried",
        };
}

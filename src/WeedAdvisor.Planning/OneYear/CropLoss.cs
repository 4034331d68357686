namespace WeedAdvisor.Planning.OneYear;

/// <summary>
/// Plants that cannot be sold because weeds grew up beside them. One grass weed left in a pot for 83 days cost a shrub
/// up to 75 % of its shoot weight, and more weeds took no more (walker-williams-1989): so pots are counted, not weeds.
/// How many of those pots are lost to sale is an assumption, a price the grower can set.
/// </summary>
public static class CropLoss
{
    /// <summary>Pots that the figures are for.</summary>
    public const double Pots = 1000;

    /// <summary>
    /// Pots of 1000 in which an old weed stood in the year. Weeds fall at random, so the share of pots without one
    /// falls as exp(-weeds per pot).
    /// </summary>
    /// <param name="oldWeeds">Weeds of 10 cm and more that were pulled from 1000 pots, at least 0.</param>
    public static double PotsHurt(double oldWeeds) => Pots * (1 - Math.Exp(-Math.Max(0, oldWeeds) / Pots));

    /// <summary>The other way round: old weeds in 1000 pots that hurt so many of them.</summary>
    /// <param name="pots">Pots hurt, 0 to under 1000.</param>
    public static double WeedsThatHurt(double pots) => -Pots * Math.Log(1 - (pots / Pots));
}

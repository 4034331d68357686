using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Costs;

/// <summary>Which tool a treatment goes on with.</summary>
public static class ApplicationTools
{
    /// <summary>A boom sprayer.</summary>
    public const string Boom = "boom-sprayer";

    /// <summary>A backpack sprayer.</summary>
    public const string Backpack = "backpack-sprayer";

    /// <summary>A hand-cranked spreader.</summary>
    public const string Spreader = "hand-spreader";

    /// <summary>A spoon or shaker for single pots.</summary>
    public const string Spoon = "pot-dosing-spoon";

    private const string OverTheTop = "spray-over-top";

    /// <summary>Whether a treatment may go on with a boom: what has to be kept off the leaves cannot.</summary>
    /// <param name="treatment">The treatment.</param>
    public static bool IsForBoom(Treatment treatment) =>
        treatment.Applied.Contains(OverTheTop) && treatment.NeedsEquipment.Contains(Boom);

    /// <summary>The id of the working time that says how fast a tool goes; null where it is reckoned by pots.</summary>
    internal static string? SpeedOf(string tool) =>
        tool switch
        {
            Boom => WorkingTimeIds.Boom,
            Backpack => WorkingTimeIds.Backpack,
            Spreader => WorkingTimeIds.Spreader,
            _ => null,
        };

    /// <summary>
    /// The work with the tool that is asked for; else with the quickest of those that are there; else with the quickest
    /// that one carries.
    /// </summary>
    internal static Outcome<ApplicationWork, string> Choose(
        Treatment treatment,
        CostSite site,
        KnowledgeBase knowledge,
        WordSet equipment,
        string? tool
    )
    {
        if (knowledge.WorkingTimes.IsEmpty)
            return "no working times are known";
        string[] usable = [.. treatment.NeedsEquipment.Where(one => CanUse(one, treatment, site))];
        string[] there = [.. usable.Where(equipment.Contains)];
        string[] carried = [.. usable.Where(one => one != Boom)];
        string[] open =
            tool is not null ? [tool]
            : there.Length > 0 ? there
            : carried.Length > 0 ? carried
            : usable;
        ApplicationWork? quickest = open.Select(one => ApplicationWork.Of(one, site, knowledge))
            .OrderBy(work => work.Hours.Middle)
            .ThenBy(work => work.Tool, StringComparer.Ordinal)
            .FirstOrDefault();
        return quickest is null
            ? $"no working time says how long '{treatment.Id}' takes"
            : Outcome<ApplicationWork, string>.Good(quickest);
    }

    private static bool CanUse(string tool, Treatment treatment, CostSite site) =>
        tool switch
        {
            Boom => IsForBoom(treatment),
            Spoon => site.Block is not null,
            _ => SpeedOf(tool) is not null,
        };
}

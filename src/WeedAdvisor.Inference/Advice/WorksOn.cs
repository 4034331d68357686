using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Advice;

/// <summary>
/// Which weeds an action works on. What it does to those that stand and to those to come is never mixed.
/// </summary>
public enum WorksOn
{
    /// <summary>Weeds that are up.</summary>
    Standing,

    /// <summary>Seed and spores, before they come up.</summary>
    Coming,

    /// <summary>Both.</summary>
    Both,
}

/// <summary>Reads from a record what it works on.</summary>
public static class Works
{
    /// <summary>What an action works on.</summary>
    public static WorksOn On(CatalogueAction action) =>
        action switch
        {
            Practice { WorksOn: "standing-weeds" } => WorksOn.Standing,
            Practice { WorksOn: "seed-and-spores" } => WorksOn.Coming,
            Treatment treatment when !treatment.ActsOn.Contains("emerged") => WorksOn.Coming,
            Treatment treatment when !treatment.ActsOn.Contains("germinating") => WorksOn.Standing,
            _ => WorksOn.Both,
        };

    /// <summary>Whether an action works on weeds that stand.</summary>
    public static bool OnStanding(CatalogueAction action) => On(action) != WorksOn.Coming;

    /// <summary>
    /// The job an action does, word of list <c>one-of</c>: of several with the same job one is enough. Chemicals of one
    /// role do one job. Null when it stands alone.
    /// </summary>
    public static string? JobOf(CatalogueAction action) =>
        action switch
        {
            Practice practice => practice.OneOf,
            Treatment treatment => treatment.Role,
            _ => null,
        };

    /// <summary>The word of it, as JSON writes it.</summary>
    public static string Word(WorksOn on) =>
        on switch
        {
            WorksOn.Standing => "standing",
            WorksOn.Coming => "coming",
            WorksOn.Both => "both",
            _ => throw new ArgumentOutOfRangeException(nameof(on), on, "not a word of it"),
        };
}

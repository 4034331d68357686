using System.Collections.Immutable;

namespace WeedAdvisor.Planning.Rates.Sprayers;

/// <summary>What must be said with every sum on a sprayer.</summary>
internal static class SprayCautions
{
    /// <summary>The cautions, in the order of the work.</summary>
    public static ImmutableArray<string> All { get; } =
    [
        "Calibrate with clean water only, in a clean sprayer.",
        "Wear the protective equipment that the label asks for, also while calibrating: hoses and nozzles hold "
            + "residues.",
        "The label's rate and spray volume are the law. A sum can bring you to them, never past them.",
        "Never let spray or wash water run to a drain, ditch or pond.",
    ];
}

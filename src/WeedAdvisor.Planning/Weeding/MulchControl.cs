using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Weeding;

/// <summary>What a mulch on the pots stops.</summary>
public static class MulchControl
{
    /// <summary>Share of the seedlings that are stopped, 0 to 1. A fitted disc is always of working depth.</summary>
    public static double Of(Weed weed, PotMulch? mulch, WeedingNumbers numbers)
    {
        if (mulch is null)
            return 0;
        double full =
            numbers[
                "mulch-control-percent-"
                    + weed.NeedsLight switch
                    {
                        "yes" => "light-needing",
                        "partly" => "partly",
                        _ => "dark-sprouting",
                    }
            ] / 100;
        return full * LeftBy(mulch, numbers);
    }

    /// <summary>What a layer does, as a share of what it does at a working depth, 0 to 1.</summary>
    public static double LeftBy(PotMulch mulch, WeedingNumbers numbers)
    {
        double working = numbers["working-depth-cm-" + (mulch.Kind == "rice-hulls" ? "rice-hulls" : "other-mulch")];
        bool isThin = mulch.Kind != "discs" && mulch.DepthCm is { } depth && (double)depth < working;
        return isThin ? numbers["thin-mulch-percent-of-control"] / 100 : 1;
    }
}

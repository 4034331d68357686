using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Reports.Why;

/// <summary>What stands before a condition: met, not met, not known.</summary>
internal static class TruthMark
{
    /// <summary>The mark.</summary>
    public static string Of(Truth truth) =>
        truth switch
        {
            Truth.Yes => "[yes] ",
            Truth.NotKnown => "[?]   ",
            _ => "[no]  ",
        };

    /// <summary>The word of it, as JSON writes it.</summary>
    public static string Word(Truth truth) =>
        truth switch
        {
            Truth.Yes => "yes",
            Truth.NotKnown => "not-known",
            _ => "no",
        };
}

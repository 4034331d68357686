using WeedAdvisor.Inference.Certainties;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Conclusions;

/// <summary>What several pieces of evidence say together.</summary>
internal static class Evidences
{
    /// <summary>Yes with certain evidence, not known with possible evidence only, no without any.</summary>
    public static Truth TruthOf(IReadOnlyCollection<Conclusion> evidence) =>
        evidence.Any(one => one.IsCertain) ? Truth.Yes : evidence.Count > 0 ? Truth.NotKnown : Truth.No;

    /// <summary>The evidence that counts: the certain pieces, or, when there are none, the possible ones.</summary>
    public static IEnumerable<T> ThatCount<T>(IReadOnlyCollection<T> evidence)
        where T : Conclusion =>
        evidence.Any(one => one.IsCertain) ? evidence.Where(one => one.IsCertain) : evidence;

    /// <summary>Combined certainty. Each judgement speaks once, with its strongest match: five weeds are not five arguments.</summary>
    public static double CertaintyOf(IEnumerable<Conclusion> evidence) => CertaintyFactor.Combine(
        evidence.GroupBy(one => one.Judgement.Id, StringComparer.Ordinal).Select(rule => rule.Max(one => one.Certainty)));
}

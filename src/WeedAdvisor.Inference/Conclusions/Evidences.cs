using WeedAdvisor.Inference.Certainties;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Conclusions;

/// <summary>What several pieces of evidence say together.</summary>
internal static class Evidences
{
    /// <summary>Yes with certain evidence, not known with possible evidence only, no without any.</summary>
    public static Truth TruthOf(IReadOnlyCollection<Conclusion> evidence) =>
        evidence.Any(one => one.IsCertain) ? Truth.Yes
        : evidence.Count > 0 ? Truth.NotKnown
        : Truth.No;

    /// <summary>The evidence that counts: the certain pieces, or, when there are none, the possible ones.</summary>
    public static IEnumerable<T> ThatCount<T>(IReadOnlyCollection<T> evidence)
        where T : Conclusion => evidence.Any(one => one.IsCertain) ? evidence.Where(one => one.IsCertain) : evidence;

    /// <summary>
    /// Combined certainty. Each judgement speaks once, with its strongest match: five weeds are not five arguments.
    /// </summary>
    public static double CertaintyOf(IEnumerable<Conclusion> evidence) => Together(evidence, one => one.Certainty);

    /// <summary>Combined certainty if all that may hold turns out to hold.</summary>
    public static double MostCertaintyOf(IEnumerable<Conclusion> evidence) =>
        Together(evidence, one => one.MostCertainty);

    /// <summary>What would have to be known before the certainty of a conclusion can rise no more.</summary>
    public static IEnumerable<Need> OpenIn(Conclusion conclusion) =>
        conclusion.IsCertain
            ? conclusion
                .Match.OfType<Matched.Evidence>()
                .SelectMany(evidence => evidence.Conclusions)
                .SelectMany(OpenIn)
            : conclusion.Needs;

    // Asked for every action of every area, mostly of one to three arguments: no query is made of it.
    private static double Together(IEnumerable<Conclusion> evidence, Func<Conclusion, double> certainty)
    {
        List<(string Judgement, double Certainty)>? rules = null;
        foreach (Conclusion one in evidence)
        {
            double now = certainty(one);
            rules ??= [];
            int place = rules.FindIndex(rule => rule.Judgement == one.Judgement.Id);
            if (place < 0)
                rules.Add((one.Judgement.Id, now));
            else if (now > rules[place].Certainty)
                rules[place] = (one.Judgement.Id, now);
        }

        return rules is null ? 0 : CertaintyFactor.Combine(rules.Select(rule => rule.Certainty));
    }
}

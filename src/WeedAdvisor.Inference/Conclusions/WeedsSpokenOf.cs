using WeedAdvisor.Inference.Facts;

namespace WeedAdvisor.Inference.Conclusions;

/// <summary>The weeds on account of which a rule speaks: those it matched one by one, itself or through a
/// finding.</summary>
internal static class WeedsSpokenOf
{
    /// <summary>The weeds; one may come twice.</summary>
    public static IEnumerable<WeedFact> In(Conclusion conclusion) =>
        conclusion.Match.SelectMany(matched =>
            matched switch
            {
                Matched.One { Fact: WeedFact weed } => [weed],
                Matched.Evidence evidence => evidence.Conclusions.SelectMany(In),
                _ => Enumerable.Empty<WeedFact>(),
            }
        );
}

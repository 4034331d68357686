using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Text;

/// <summary>The bars that a nursery lifted for itself: told wherever something rests on them.</summary>
public static class LiftedBars
{
    /// <summary>A paragraph for each; none when none is lifted.</summary>
    public static IEnumerable<Block> Of(KnowledgeStamp stamp) =>
        stamp.Lifted.Select(lifted => new Paragraph(
            Line.Of($"LIFTED HERE: the bar '{lifted.Judgement}', because {lifted.Because}") with
            {
                Tone = Tone.Warning,
            }
        ));
}

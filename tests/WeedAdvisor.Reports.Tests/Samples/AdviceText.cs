using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;

namespace WeedAdvisor.Reports.Tests.Samples;

/// <summary>How an advice is laid out as text.</summary>
/// <param name="Width">Columns of the page.</param>
/// <param name="WithSources">Whether the sources are named and cited.</param>
/// <param name="Full">Whether everything is shown.</param>
internal sealed record TextLayout(int Width = 80, bool WithSources = false, bool Full = false);

/// <summary>An advice as the command prints it.</summary>
internal static class TextReport
{
    public static string Of(VisitAdvice advice, KnowledgeBase knowledge, TextLayout layout) =>
        DocumentText.Of(AdviceDocument.Of(advice, knowledge, layout.Full, layout.WithSources), layout.Width);
}

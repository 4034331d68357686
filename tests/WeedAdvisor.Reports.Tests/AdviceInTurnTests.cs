using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Tests.Samples;

namespace WeedAdvisor.Reports.Tests;

public sealed class AdviceInTurnTests
{
    private static readonly ImmutableArray<AreaAdvice> s_areas =
    [
        SampleAdvice.FullArea,
        SampleAdvice.BlankArea,
        SampleAdvice.WithGranules(7),
        SampleAdvice.ClosedArea,
        SampleAdvice.Seeding(SampleAdvice.FullArea),
        SampleAdvice.FullArea with
        {
            Clear = [SampleAdvice.Pull],
        },
        SampleAdvice.WithGranules(2),
    ];

    public static TheoryData<int, bool, bool> Ways()
    {
        var ways = new TheoryData<int, bool, bool>();
        foreach (int atOnce in (int[])[1, 2, 3, 7])
        {
            foreach (bool full in (bool[])[false, true])
            {
                ways.Add(atOnce, full, false);
                ways.Add(atOnce, full, true);
            }
        }

        return ways;
    }

    [Theory]
    [MemberData(nameof(Ways))]
    public void Areas_that_come_some_at_a_time_read_like_areas_that_come_at_once(int atOnce, bool full, bool cite)
    {
        VisitAdvice advice = SampleAdvice.Of(s_areas);
        string whole = TextReport.Of(advice, SampleKnowledge.Small, new TextLayout(72, cite, full));
        Assert.Equal(whole, InTurn(advice, s_areas.Chunk(atOnce).Select(some => some.ToImmutableArray()), full, cite));
    }

    [Fact]
    public void An_area_is_let_go_before_the_next_is_asked_for()
    {
        List<WeakReference> passed = [];
        int kept = 0;
        IEnumerable<ImmutableArray<AreaAdvice>> OneByOne()
        {
            for (int i = 0; i < 20; i++)
            {
                GC.Collect();
                kept = Math.Max(kept, passed.Count(one => one.IsAlive));
                yield return Next(passed);
            }
        }

        InTurn(SampleAdvice.Of(s_areas), OneByOne(), full: false, cite: false);
        Assert.Equal(20, passed.Count);
        Assert.InRange(kept, 0, 2);
    }

    private static ImmutableArray<AreaAdvice> Next(List<WeakReference> passed)
    {
        AreaAdvice area = SampleAdvice.FullArea;
        passed.Add(new WeakReference(area));
        return [area];
    }

    private static string InTurn(
        VisitAdvice advice,
        IEnumerable<ImmutableArray<AreaAdvice>> areas,
        bool full,
        bool cite
    )
    {
        var text = new StringWriter();
        AdviceInTurn.Write(text, advice.Visit, areas, SampleKnowledge.Small, full, cite, 72);
        return text.ToString();
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Oracle;

/// <summary>
/// What is concluded although not everything is known is held against every way in which the rest can turn out: each is
/// decided by itself, true or false, by code that knows nothing of a third truth.
/// </summary>
public class CompletionTests
{
    private const int MostWorlds = 250;

    // Each drawn and completed once for all tests of the class; null where too much is open.
    private static readonly Lazy<(DrawnCase Case, Said[][] Worlds)?>[] s_drawn =
    [
        .. Enumerable
            .Range(0, Sizes.Of(500, 3000))
            .Select(number => new Lazy<(DrawnCase, Said[][])?>(() => Case(number))),
    ];

    // Where it is said that something may hold and every completion agrees, the program could have known better. It is
    // not wrong, but a change of these numbers is a change of what is known for sure.
    private static readonly (int Always, int Never) s_couldBeKnown = Sizes.IsLong ? (332, 472) : (49, 76);

    [Fact]
    public void What_the_engine_concludes_agrees_with_every_completion() =>
        Holds(one => Asked.OfEngine(one.Knowledge, one.Looked));

    [Fact]
    public void What_the_tree_concludes_agrees_with_every_completion() =>
        Holds(one => Asked.OfTree(one.Knowledge, one.Looked));

    [Fact]
    public void What_any_completion_bars_is_never_clear()
    {
        int clear = 0;
        foreach ((DrawnCase drawn, Said[][] worlds) in Cases())
        {
            AreaAdvice advice = Advisor.Of(drawn.Knowledge).Open(drawn.Looked).Advice;
            HashSet<string> bars =
            [
                .. drawn.Knowledge.Judgements.Where(one => one.Then is Consequence.Bar).Select(one => one.Id),
            ];
            HashSet<string> barred =
            [
                .. worlds
                    .SelectMany(world => world)
                    .Where(one => bars.Contains(one.Judgement))
                    .Select(one => one.Action!),
            ];
            Assert.DoesNotContain(advice.Clear, action => barred.Contains(action.Action));
            clear += advice.Clear.Length;
        }

        Assert.True(clear > 0, "nothing was clear in any case");
    }

    private static void Holds(Func<DrawnCase, Said[]> asked)
    {
        int always = 0,
            never = 0;
        ITestOutputHelper page = TestContext.Current.TestOutputHelper!;
        foreach ((DrawnCase drawn, Said[][] worlds) in Cases())
        {
            (Said[] inAll, Said[] inNone) = Compared(drawn, asked(drawn), worlds);
            always += inAll.Length;
            never += inNone.Length;
            if (inAll.Length + inNone.Length > 0)
                page.WriteLine($"case {drawn.Drawn}: always {Listed(inAll)}; never {Listed(inNone)}");
        }

        page.WriteLine($"{Cases().Count()} cases; possible, and so in every completion: {always}, in none: {never}");
        Assert.Equal(s_couldBeKnown, (always, never));
    }

    private static IEnumerable<(DrawnCase Case, Said[][] Worlds)> Cases() =>
        s_drawn.Select(drawn => drawn.Value).OfType<(DrawnCase, Said[][])>();

    private static (DrawnCase, Said[][])? Case(int number)
    {
        DrawnCase drawn = DrawnCase.Number(number);
        return Completions.Of(drawn, MostWorlds) is { } worlds
            ? (drawn, [.. worlds.Select(world => TwoValued.Conclude(drawn.Knowledge.Judgements, world))])
            : null;
    }

    private static string Listed(Said[] said) => string.Join(' ', said.Select(one => one.Id));

    // What may hold, or may not, although it does in every completion, or in none.
    private static (Said[] Always, Said[] Never) Compared(DrawnCase drawn, Said[] said, Said[][] worlds)
    {
        // In how many completions each holds.
        Dictionary<string, int> times = Times(worlds, one => one.Id),
            timesAbout = Times(worlds, one => one.About);
        HashSet<string> ids = [.. said.Select(one => one.Id)],
            about = [.. said.Select(one => one.About)];
        foreach (Said one in said.Where(one => one.IsCertain))
        {
            bool isInAll = times.GetValueOrDefault(one.Id) == worlds.Length;
            Assert.True(isInAll, $"certain, and not in every completion: {one.Id}\n{Shown(drawn)}");
        }

        foreach (Said one in worlds.SelectMany(world => world))
        {
            // What nobody listed is spoken of by a stand-in.
            bool isSaid = ids.Contains(one.Id) || (said.Any(other => other.IsOfUntold) && about.Contains(one.About));
            Assert.True(isSaid, $"not even possible, and holds in a completion: {one.Id}\n{Shown(drawn)}");
        }

        ILookup<int, Said> possible = said.Where(one => !one.IsCertain)
            .DistinctBy(one => one.Id)
            .ToLookup(one =>
                one.IsOfUntold ? timesAbout.GetValueOrDefault(one.About) : times.GetValueOrDefault(one.Id)
            );
        return ([.. possible[worlds.Length]], [.. possible[0]]);
    }

    private static Dictionary<string, int> Times(Said[][] worlds, Func<Said, string> key) =>
        worlds.SelectMany(world => world.Select(key).Distinct()).CountBy(id => id).ToDictionary(StringComparer.Ordinal);

    private static string Shown(DrawnCase drawn) => Describe.Case((drawn.Knowledge.Judgements, [drawn.Area]));
}

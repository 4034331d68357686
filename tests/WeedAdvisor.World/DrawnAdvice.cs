using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.World;

/// <summary>
/// Areas drawn at random with their advice. Laws that only look at what comes out share one draw a process, which costs
/// as much as one law; where a law wants more of them than were drawn, or one seed is given, it draws its own.
/// </summary>
public sealed class DrawnAdvice
{
    private const string SeedVariable = "CsCheck_Seed";

    private readonly Gen<AreaCase> _gen;
    private readonly int _many;
    private readonly Lazy<ImmutableArray<Lazy<Drawn>>> _drawn;

    private DrawnAdvice(Gen<AreaCase> gen, int many)
    {
        _gen = gen;
        _many = many;
        _drawn = new Lazy<ImmutableArray<Lazy<Drawn>>>(Draw);
    }

    /// <summary>Areas of visits to one, two or three, some of which share a house.</summary>
    public static DrawnAdvice OfCases { get; } = new(new RandomVisits(ShippedRules.Knowledge).Case, 150);

    /// <summary>Areas that stand alone.</summary>
    public static DrawnAdvice OfAreas { get; } =
        new(new RandomVisits(ShippedRules.Knowledge).Area.Select(area => AreaCase.Alone(RandomVisits.Day, area)), 80);

    /// <summary>Holds a law against so many areas drawn.</summary>
    /// <exception cref="InvalidOperationException">It does not hold: the message names the seed.</exception>
    public void Sample(Action<AreaCase, AreaAdvice> holds, int many)
    {
        if (many > _many || Environment.GetEnvironmentVariable(SeedVariable) is { Length: > 0 })
        {
            _gen.Sample(drawn => holds(drawn, ShippedRules.On(drawn)), iter: many, threads: 1);
            return;
        }

        foreach (Drawn one in _drawn.Value.Take(many).Select(drawn => drawn.Value))
        {
            try
            {
                holds(one.Case, one.Advice);
            }
            catch (Exception e)
            {
                throw new InvalidOperationException($"{SeedVariable}={one.Seed} draws it again: {e.Message}", e);
            }
        }
    }

    // Drawn at once, advised when a law first looks.
    private ImmutableArray<Lazy<Drawn>> Draw()
    {
        var random = new PCG(101);
        return
        [
            .. Enumerable
                .Range(0, _many)
                .Select(_ =>
                {
                    string seed = random.ToString(random.State);
                    AreaCase area = _gen.Generate(random, null, out Size _);
                    return new Lazy<Drawn>(() => new Drawn(seed, area, ShippedRules.On(area)));
                }),
        ];
    }

    private sealed record Drawn(string Seed, AreaCase Case, AreaAdvice Advice);
}

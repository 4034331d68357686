using System.Collections.Immutable;
using NRules;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// The one place that knows the rule engine: judgements in, sessions out. Compiled once; safe to share between threads.
/// </summary>
internal sealed class RuleEngine
{
    private readonly ISessionFactory _factory;
    private readonly ImmutableArray<ActionFact> _catalogue;
    private readonly int _firingCap;

    private RuleEngine(ISessionFactory factory, ImmutableArray<ActionFact> catalogue, int firingCap)
    {
        _factory = factory;
        _catalogue = catalogue;
        _firingCap = firingCap;
    }

    /// <summary>Compiles judgements. They enter in ordinal order of id, whatever order they come in.</summary>
    /// <exception cref="ArgumentException">A judgement says the same twice; the reader refuses such knowledge.</exception>
    public static RuleEngine Of(IEnumerable<Judgement> judgements, ImmutableArray<ActionFact> catalogue)
    {
        Judgement[] ordered = [.. judgements.OrderBy(judgement => judgement.Id, StringComparer.Ordinal)];
        if (Array.Find(ordered, judgement => Repetition.In(judgement.When) is not null) is { } twice)
            throw new ArgumentException($"'{twice.Id}' says the same twice", nameof(judgements));
        var compiler = new RuleCompiler { ExpressionCompiler = new InterpretedExpressions() };
        ISessionFactory factory = compiler.Compile(ordered.Select(JudgementRule.Of));
        // Far above what rules times actions times weeds can need in one go, far below for ever.
        int cap = 1000 + 100 * Math.Max(1, ordered.Length) * (catalogue.Length + 10);
        return new RuleEngine(factory, catalogue, cap);
    }

    /// <summary>A session that holds the catalogue and waits for an area.</summary>
    public EngineSession Open()
    {
        ISession session = _factory.CreateSession();
        session.InsertAll(_catalogue);
        return new EngineSession(session, _firingCap);
    }
}

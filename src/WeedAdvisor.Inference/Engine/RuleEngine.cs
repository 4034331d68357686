using System.Collections.Immutable;
using NRules;
using WeedAdvisor.Inference.Catalogue;
using WeedAdvisor.Inference.Facts;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Inference.Engine;

/// <summary>
/// The door to the rule engine: judgements in, sessions out. The engine matches and chains over the case; what a match
/// says of the catalogue is found in sets. Compiled once; safe to share between threads.
/// </summary>
internal sealed class RuleEngine
{
    private readonly ISessionFactory _factory;
    private readonly Dictionary<string, CaseRule> _rules;
    private readonly ImmutableArray<string> _findings;
    private readonly ImmutableArray<FactList> _catalogue;
    private readonly ActionIndex _index;

    private RuleEngine(
        ISessionFactory factory,
        ImmutableArray<CaseRule> rules,
        ImmutableArray<string> findings,
        ActionIndex index,
        int interpreted
    )
    {
        _factory = factory;
        _rules = rules.ToDictionary(rule => rule.Judgement.Id, StringComparer.Ordinal);
        _findings = findings;
        _catalogue = [.. FactTypes.Lists(index.Actions, areOfCatalogue: true)];
        _index = index;
        InterpretedConditions = interpreted;
    }

    /// <summary>
    /// How many conditions the engine has to have interpreted because they could not be bound: none, unless the engine
    /// changes.
    /// </summary>
    public int InterpretedConditions { get; }

    /// <summary>Compiles judgements. They enter in ordinal order of id, whatever order they come in.</summary>
    /// <exception cref="ArgumentException">A judgement asks something else after the action; the reader refuses such
    /// knowledge.</exception>
    public static RuleEngine Of(IEnumerable<Judgement> judgements, IEnumerable<ActionFact> catalogue)
    {
        ImmutableArray<CaseRule> rules =
        [
            .. judgements.OrderBy(judgement => judgement.Id, StringComparer.Ordinal).Select(CaseRule.Of),
        ];
        // The engine's half of the rules knows nothing of the catalogue, so both are made side by side.
        Task<Compiled> compiling = Task.Run(() => Compile(rules));
        var index = new ActionIndex(catalogue);
        ImmutableArray<CaseRule> split = [.. rules.Select(rule => rule.On(index))];
        ImmutableArray<string> findings =
        [
            .. rules
                .SelectMany(rule => FindingOrder.NamedIn(rule.Judgement))
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];
        Compiled compiled = compiling.GetAwaiter().GetResult();
        return new RuleEngine(compiled.Factory, split, findings, index, compiled.Interpreted);
    }

    private static Compiled Compile(ImmutableArray<CaseRule> rules)
    {
        if (!ConditionShapes.AreKept())
            throw new InvalidOperationException("conditions have shapes that a native program does not know");
        var shelf = new MatcherShelf();
        var conditions = new DirectConditions();
        ISessionFactory factory = new RuleCompiler { ExpressionCompiler = conditions }.Compile(
            rules.Select(rule => rule.Definition(shelf))
        );
        return new Compiled(factory, conditions.Interpreted);
    }

    /// <summary>A session that waits for an area.</summary>
    public EngineSession Open()
    {
        ISession session = _factory.CreateSession();
        FindingFact[] findings = [.. _findings.Select(id => new FindingFact(id))];
        var keeper = new MatchKeeper(_rules, findings.ToDictionary(finding => finding.Id, StringComparer.Ordinal));
        session.ActionInterceptor = keeper;
        session.InsertAll([.. findings, .. _catalogue]);
        return new EngineSession(session, keeper, _index, firingCap: FiringCap);
    }

    // Far above what the rules can need in one go over a case of some hundred facts, far below for ever.
    private int FiringCap => 10_000 + 1_000 * _rules.Count;

    private sealed record Compiled(ISessionFactory Factory, int Interpreted);
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Inference.Unlock;

/// <summary>
/// Which answers a rule can hang on: those it tests, those that decide whether they apply, those from which they are
/// worked out, and all those of the findings it builds on. Rather one too many than one too few.
/// </summary>
internal sealed class QuestionsBehind
{
    // What is worked out from answers, with the answers.
    private static readonly ImmutableDictionary<string, ImmutableArray<string>> s_derived = new Dictionary<
        string,
        ImmutableArray<string>
    >
    {
        ["season"] = [QuestionIds.Region],
        ["mean-c"] = [QuestionIds.Region],
        ["warming"] = [QuestionIds.Region],
        ["country"] = [QuestionIds.Region],
        ["months-of"] = [QuestionIds.Region, QuestionIds.Heated],
        ["days-since-potting"] = [QuestionIds.PottedOn],
        ["days-to-covering"] = [QuestionIds.CoveringDate],
        ["days-to-next"] = [QuestionIds.ComesNextOn],
        ["enclosed"] = [QuestionIds.Cover],
        [QuestionIds.Shipping] = [QuestionIds.ComesNext, QuestionIds.ComesNextOn],
        [QuestionIds.Equipment] = [QuestionIds.Place, QuestionIds.Stock, QuestionIds.Cover],
        ["untold-use"] = [QuestionIds.PutOnLately, QuestionIds.Cover, QuestionIds.House],
        [QuestionIds.Stock] = [QuestionIds.Crops],
        [QuestionIds.Crops] = [QuestionIds.Stock],
        [QuestionIds.PutOnLately] = [QuestionIds.Cover, QuestionIds.House],
    }.ToImmutableDictionary(StringComparer.Ordinal);

    private static readonly ImmutableArray<string> s_ofWeeds =
    [
        QuestionIds.Region,
        QuestionIds.Heated,
        QuestionIds.Place,
        QuestionIds.Surroundings,
        QuestionIds.ExpectedWeeds,
    ];
    private static readonly ImmutableArray<string> s_ofClosures =
    [
        QuestionIds.Cover,
        QuestionIds.House,
        QuestionIds.PutOnLately,
        QuestionIds.Region,
    ];

    private readonly KnowledgeBase _knowledge;
    private readonly ILookup<string, Judgement> _makers;
    private readonly Dictionary<string, ImmutableHashSet<string>> _ofAttribute = new(StringComparer.Ordinal);
    private readonly Dictionary<string, ImmutableHashSet<string>> _ofFinding = new(StringComparer.Ordinal);

    /// <summary>The questions of a knowledge base.</summary>
    public QuestionsBehind(KnowledgeBase knowledge)
    {
        _knowledge = knowledge;
        _makers = knowledge
            .Judgements.Where(one => one.Then is Consequence.MakesFinding)
            .ToLookup(one => ((Consequence.MakesFinding)one.Then).Id, StringComparer.Ordinal);
        OfOtherFacts = [.. s_ofWeeds.Concat(s_ofClosures).Append(QuestionIds.Stock).SelectMany(Attribute)];
    }

    /// <summary>Every question on which facts other than the site hang.</summary>
    public ImmutableHashSet<string> OfOtherFacts { get; }

    /// <summary>The rules that make a finding.</summary>
    public IEnumerable<Judgement> Makers(string finding) => _makers[finding];

    /// <summary>The fact that a pattern asks for, also inside "any" and "none"; null for a finding.</summary>
    public static Pattern.Fact? FactIn(Pattern pattern) =>
        pattern switch
        {
            Pattern.Fact fact => fact,
            Pattern.Any any => FactIn(any.Inner),
            Pattern.None none => FactIn(none.Inner),
            _ => null,
        };

    /// <summary>The finding that a pattern names, also inside "any" and "none"; null for a fact.</summary>
    public static string? FindingIn(Pattern pattern) =>
        pattern switch
        {
            Pattern.HasFinding finding => finding.Id,
            Pattern.Any any => FindingIn(any.Inner),
            Pattern.None none => FindingIn(none.Inner),
            _ => null,
        };

    /// <summary>The questions behind a rule.</summary>
    public ImmutableHashSet<string> Of(Judgement judgement) => [.. judgement.When.SelectMany(Of)];

    /// <summary>The questions behind one condition.</summary>
    public ImmutableHashSet<string> Of(Pattern pattern)
    {
        if (FindingIn(pattern) is { } finding)
        {
            if (!_ofFinding.TryGetValue(finding, out ImmutableHashSet<string>? known))
                _ofFinding[finding] = known = [.. _makers[finding].SelectMany(Of)];
            return known;
        }

        Pattern.Fact fact = FactIn(pattern)!;
        return fact.Kind switch
        {
            FactKind.Site => [.. fact.Tests.SelectMany(test => Attribute(test.Attribute))],
            FactKind.Weed => [.. s_ofWeeds.SelectMany(Attribute)],
            FactKind.Crop => Attribute(QuestionIds.Crops),
            FactKind.Closure => [.. s_ofClosures.SelectMany(Attribute)],
            _ => [],
        };
    }

    /// <summary>The questions behind an attribute of the site, itself among them.</summary>
    public ImmutableHashSet<string> Attribute(string attribute)
    {
        if (_ofAttribute.TryGetValue(attribute, out ImmutableHashSet<string>? known))
            return known;
        _ofAttribute[attribute] = [];
        ImmutableHashSet<string> found =
        [
            attribute,
            .. s_derived.GetValueOrDefault(attribute, []).SelectMany(Attribute),
            .. s_derived.GetValueOrDefault(attribute, []),
            .. (_knowledge.QuestionOf(attribute)?.AskedWhen ?? []).SelectMany(gate => Attribute(gate.Attribute)),
        ];
        return _ofAttribute[attribute] = found;
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Advice;

/// <summary>
/// Why something was concluded: the rule, the facts it matched, and the reasons of the findings it builds on. Texts and
/// matched facts are worked out when they are read: most reasons of a visit are never looked at. Immutable.
/// </summary>
public sealed class Reason
{
    private readonly IReasonDetails? _details;
    private readonly Conclusion? _conclusion;
    private readonly Said? _said;
    private readonly Said? _caution;
    private readonly ImmutableArray<MatchedPattern> _matched;

    /// <summary>A reason of which everything is at hand.</summary>
    public Reason(
        string judgement,
        string topic,
        Said text,
        Consequence then,
        string? action,
        double certainty,
        bool isCertain,
        ImmutableArray<Need> needs,
        ImmutableArray<MatchedPattern> matched,
        ImmutableArray<string> sources,
        Said? caution = null
    )
    {
        Judgement = judgement;
        Topic = topic;
        Then = then;
        Action = action;
        Certainty = certainty;
        IsCertain = isCertain;
        Needs = needs;
        Sources = sources;
        _said = text;
        _caution = caution;
        _matched = matched;
    }

    /// <summary>The reason behind a conclusion; its details are worked out later.</summary>
    internal Reason(Conclusion conclusion, IReasonDetails details)
    {
        Judgement = conclusion.Judgement.Id;
        Topic = conclusion.Judgement.Topic;
        Then = conclusion.Judgement.Then;
        Action = conclusion.Action?.Id;
        Certainty = conclusion.Certainty;
        Premise = conclusion.Premise;
        IsCertain = conclusion.IsCertain;
        Needs = conclusion.Needs;
        Sources = conclusion.Judgement.Sources;
        _conclusion = conclusion;
        _details = details;
    }

    /// <summary>The rule's id.</summary>
    public string Judgement { get; }

    /// <summary>The rule's topic.</summary>
    public string Topic { get; }

    /// <summary>The rule's reason, slots filled in.</summary>
    public Said Said => _said ?? _details!.SaidOf(_conclusion!);

    /// <summary>The rule's reason in plain words.</summary>
    public string Text => Said.Text;

    /// <summary>What a caution says, slots filled in; null for a reason of another kind.</summary>
    public Said? Caution =>
        Then is Consequence.Caution caution
            ? _caution ?? _details?.CautionOf(_conclusion!) ?? Said.FromString(caution.Text)
            : null;

    /// <summary>What a caution says in plain words; null for a reason of another kind.</summary>
    public string? CautionText => Caution?.Text;

    /// <summary>What the rule concludes.</summary>
    public Consequence Then { get; }

    /// <summary>The id of the action concerned, or null.</summary>
    public string? Action { get; }

    /// <summary>
    /// The rule's certainty times the least certain finding it builds on, in (0, 1]; 1 for bars and cautions.
    /// </summary>
    public double Certainty { get; }

    /// <summary>Certainty of the least certain finding it builds on; 1 when it builds on facts alone.</summary>
    public double Premise { get; } = 1;

    /// <summary>Whether every condition holds for sure.</summary>
    public bool IsCertain { get; }

    /// <summary>What has to be known before it is certain; empty when it is.</summary>
    public ImmutableArray<Need> Needs { get; }

    /// <summary>The conditions with what they matched.</summary>
    public ImmutableArray<MatchedPattern> Matched => _matched.IsDefault ? _details!.MatchedBy(_conclusion!) : _matched;

    /// <summary>
    /// What each condition asks for and what it matched, by name: <see cref="Matched"/> without its tests, at a
    /// fraction of its cost.
    /// </summary>
    public ImmutableArray<MatchedSubject> Subjects =>
        _matched.IsDefault
            ? _details!.SubjectsOf(_conclusion!)
            : [.. _matched.Select(matched => new MatchedSubject(matched.Pattern, matched.Fact))];

    /// <summary>Keys of the rule's sources.</summary>
    public ImmutableArray<string> Sources { get; }
}

/// <summary>One condition of a rule with the name of what it matched.</summary>
/// <param name="Pattern">The condition in words, such as <c>weed</c> or <c>no weed</c>.</param>
/// <param name="Fact">Name of the fact matched, or what stood in its place.</param>
public readonly record struct MatchedSubject(string Pattern, string Fact);

/// <summary>One condition of a rule with the fact it matched.</summary>
/// <param name="Pattern">The condition in words, such as <c>weed</c> or <c>no weed</c>.</param>
/// <param name="Fact">Name of the fact matched, or what stood in its place.</param>
/// <param name="Truth">Whether it holds for sure or may hold.</param>
/// <param name="Tests">Its tests with what was read.</param>
/// <param name="Behind">Reasons of the finding it names; empty for other patterns.</param>
public sealed record MatchedPattern(
    string Pattern,
    string Fact,
    Truth Truth,
    ImmutableArray<MatchedTest> Tests,
    ImmutableArray<Reason> Behind
)
{
    /// <summary>The condition as the rule has it; null where only its words are at hand.</summary>
    public Pattern? Asked { get; init; }

    /// <summary>What the variables of the rule stand for after it, by name.</summary>
    public ImmutableDictionary<string, Reading> Bound { get; init; } = ImmutableDictionary<string, Reading>.Empty;

    /// <summary>Whether no fact of the kind is there at all, so that nothing could be looked at.</summary>
    public bool IsWithoutFact { get; init; }

    /// <summary>Whether the other is the same condition with the same outcome, in the same words.</summary>
    public bool Equals(MatchedPattern? other) =>
        other is not null
        && (Pattern, Fact, Truth) == (other.Pattern, other.Fact, other.Truth)
        && Tests.SequenceEqual(other.Tests)
        && Behind.SequenceEqual(other.Behind);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Pattern, Fact, Truth, Tests.Length, Behind.Length);
}

/// <summary>One test with what was read.</summary>
/// <param name="Attribute">The attribute.</param>
/// <param name="Expected">The test in words.</param>
/// <param name="Read">What was read.</param>
/// <param name="Truth">Whether it holds.</param>
public sealed record MatchedTest(string Attribute, string Expected, string Read, Truth Truth)
{
    /// <summary>The words that were read; empty when no words were.</summary>
    public ImmutableArray<string> Words { get; init; } = [];

    /// <summary>The test as the rule has it; null where only its words are at hand.</summary>
    public AttributeTest? Asked { get; init; }

    /// <summary>What was read; null where only its words are at hand.</summary>
    public Reading? Found { get; init; }

    /// <summary>Whether the other reads the same in the same test; the words are those of <see cref="Read"/>.</summary>
    public bool Equals(MatchedTest? other) =>
        other is not null
        && (Attribute, Expected, Read, Truth) == (other.Attribute, other.Expected, other.Read, other.Truth);

    /// <inheritdoc/>
    public override int GetHashCode() => HashCode.Combine(Attribute, Expected, Read, Truth);
}

/// <summary>Works out the details of a reason when they are asked for.</summary>
internal interface IReasonDetails
{
    /// <summary>The rule's reason with its slots filled in.</summary>
    public Said SaidOf(Conclusion conclusion);

    /// <summary>The text of the rule's caution with its slots filled in.</summary>
    public Said CautionOf(Conclusion conclusion);

    /// <summary>The conditions with what they matched.</summary>
    public ImmutableArray<MatchedPattern> MatchedBy(Conclusion conclusion);

    /// <summary>The conditions with the names of what they matched.</summary>
    public ImmutableArray<MatchedSubject> SubjectsOf(Conclusion conclusion);
}

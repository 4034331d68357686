using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>What kind of answer a question takes.</summary>
public enum QuestionKind
{
    /// <summary>One of the listed answers.</summary>
    OneOf,

    /// <summary>Any number of the listed answers.</summary>
    AnyOf,

    /// <summary>A number in a unit.</summary>
    Number,

    /// <summary>A date.</summary>
    Date,

    /// <summary>Crops of the catalogue.</summary>
    Crops,

    /// <summary>A region of the catalogue.</summary>
    Region,

    /// <summary>Weeds seen, each with stage and cover.</summary>
    Weeds,

    /// <summary>Earlier applications.</summary>
    Past,

    /// <summary>A name in one word of the grower's own, such as that of a house.</summary>
    Name,

    /// <summary>Names of chemicals in the grower's own words: any that a bag may bear.</summary>
    Chemicals,
}

/// <summary>Who can make an answer another.</summary>
public enum ChangedBy
{
    /// <summary>Nobody: it is as it is.</summary>
    Nobody,

    /// <summary>Only time.</summary>
    Time,

    /// <summary>The grower.</summary>
    Hand,
}

/// <summary>A question to the grower.</summary>
public sealed record Question : Record
{
    /// <summary>Its place in the order of asking, from 0.</summary>
    public required int Order { get; init; }

    /// <summary>Word of list <c>question-group</c>.</summary>
    public required string Group { get; init; }

    /// <summary>The question.</summary>
    public required string Ask { get; init; }

    /// <summary>What it asks for in a few words, such as <c>the neighbours</c>; null where its id says it.</summary>
    public string? InBrief { get; init; }

    /// <summary>Why it is asked.</summary>
    public required string Why { get; init; }

    /// <summary>What kind of answer it takes.</summary>
    public required QuestionKind Kind { get; init; }

    /// <summary>The answers allowed, in order; empty unless the kind is one-of or any-of.</summary>
    public ImmutableArray<AnswerChoice> Choices
    {
        get;
        init
        {
            field = value;
            ChoiceWords = WordSet.Of(value.Select(choice => choice.Id));
        }
    } = [];

    /// <summary>The ids of these answers.</summary>
    public WordSet ChoiceWords { get; private init; } = WordSet.Empty;

    /// <summary>Whether the whole nursery has one answer, which stands once at the head of a visit.</summary>
    public bool IsOfNursery { get; init; }

    /// <summary>
    /// Whether its answer guards people, food, water or the crop: it is put early wherever a chemical waits for it.
    /// </summary>
    public bool Guards { get; init; }

    /// <summary>
    /// Conditions under which it is put after all others, because its answer is seldom to the point then; empty when it
    /// has its turn.
    /// </summary>
    public ImmutableArray<AttributeCondition> LastWhen { get; init; } = [];

    /// <summary>Who can make its answer another.</summary>
    public ChangedBy ChangedBy { get; init; }

    /// <summary>Unit of a number; else null.</summary>
    public string? Unit { get; init; }

    /// <summary>Range of a number; else null.</summary>
    public Span? Between { get; init; }

    /// <summary>Names that stand for a number, in order; empty when none does.</summary>
    public ImmutableArray<NamedSize> Sizes { get; init; } = [];

    /// <summary>Whether a date must not lie after the visit.</summary>
    public bool PastOnly { get; init; }

    /// <summary>Conditions on other answers without which it does not apply; empty when it always applies.</summary>
    public ImmutableArray<AttributeCondition> AskedWhen { get; init; } = [];
}

/// <summary>An answer that a question allows.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Text">Its text.</param>
public sealed record AnswerChoice(string Id, string Text);

using System.Collections.Immutable;
using System.Globalization;

namespace WeedAdvisor.Knowledge.Readings;

/// <summary>
/// What is known of one attribute of one fact: words, a number, known to be absent, or not known. Every operation is
/// total: it answers with a <see cref="Truth"/> and never throws. Immutable and safe to share between threads.
/// </summary>
public abstract record Reading
{
    private Reading() { }

    /// <summary>What would have to be found out; empty unless the reading is <see cref="Open"/>.</summary>
    public virtual ImmutableArray<Need> Needs => [];

    /// <summary>Known, and there is none: the question does not apply, or the record has no such thing.</summary>
    public static Reading Absent { get; } = new Nothing();

    /// <summary>One or several words.</summary>
    public static Reading Of(WordSet words) => words.Count == 0 ? Absent : new Words(words);

    /// <summary>One word.</summary>
    public static Reading Of(string word) => new Words(WordSet.OfOne(word));

    /// <summary>A number, in the unit of its attribute.</summary>
    public static Reading Of(decimal number) => new Number(number);

    /// <summary>A flag, written as the word <c>true</c> or <c>false</c>.</summary>
    public static Reading Of(bool flag) => Of(flag ? "true" : "false");

    /// <summary>
    /// Not known. The domain, when given, lists every word the answer could turn out to be when it is a single word;
    /// conditions that hold for all of it, or for none of it, are then decided although the answer is missing.
    /// </summary>
    public static Reading NotKnown(Need need, WordSet? domain = null) => new Open([need], domain);

    /// <summary>Whether the attribute is one of the words, or holds one of them.</summary>
    public Truth IsAnyOf(WordSet words) =>
        this switch
        {
            Words known => Truths.Of(known.Value.Overlaps(words)),
            Number number => Truths.Of(words.Contains(number.AsWord)),
            Open { Domain: { } domain } => Within(domain, words),
            Open => Truth.NotKnown,
            _ => Truth.No,
        };

    /// <summary>How the attribute's number compares with a limit; an absent number compares with nothing.</summary>
    public Truth Compares(Comparison comparison, decimal limit) =>
        this switch
        {
            Number number => Truths.Of(Comparisons.Holds(number.Value, comparison, limit)),
            Open => Truth.NotKnown,
            _ => Truth.No,
        };

    /// <summary>Whether the two readings share a word, or are the same number.</summary>
    public Truth Shares(Reading other) =>
        (this, other) switch
        {
            (Words left, Words right) => Truths.Of(left.Value.Overlaps(right.Value)),
            (Number left, Number right) => Truths.Of(left.Value == right.Value),
            (Open { Domain: { } domain }, Words right) => Within(domain, right.Value),
            (Words left, Open { Domain: { } domain }) => Within(domain, left.Value),
            (Nothing, _) or (_, Nothing) => Truth.No,
            (Open, _) or (_, Open) => Truth.NotKnown,
            _ => Truth.No,
        };

    /// <summary>How this number compares with another; either one missing leaves it open.</summary>
    public Truth Compares(Comparison comparison, Reading other) =>
        (this, other) switch
        {
            (Nothing, _) or (_, Nothing) => Truth.No,
            (Open, _) or (_, Open) => Truth.NotKnown,
            (Number, Number right) => Compares(comparison, right.Value),
            _ => Truth.No,
        };

    /// <summary>Whether there is anything to bind a variable to: an absent attribute binds nothing.</summary>
    public Truth HasValue =>
        this switch
        {
            Nothing => Truth.No,
            Open => Truth.NotKnown,
            _ => Truth.Yes,
        };

    /// <summary>The reading as a person would write it.</summary>
    public abstract string Text { get; }

    private static Truth Within(WordSet domain, WordSet words) =>
        domain.IsWithin(words) ? Truth.Yes
        : domain.Overlaps(words) ? Truth.NotKnown
        : Truth.No;

    /// <summary>One or several known words.</summary>
    /// <param name="Value">The words; never empty.</param>
    public sealed record Words(WordSet Value) : Reading
    {
        /// <inheritdoc/>
        public override string Text => Value.ToString();
    }

    /// <summary>A known number.</summary>
    /// <param name="Value">The number, in the unit of its attribute.</param>
    public sealed record Number(decimal Value) : Reading
    {
        /// <summary>The number as it would be written in a rule.</summary>
        public string AsWord { get; } = Value.ToString("0.############", CultureInfo.InvariantCulture);

        /// <inheritdoc/>
        public override string Text => AsWord;
    }

    /// <summary>Known to be absent.</summary>
    public sealed record Nothing : Reading
    {
        /// <inheritdoc/>
        public override string Text => "none";
    }

    /// <summary>Not known.</summary>
    /// <param name="Waiting">What would have to be found out; never empty.</param>
    /// <param name="Domain">Every single word it could turn out to be, or null when that is not bounded.</param>
    public sealed record Open(ImmutableArray<Need> Waiting, WordSet? Domain) : Reading
    {
        /// <inheritdoc/>
        public override ImmutableArray<Need> Needs => Waiting;

        /// <inheritdoc/>
        public override string Text => "not known";

        /// <inheritdoc/>
        public bool Equals(Open? other) =>
            other is not null && Waiting.AsSpan().SequenceEqual(other.Waiting.AsSpan()) && Equals(Domain, other.Domain);

        /// <inheritdoc/>
        public override int GetHashCode() => HashCode.Combine(Waiting.Length, Waiting[0], Domain);
    }
}

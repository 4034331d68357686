using System.Collections.Immutable;

namespace WeedAdvisor.Inference.Advice;

/// <summary>A part of a text of a rule.</summary>
/// <param name="Text">What stands there.</param>
/// <param name="IsAction">Whether it is the name of the action that the text speaks of.</param>
public readonly record struct SaidPart(string Text, bool IsAction);

/// <summary>
/// A text of a rule with its slots filled in. It knows where the name of its action stands, so that it can be said
/// below that name, or of several actions at once, without looking for the name in the finished text.
/// </summary>
public sealed class Said : IEquatable<Said>
{
    private const string ActionSlot = "{action}";

    private readonly ImmutableArray<SaidPart> _parts;

    /// <param name="parts">The parts in their order.</param>
    public Said(ImmutableArray<SaidPart> parts)
    {
        _parts = parts;
        Text = parts is [var only] ? only.Text : Joined(parts, null);
    }

    /// <summary>The whole text.</summary>
    public string Text { get; }

    /// <summary>
    /// The text as it stands below the action's name: without the name and colon that it begins with, if it does.
    /// </summary>
    public string UnderItsName => Joined(Under(), null);

    /// <summary>A text that names no action.</summary>
    public static implicit operator Said(string text) => FromString(text);

    /// <summary>A text that names no action.</summary>
    public static Said FromString(string text) => new([new SaidPart(text, false)]);

    /// <summary>A text with the name of its action wherever <c>{action}</c> stands.</summary>
    /// <param name="text">The text.</param>
    /// <param name="action">The action's name.</param>
    public static Said Of(string text, string action)
    {
        var parts = ImmutableArray.CreateBuilder<SaidPart>();
        string[] between = text.Split(ActionSlot);
        for (int i = 0; i < between.Length; i++)
        {
            if (i > 0)
                parts.Add(new SaidPart(action, true));
            if (between[i].Length > 0)
                parts.Add(new SaidPart(between[i], false));
        }

        return new Said(parts.ToImmutable());
    }

    /// <summary>
    /// The text as it stands below the action's name, with other words wherever the name would stand.
    /// </summary>
    /// <param name="instead">Such as <c>this chemical</c>.</param>
    public string Of(string instead) => Joined(Under(), instead);

    /// <inheritdoc/>
    public bool Equals(Said? other) => other is not null && _parts.SequenceEqual(other._parts);

    /// <inheritdoc/>
    public override bool Equals(object? obj) => Equals(obj as Said);

    /// <inheritdoc/>
    public override int GetHashCode() => Text.GetHashCode(StringComparison.Ordinal);

    /// <inheritdoc/>
    public override string ToString() => Text;

    private static string Joined(IReadOnlyCollection<SaidPart> parts, string? instead) =>
        string.Concat(parts.Select(part => part.IsAction && instead is not null ? instead : part.Text));

    private ImmutableArray<SaidPart> Under() =>
        _parts is [{ IsAction: true }, { Text: [':', .. var rest] }, .. var more]
            ? [new SaidPart(rest.TrimStart(), false), .. more]
            : _parts;
}

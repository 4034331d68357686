using System.Collections.Immutable;

namespace WeedAdvisor.Interview.Files;

/// <summary>How saving a visit went.</summary>
/// <param name="Trouble">Why it was not saved, in one line; null when it was.</param>
/// <param name="IsChanged">
/// Whether it was not saved because the file was changed by others since it was read; saving over it must then be asked for.
/// </param>
/// <param name="Copy">The copy that was made of what was there before; null when none was.</param>
/// <param name="Notes">What the grower has to be told although it was saved, a sentence each.</param>
public sealed record SaveOutcome(string? Trouble, bool IsChanged, string? Copy, ImmutableArray<string> Notes)
{
    /// <summary>It was saved.</summary>
    public static SaveOutcome Done(string? copy = null, params IEnumerable<string> notes) => new(null, false, copy, [.. notes]);

    /// <summary>It was not saved.</summary>
    public static SaveOutcome Refused(string why) => new(why, false, null, []);

    /// <summary>It was not saved, because the file was changed since it was read.</summary>
    public static SaveOutcome Changed(string path) =>
        new($"{path} was changed by another window or program since it was read here.", true, null, []);

    /// <summary>That it was saved, and all there is to tell of it, in sentences.</summary>
    public string Told(string path) => string.Join(
        ' ',
        [
            $"Saved to {path}.",
            .. Copy is null ? Array.Empty<string>() : [$"What was there before is in {Copy}."],
            .. Notes,
        ]);
}

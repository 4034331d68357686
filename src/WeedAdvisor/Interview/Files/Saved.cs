using System.Collections.Immutable;

namespace WeedAdvisor.Interview.Files;

/// <summary>A visit was saved.</summary>
/// <param name="Copy">The copy that was made of what was there before; null when none was.</param>
/// <param name="Notes">What the grower has to be told although it was saved, a sentence each.</param>
public sealed record Saved(string? Copy, ImmutableArray<string> Notes)
{
    /// <summary>That it was saved, and all there is to tell of it, in sentences.</summary>
    public string Told(string path) =>
        string.Join(
            ' ',
            [
                $"Saved to {path}.",
                .. Copy is null ? Array.Empty<string>() : [$"What was there before is in {Copy}."],
                .. Notes,
            ]
        );
}

/// <summary>A visit was not saved.</summary>
/// <param name="Why">Why, in one line.</param>
/// <param name="IsChanged">
/// Whether that is because the file was changed by others since it was read; saving over it must then be asked for.
/// </param>
public sealed record NotSaved(string Why, bool IsChanged = false)
{
    /// <summary>It was not saved, because the file was changed since it was read.</summary>
    public static NotSaved Changed(string path) =>
        new($"{path} was changed by another window or program since it was read here.", true);
}

namespace WeedAdvisor.Knowledge.Problems;

/// <summary>
/// Something wrong in a file that a person wrote: where, what was found, what was expected, the nearest valid word.
/// </summary>
/// <param name="Where">Where it stands.</param>
/// <param name="Found">What was found, in plain words.</param>
/// <param name="Expected">What was expected, in plain words.</param>
/// <param name="Nearest">The nearest valid word, or null when nothing is near.</param>
public sealed record Problem(Place Where, string Found, string Expected, string? Nearest = null)
{
    /// <summary>The problem in one line.</summary>
    public override string ToString() =>
        $"{Where}: found {Found}; expected {Expected}{(Nearest is null ? "" : $"; did you mean '{Nearest}'?")}";

    /// <summary>Problems in order of file, line and column.</summary>
    public static IEnumerable<Problem> InOrder(IEnumerable<Problem> problems) =>
        problems
            .OrderBy(problem => problem.Where.File, StringComparer.Ordinal)
            .ThenBy(problem => problem.Where.Line)
            .ThenBy(problem => problem.Where.Column)
            .ThenBy(problem => problem.Found, StringComparer.Ordinal);
}

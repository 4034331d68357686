namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>
/// Finds what a rule says twice. A finding, or what an absence or existence asks for, may stand in a rule only once:
/// saying it again means nothing, and the engine loses track of two equal collections in one rule (NRules 1.0.4: when
/// the last fact leaves both at once, the match stays).
/// </summary>
public static class Repetition
{
    /// <summary>The first pattern that repeats an earlier one, or null.</summary>
    public static Pattern? In(IEnumerable<Pattern> when)
    {
        var seen = new HashSet<Pattern>();
        return when.FirstOrDefault(pattern => Collected(pattern) is { } inner && !seen.Add(inner));
    }

    private static Pattern? Collected(Pattern pattern) => pattern switch
    {
        Pattern.Finding => pattern,
        Pattern.None none => none.Inner,
        Pattern.Any any => any.Inner,
        _ => null,
    };
}

namespace WeedAdvisor.Planning.Rates.Answers;

/// <summary>
/// Why an entry gives no number. A doubtful entry is refused or questioned; it never becomes a number.
/// </summary>
/// <param name="Field">Id of the field at fault.</param>
/// <param name="Text">What was found and what is expected, in one line without the field's name.</param>
public sealed record RateProblem(string Field, string Text);

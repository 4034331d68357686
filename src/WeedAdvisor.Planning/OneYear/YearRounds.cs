namespace WeedAdvisor.Planning.OneYear;

/// <summary>How often the pots are weeded in each part of the year.</summary>
/// <param name="Spring">Whole weeks between rounds in spring; null for none.</param>
/// <param name="Summer">The same in summer.</param>
/// <param name="AutumnAndWinter">The same in autumn and winter.</param>
public sealed record YearRounds(int? Spring, int? Summer, int? AutumnAndWinter)
{
    /// <summary>One interval all the year.</summary>
    public static YearRounds Every(int weeks) => new(weeks, weeks, weeks);

    /// <summary>Weeks between rounds in a part of the year; null for none.</summary>
    public int? In(PartOfYear part) =>
        part switch
        {
            PartOfYear.Spring => Spring,
            PartOfYear.Summer => Summer,
            _ => AutumnAndWinter,
        };

    /// <summary>Whether the interval is the same all the year.</summary>
    public bool IsSteady => Spring == Summer && Summer == AutumnAndWinter;

    /// <summary>The rounds in plain words, to stand behind "weeded".</summary>
    public string InWords =>
        IsSteady
            ? Words(Spring)
            : $"{Words(Spring)} in spring, {Words(Summer)} in summer, {Words(AutumnAndWinter)} in autumn and winter";

    private static string Words(int? weeks) =>
        weeks switch
        {
            null => "not at all",
            1 => "every week",
            _ => $"every {weeks} weeks",
        };
}

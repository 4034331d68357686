using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Advise;

/// <summary>The clear actions of one time, best first.</summary>
/// <param name="Title">The heading.</param>
/// <param name="Actions">The actions.</param>
/// <param name="MostInFull">How many of them a brief report tells in full: what presses more than what is a
/// habit.</param>
internal sealed record ActionGroup(string Title, ImmutableArray<ClearAction> Actions, int MostInFull)
{
    private static readonly (string When, string Title, int MostInFull)[] s_groups =
    [
        ("now", "What to do now", 5),
        ("season", "What to do this season", 4),
        ("standing", "Standing habits", 3),
    ];

    /// <summary>The actions that a brief report tells in full.</summary>
    public IEnumerable<ClearAction> InFull => Actions.Take(MostInFull);

    /// <summary>The actions that it only names.</summary>
    public IEnumerable<ClearAction> Rest => Actions.Skip(MostInFull);

    /// <summary>The groups in the order of reading. What is to do now is told even when it is nothing.</summary>
    public static ImmutableArray<ActionGroup> Of(AreaAdvice area) =>
        [
            .. s_groups
                .Select(group =>
                    (
                        group.When,
                        Group: new ActionGroup(
                            group.Title,
                            [.. area.Clear.Where(action => action.When == group.When)],
                            group.MostInFull
                        )
                    )
                )
                .Where(item => item.When == "now" || !item.Group.Actions.IsEmpty)
                .Select(item => item.Group),
        ];
}

using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Screens;

/// <summary>The ways that lead from a page to others.</summary>
/// <param name="Back">To the question before.</param>
/// <param name="Next">To the next question.</param>
/// <param name="NotKnown">Says that the grower does not know, and goes on.</param>
/// <param name="Clear">Takes the answer back.</param>
/// <param name="PickWeed">Opens the weed picker, on a weed seen before or on a new one.</param>
/// <param name="PickPast">Opens the picker of earlier applications, on one by its place in the list or on a new
/// one.</param>
/// <param name="Drop">Does something that drops entries of the question's list, once that was agreed to.</param>
internal sealed record Ways(
    Action Back,
    Action Next,
    Action NotKnown,
    Action Clear,
    Action<WeedSeen?> PickWeed,
    Action<int?> PickPast,
    Action<Action> Drop
);

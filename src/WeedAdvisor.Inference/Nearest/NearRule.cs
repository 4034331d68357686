using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Inference.Nearest;

/// <summary>A rule that does not hold, on what comes nearest to it.</summary>
/// <param name="Reason">The rule with its conditions, of which some are not met.</param>
/// <param name="Missed">How many of its conditions are not met; of a finding that is not made, those of the rule that
/// comes nearest to making it.</param>
/// <param name="Open">How many are not known.</param>
public sealed record NearRule(Reason Reason, int Missed, int Open);

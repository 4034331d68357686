namespace WeedAdvisor.Knowledge.Local;

/// <summary>A bar that the grower lifted for his own nursery. It is told in every output.</summary>
/// <param name="Judgement">The id of the judgement that would bar.</param>
/// <param name="Because">Why he lifted it, in his own words.</param>
public sealed record LiftedBar(string Judgement, string Because);

namespace WeedAdvisor.Knowledge.Records;

/// <summary>Between which ends a number that people write is believed; both belong to it.</summary>
/// <param name="Low">The low end.</param>
/// <param name="High">The high end, at least <paramref name="Low"/>.</param>
public sealed record Bounds(decimal Low, decimal High);

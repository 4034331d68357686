namespace WeedAdvisor.Knowledge.Records;

/// <summary>A published range; both ends belong to it. Where sources differ, the range holds both.</summary>
/// <param name="Low">The low end.</param>
/// <param name="High">The high end, at least <paramref name="Low"/>.</param>
public readonly record struct Span(decimal Low, decimal High)
{
    /// <summary>The middle of the range.</summary>
    public decimal Middle => (Low + High) / 2;
}

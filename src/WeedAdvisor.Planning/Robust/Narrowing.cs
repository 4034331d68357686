using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Planning.Robust;

/// <summary>
/// A published range as it is once its value is known: the sums take the middle of a range, so it is drawn together
/// round the value. At the middle it is the range as it was, at an end it is that end alone; it never leaves the
/// published range.
/// </summary>
internal static class Narrowing
{
    /// <summary>The range whose middle is a value.</summary>
    public static Span To(this Span range, decimal value) =>
        value <= range.Middle
            ? new Span(range.Low, (2 * value) - range.Low)
            : new Span((2 * value) - range.High, range.High);

    /// <summary>The range narrowed to a place in it: 0 its low end, 1 its high end.</summary>
    public static Span ToPlace(this Span range, decimal place) =>
        range.To(range.Low + (place * (range.High - range.Low)));

    /// <summary>Where a value stands in a range, 0 to 1; the middle of one without width.</summary>
    public static decimal PlaceOf(this Span range, decimal value) =>
        range.High <= range.Low ? 0.5m : (value - range.Low) / (range.High - range.Low);
}

namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>What ends a bar. A closed family: the nested types are all there are.</summary>
public abstract record Lift
{
    private Lift() { }

    /// <summary>Nothing does, here.</summary>
    public sealed record Never : Lift;

    /// <summary>A day: a number that grows by one a day has to reach another.</summary>
    /// <param name="From">Where it stands now: a variable of the rule, without the dollar sign; null for 0.</param>
    /// <param name="To">What it has to reach: a variable, without the dollar sign; null with a fixed number.</param>
    /// <param name="Number">What it has to reach where that is the same for all; null with a variable.</param>
    public sealed record Days(string? From, string? To, decimal? Number) : Lift;

    /// <summary>An hour: so many hours after the visit's day began.</summary>
    /// <param name="Left">A variable of the rule, without the dollar sign.</param>
    public sealed record Hours(string Left) : Lift;

    /// <summary>A state of crop, mix, house or weather that comes by itself or can be brought about.</summary>
    /// <param name="Text">The state in plain words, such as <c>when the flush has hardened</c>; may hold slots.</param>
    public sealed record State(string Text) : Lift;

    /// <summary>It never ends, but the same product may be put on otherwise.</summary>
    /// <param name="Text">The other way in plain words; may hold slots.</param>
    public sealed record OtherWay(string Text) : Lift;
}

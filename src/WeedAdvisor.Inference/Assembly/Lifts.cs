using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Conclusions;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Inference.Assembly;

/// <summary>Works out what ends the bars of an action.</summary>
internal sealed class Lifts(Reasons reasons)
{
    /// <summary>What ends bars that all end: the last of their moments, and every state.</summary>
    /// <param name="bars">The bars that hold.</param>
    /// <param name="date">The day from which is counted.</param>
    public Until UntilOf(IReadOnlyCollection<Conclusion> bars, DateOnly date)
    {
        DateTime? from = null;
        var states = ImmutableArray.CreateBuilder<string>();
        foreach (Conclusion bar in bars)
        {
            if (MomentOf(bar, date) is { } moment)
                from = from is { } before && before > moment ? before : moment;
            else if (StateOf(bar) is { } state && !states.Contains(state))
                states.Add(state);
        }

        return new Until(from, from?.TimeOfDay > TimeSpan.Zero, states.ToImmutable());
    }

    /// <summary>The other ways that bars leave, each once.</summary>
    public ImmutableArray<string> OtherWaysOf(IEnumerable<Conclusion> bars) =>
        [
            .. bars.Select(bar => Of(bar) is Lift.OtherWay way ? reasons.Fill(way.Text, bar) : null)
                .OfType<string>()
                .Distinct(StringComparer.Ordinal),
        ];

    /// <summary>Bars that all end, the last to end first; those that wait for a state come last.</summary>
    public static IEnumerable<Conclusion> LastFirst(IEnumerable<Conclusion> bars, DateOnly date) =>
        bars.OrderByDescending(bar => MomentOf(bar, date) ?? DateTime.MinValue);

    /// <summary>What ends a bar.</summary>
    public static Lift Of(Conclusion bar) => ((Consequence.Bar)bar.Judgement.Then).Lift;

    private static DateTime? MomentOf(Conclusion bar, DateOnly date)
    {
        DateTime start = date.ToDateTime(TimeOnly.MinValue);
        return Of(bar) switch
        {
            Lift.Hours hours when Number(bar, hours.Left) is { } left => start.AddHours((double)left),
            Lift.Days days when (days.Number ?? Number(bar, days.To)) is { } to && Number(bar, days.From) is { } now =>
                start.AddDays((double)decimal.Ceiling(to - now)),
            _ => null,
        };
    }

    private string? StateOf(Conclusion bar) => Of(bar) is Lift.State state ? reasons.Fill(state.Text, bar) : null;

    // Without a name it is counted from nought.
    private static decimal? Number(Conclusion bar, string? variable) =>
        variable is null ? 0
        : bar.Bindings[variable] is Reading.Number number ? number.Value
        : null;
}

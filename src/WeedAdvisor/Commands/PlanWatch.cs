using System.Globalization;
using WeedAdvisor.Planning.Plan;

namespace WeedAdvisor.Commands;

/// <summary>
/// Watches the search for plans: tells on the terminal how far it is, ends it after a time, and at the first Ctrl+C
/// keeps the best found so far; a second one ends the program.
/// </summary>
internal sealed class PlanWatch : IProgress<PlanProgress>, IDisposable
{
    private static readonly TimeSpan s_between = TimeSpan.FromMilliseconds(200);

    private readonly ProgressLine _line;
    private readonly TimeProvider _time;
    private readonly int? _seconds;
    private readonly FirstInterrupt _interrupt = new();
    private CancellationTokenSource _area;
    private string _name = "";
    private long _last;

    private PlanWatch(Surroundings surroundings, int? seconds)
    {
        (_line, _time, _seconds) = (new ProgressLine(surroundings), surroundings.Time, seconds);
        _area = CancellationTokenSource.CreateLinkedTokenSource(_interrupt.Stop);
    }

    /// <summary>Begins to watch.</summary>
    /// <param name="surroundings">Where it is told, if that is a terminal.</param>
    /// <param name="seconds">After how long the search of an area ends; null for never.</param>
    public static PlanWatch Start(Surroundings surroundings, int? seconds) => new(surroundings, seconds);

    /// <summary>Ends the search of the present area.</summary>
    public CancellationToken Stop => _area.Token;

    /// <summary>Ends everything that is left.</summary>
    public CancellationToken StopAll => _interrupt.Stop;

    /// <summary>An area begins.</summary>
    public void Begin(string name)
    {
        _name = name;
        _area.Dispose();
        _area = CancellationTokenSource.CreateLinkedTokenSource(_interrupt.Stop);
        if (_seconds is { } seconds)
            _area.CancelAfter(TimeSpan.FromSeconds(seconds));
        _line.Write($"{_name}: pricing rounds and measures");
    }

    /// <inheritdoc/>
    public void Report(PlanProgress value)
    {
        if (_last != 0 && _time.GetElapsedTime(_last) < s_between)
            return;
        _last = _time.GetTimestamp();
        string best = value.BestUsd is { } usd ? Text($", best ${usd:#,0}") : "",
            least = value.LeastUsd is { } floor && floor > 0 ? Text($", none below ${floor:#,0}") : "";
        _line.Write(Text($"{_name}: {value.Searched} of {value.Choices} searched{best}{least}; Ctrl+C keeps the best"));
    }

    /// <summary>The plan is found; answers are tried.</summary>
    public void Trying() => _line.Write($"{_name}: trying answers to open questions");

    /// <summary>All is done: the line goes.</summary>
    public void End() => _line.Write("");

    /// <inheritdoc/>
    public void Dispose()
    {
        _area.Dispose();
        _interrupt.Dispose();
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

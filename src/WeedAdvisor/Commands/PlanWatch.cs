using System.Globalization;
using System.Runtime.InteropServices;
using WeedAdvisor.Planning.Plan;

namespace WeedAdvisor.Commands;

/// <summary>
/// Watches the search for plans: tells on the terminal how far it is, ends it after a time, and at the first Ctrl+C
/// keeps the best found so far; a second one ends the program.
/// </summary>
internal sealed class PlanWatch : IProgress<PlanProgress>, IDisposable
{
    // One less than the narrowest terminal has, so that the line does not wrap.
    private const int MostColumns = 79;

    private static readonly TimeSpan s_between = TimeSpan.FromMilliseconds(200);

    private readonly TextWriter? _told;
    private readonly TimeProvider _time;
    private readonly int? _seconds;
    private readonly CancellationTokenSource _all = new();
    private readonly PosixSignalRegistration _signal;
    private CancellationTokenSource _area;
    private string _name = "";
    private int _length;
    private long _last;

    private PlanWatch(TextWriter? told, TimeProvider time, int? seconds)
    {
        (_told, _time, _seconds) = (told, time, seconds);
        _area = CancellationTokenSource.CreateLinkedTokenSource(_all.Token);
        _signal = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal =>
        {
            if (_all.IsCancellationRequested)
                return;
            signal.Cancel = true;
            _all.Cancel();
        });
    }

    /// <summary>Begins to watch.</summary>
    /// <param name="surroundings">Where it is told, if that is a terminal.</param>
    /// <param name="seconds">After how long the search of an area ends; null for never.</param>
    public static PlanWatch Start(Surroundings surroundings, int? seconds) =>
        new(surroundings.IsErrorTerminal ? surroundings.Error : null, surroundings.Time, seconds);

    /// <summary>Ends the search of the present area.</summary>
    public CancellationToken Stop => _area.Token;

    /// <summary>Ends everything that is left.</summary>
    public CancellationToken StopAll => _all.Token;

    /// <summary>An area begins.</summary>
    public void Begin(string name)
    {
        _name = name;
        _area.Dispose();
        _area = CancellationTokenSource.CreateLinkedTokenSource(_all.Token);
        if (_seconds is { } seconds)
            _area.CancelAfter(TimeSpan.FromSeconds(seconds));
        Write($"{_name}: pricing rounds and measures");
    }

    /// <inheritdoc/>
    public void Report(PlanProgress value)
    {
        if (_last != 0 && _time.GetElapsedTime(_last) < s_between)
            return;
        _last = _time.GetTimestamp();
        string best = value.BestUsd is { } usd ? Text($", best ${usd:#,0}") : "",
            least = value.LeastUsd is { } floor && floor > 0 ? Text($", none below ${floor:#,0}") : "";
        Write(Text($"{_name}: {value.Searched} of {value.Choices} searched{best}{least}; Ctrl+C keeps the best"));
    }

    /// <summary>The plan is found; answers are tried.</summary>
    public void Trying() => Write($"{_name}: trying answers to open questions");

    /// <summary>All is done: the line goes.</summary>
    public void End() => Write("");

    /// <inheritdoc/>
    public void Dispose()
    {
        _signal.Dispose();
        _area.Dispose();
        _all.Dispose();
    }

    // One line of a terminal, written over again and again.
    private void Write(string line)
    {
        if (_told is null)
            return;
        line = line[..Math.Min(line.Length, MostColumns)];
        _told.Write("\r" + line.PadRight(_length) + (line.Length == 0 ? "\r" : ""));
        _told.Flush();
        _length = line.Length;
    }

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}

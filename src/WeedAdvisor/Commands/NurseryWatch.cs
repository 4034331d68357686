using System.Globalization;
using System.Runtime.InteropServices;
using WeedAdvisor.Planning.Nursery;

namespace WeedAdvisor.Commands;

/// <summary>
/// Tells on the terminal how many areas are done; at the first Ctrl+C those that are finished are kept, a second one
/// ends the program.
/// </summary>
internal sealed class NurseryWatch : IProgress<NurseryProgress>, IDisposable
{
    // One less than the narrowest terminal has, so that the line does not wrap.
    private const int MostColumns = 79;

    private readonly TextWriter? _told;
    private readonly Lock _line = new();
    private readonly CancellationTokenSource _stop = new();
    private readonly PosixSignalRegistration _signal;
    private int _length;

    private NurseryWatch(TextWriter? told)
    {
        _told = told;
        _signal = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal =>
        {
            if (_stop.IsCancellationRequested)
                return;
            signal.Cancel = true;
            _stop.Cancel();
        });
    }

    /// <summary>Begins to watch.</summary>
    /// <param name="surroundings">Where it is told, if that is a terminal.</param>
    public static NurseryWatch Start(Surroundings surroundings)
    {
        var watch = new NurseryWatch(surroundings.IsErrorTerminal ? surroundings.Error : null);
        watch.Write("Planning all areas; Ctrl+C keeps those that are finished");
        return watch;
    }

    /// <summary>Ends the work on areas that are not finished.</summary>
    public CancellationToken Stop => _stop.Token;

    /// <inheritdoc/>
    public void Report(NurseryProgress value) =>
        Write(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{value.Done} of {value.All} areas planned, {value.Area}; Ctrl+C keeps those"
            )
        );

    /// <summary>All is done: the line goes.</summary>
    public void End() => Write("");

    /// <inheritdoc/>
    public void Dispose()
    {
        _signal.Dispose();
        _stop.Dispose();
    }

    // One line of a terminal, written over again and again.
    private void Write(string line)
    {
        if (_told is null)
            return;
        lock (_line)
        {
            line = line[..Math.Min(line.Length, MostColumns)];
            _told.Write("\r" + line.PadRight(_length) + (line.Length == 0 ? "\r" : ""));
            _told.Flush();
            _length = line.Length;
        }
    }
}

using System.Runtime.InteropServices;

namespace WeedAdvisor.Commands;

/// <summary>
/// The first Ctrl+C ends the work that listens, which keeps what it has; a second one ends the program.
/// </summary>
internal sealed class FirstInterrupt : IDisposable
{
    private readonly CancellationTokenSource _stop = new();
    private readonly PosixSignalRegistration _signal;

    /// <summary>Begins to listen.</summary>
    public FirstInterrupt() => _signal = PosixSignalRegistration.Create(PosixSignal.SIGINT, signal =>
        {
            if (_stop.IsCancellationRequested)
                return;
            signal.Cancel = true;
            _stop.Cancel();
        });

    /// <summary>Ends the work.</summary>
    public CancellationToken Stop => _stop.Token;

    /// <inheritdoc/>
    public void Dispose()
    {
        _signal.Dispose();
        _stop.Dispose();
    }
}

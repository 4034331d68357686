using System.Globalization;
using WeedAdvisor.Planning.Nursery;

namespace WeedAdvisor.Commands;

/// <summary>
/// Tells on the terminal how many areas are done; at the first Ctrl+C those that are finished are kept, a second one
/// ends the program.
/// </summary>
internal sealed class NurseryWatch : IProgress<NurseryProgress>, IDisposable
{
    private readonly ProgressLine _line;
    private readonly FirstInterrupt _interrupt = new();

    private NurseryWatch(Surroundings surroundings) => _line = new ProgressLine(surroundings);

    /// <summary>Begins to watch.</summary>
    /// <param name="surroundings">Where it is told, if that is a terminal.</param>
    public static NurseryWatch Start(Surroundings surroundings)
    {
        var watch = new NurseryWatch(surroundings);
        watch._line.Write("Planning all areas; Ctrl+C keeps those that are finished");
        return watch;
    }

    /// <summary>Ends the work on areas that are not finished.</summary>
    public CancellationToken Stop => _interrupt.Stop;

    /// <inheritdoc/>
    public void Report(NurseryProgress value) =>
        _line.Write(
            string.Create(
                CultureInfo.InvariantCulture,
                $"{value.Done} of {value.All} areas planned, {value.Area}; Ctrl+C keeps those"
            )
        );

    /// <summary>All is done: the line goes.</summary>
    public void End() => _line.Write("");

    /// <inheritdoc/>
    public void Dispose() => _interrupt.Dispose();
}

using System.Runtime.InteropServices;
using Terminal.Gui.App;
using WeedAdvisor.Interview.Session;

namespace WeedAdvisor.Screens;

/// <summary>Runs the screens on a terminal.</summary>
public static class ScreenHost
{
    /// <summary>
    /// Runs the screens until the grower leaves. The terminal is left as it was found, whatever happens.
    /// </summary>
    /// <param name="session">The interview.</param>
    /// <param name="settings">What the screens are given.</param>
    /// <param name="error">Where a failure of the program is told, once the terminal is restored.</param>
    /// <returns>The exit code.</returns>
    public static int Run(InterviewSession session, ScreenSettings settings, TextWriter error) =>
        Run(session, settings, error, null, _ => { });

    /// <summary>
    /// The same with a driver of the terminal library named, and something done before the loop begins.
    /// </summary>
    internal static int Run(
        InterviewSession session,
        ScreenSettings settings,
        TextWriter error,
        string? driver,
        Action<IApplication> before
    )
    {
        try
        {
            using IApplication app = Application.Create();
            app.Init(driver);
            using var window = new MainWindow(app, session, settings);
            using PosixSignalRegistration ended = PosixSignalRegistration.Create(PosixSignal.SIGTERM, signal =>
            {
                // Leave by the door, so that the terminal is restored.
                signal.Cancel = true;
                app.Invoke(() => app.RequestStop(window));
            });
            before(app);
            app.Run(window);
            return ExitCode.Done;
        }
#pragma warning disable CA1031 // The last line of defence: whatever went wrong is told after the terminal is restored.
        catch (Exception failure)
#pragma warning restore CA1031
        {
            error.WriteLine($"{CommandLine.Name}: {CommandLine.Fault(failure)}");
            error.WriteLine(session.WhereAnswersAre);
            return ExitCode.Internal;
        }
    }
}

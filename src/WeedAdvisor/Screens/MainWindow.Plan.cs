using WeedAdvisor.Interview.Desks.Plan;
using WeedAdvisor.Planning.Robust;

namespace WeedAdvisor.Screens;

/// <content>The plan of the year.</content>
internal sealed partial class MainWindow
{
    private void OpenPlan()
    {
        _page.Commit();
        PlanDesk desk = _plans.Here();
        var sheet = new PlanSheet(
            _look,
            desk,
            new PlanWays(
                Beside,
                () => Show(new ReadingSheet(_look, desk.Title, desk.Details, Search)),
                () => OpenRobust(desk),
                () => Show(new HelpSheet(_look, HelpSheet.Plan))
            )
        );
        Show(sheet);
        sheet.Seek();
    }

    private void OpenRobust(PlanDesk desk)
    {
        var sheet = new ReadingSheet(_look, $"Does it stand? {desk.Area.Name}", desk.RobustPage, Search);
        Show(sheet);
        if (desk.RobustJob is not { } job)
            return;
        // Left to itself at the end: the page may be closed after the answer has come, and then stops it once more.
        var stop = new CancellationTokenSource();
        sheet.Closed += stop.Cancel;
        Beside<PlanRobustness?>(
            () => Unless(job, stop.Token),
            robust =>
            {
                if (robust is null)
                    return;
                desk.Take(robust);
                if (sheet.SuperView is not null)
                    sheet.Renew();
            }
        );
    }

    // Null when it was stopped: nobody waits for it any more.
    private static PlanRobustness? Unless(Func<CancellationToken, PlanRobustness> job, CancellationToken stop)
    {
        try
        {
            return job(stop);
        }
        catch (OperationCanceledException)
        {
            return null;
        }
    }

    /// <summary>Runs something where it does not hold up the keys, then takes what it came to.</summary>
    private void Beside<T>(Func<T> work, Action<T> take) =>
        _settings.Beside(() =>
        {
            try
            {
                T result = work();
                _app.Invoke(() =>
                {
                    take(result);
                    ShowBars();
                });
            }
#pragma warning disable CA1031 // A fault of the search is told where faults are told: on the screen's own thread.
            catch (Exception fault)
#pragma warning restore CA1031
            {
                _app.Invoke(() => throw new InvalidOperationException("a search beside the screen failed", fault));
            }
        });
}

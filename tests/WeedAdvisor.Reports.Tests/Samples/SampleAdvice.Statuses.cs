using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;

namespace WeedAdvisor.Reports.Tests.Samples;

/// <summary>An area in which an interval runs and every one of the seven statuses comes up.</summary>
internal static partial class SampleAdvice
{
    public static AreaAdvice ClosedArea =>
        FullArea with
        {
            KeepOut = new KeepOut(
                new Until(new DateTime(2026, 4, 14, 20, 0, 0), true, []),
                [],
                ["granule number 05 went on here. Its interval still runs."],
                ["pull-by-hand", "mulch-pots"]
            ),
            Clear = [Dry, DryUnless],
            Waiting = [Waits("granule-01", Need.Question("cover"))],
            Barred =
            [
                Barred("granule-05", twice: false),
                NotYet("granule-06", new Until(new DateTime(2026, 7, 14), false, [])),
                NotYet("granule-07", new Until(null, false, ["when the flush has hardened"])),
                NotYet("granule-08", new Until(new DateTime(2027, 1, 2), false, ["when the house is open"])),
                NotYet("granule-09", new Until(new DateTime(2026, 4, 20), false, [])) with
                {
                    After = ActionStatus.Waits,
                },
                NotYet("granule-10", new Until(new DateTime(2026, 4, 20), false, [])) with
                {
                    After = ActionStatus.NotAdvised,
                },
                NotYet("mulch-pots", new Until(new DateTime(2026, 4, 14, 20, 0, 0), true, [])),
                NotYet("pull-by-hand", new Until(new DateTime(2026, 4, 14, 20, 0, 0), true, [])),
                NotThisWay("granule-11"),
            ],
            NotAdvised =
            [
                new("granule-12", [For("granule-12", 0.4)], [Against("granule-12", 0.8)]),
                new("granule-13", [], []),
            ],
            Conflicts = [],
        };

    private static ClearAction DryUnless =>
        Mulch with
        {
            Action = "surface-wash",
            Rank = 4,
            When = "standing",
            Status = ActionStatus.ClearUnless,
            Unless = [Need.Question("cover")],
            Doubts =
            [
                Reason(
                    "it-may-run-off",
                    "surface-wash",
                    new Consequence.Argument(0.9, true),
                    0.9,
                    "It may run off.",
                    [Need.Question("cover")]
                ),
            ],
        };

    private static BarredAction NotYet(string action, Until until) =>
        Barred(action, twice: false) with
        {
            Status = ActionStatus.NotYet,
            Until = until,
            After = ActionStatus.Clear,
        };

    private static BarredAction NotThisWay(string action) =>
        Barred(action, twice: false) with
        {
            Status = ActionStatus.NotThisWay,
            OtherWays = ["as a spray between the pots"],
        };
}

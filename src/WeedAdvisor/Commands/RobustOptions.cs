using System.CommandLine;
using WeedAdvisor.Planning.Robust;
using WeedAdvisor.Reports.Plan;
using WeedAdvisor.Reports.Robust;

namespace WeedAdvisor.Commands;

/// <summary>The options of <c>plan</c> that ask whether the plan stands when its figures move.</summary>
internal sealed class RobustOptions
{
    /// <summary>Whether it is asked.</summary>
    public Option<bool> Robust { get; } =
        new("--robust") { Description = "Show instead whether the choice stands when the figures behind it move." };

    /// <summary>How many draws.</summary>
    public Option<int> Draws { get; } =
        NumberOptions.Whole(
            "--draws",
            "N",
            "How often all figures are drawn for --robust.",
            1,
            RobustSearch.MostDraws,
            usual: RobustSearch.UsualDraws
        );

    /// <summary>The seed.</summary>
    public Option<int> Seed { get; } =
        NumberOptions.Whole(
            "--seed",
            "N",
            "Seed of the draws for --robust.",
            0,
            int.MaxValue,
            usual: RobustSearch.UsualSeed
        );

    /// <summary>Whether it is asked whether the plan stands.</summary>
    public bool IsAsked(ParseResult parsed) => parsed.GetValue(Robust);

    /// <summary>The answer; null when it is not asked.</summary>
    public RobustReport? Of(ParseResult parsed, PlanReport report)
    {
        if (IsAsked(parsed))
            return new RobustReport(
                report.Visit,
                report.Knowledge,
                [.. report.Areas.Select(area => Of(area, (ulong)parsed.GetValue(Seed), parsed.GetValue(Draws)))]
            );
        return null;
    }

    private static AreaRobust Of(AreaPlanned area, ulong seed, int draws) =>
        area.Plan switch
        {
            null => new AreaRobust(area.Area, null, area.Refusals),
            { Best: null } => new AreaRobust(
                area.Area,
                null,
                ["No year keeps the wishes, so there is nothing to move."]
            ),
            var plan => new AreaRobust(area.Area, RobustSearch.Of(plan, seed, draws), []),
        };
}

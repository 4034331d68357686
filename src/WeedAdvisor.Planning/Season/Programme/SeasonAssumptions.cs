using System.Collections.Immutable;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.Season.Search;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>What the plan takes for granted, in sentences that a grower can agree with or not.</summary>
internal static class SeasonAssumptions
{
    /// <summary>The sentences.</summary>
    public static ImmutableArray<string> Of(SeasonCase season, KnowledgeBase knowledge) =>
        [.. Sentences(season, knowledge)];

    private static IEnumerable<string> Sentences(SeasonCase season, KnowledgeBase knowledge)
    {
        UsualNumbers numbers = season.Numbers;
        foreach (Treatment treatment in season.Treatments)
        {
            if (treatment.Label is { } label)
                yield return $"{treatment.Name}: {label.Line(season.Year.From)}";
        }

        yield return "Every day was put to the rules as the area will then stand; what the visit left open stays open "
            + "and clears nothing.";
        yield return Text($"Growth after {numbers[UsualIds.StatedHolds]:0} weeks is taken from the frost dates of ")
            + $"{season.Region.Name}: look at the plants before you go out.";
        yield return "The control of a week is that of the best product still acting; two are not added up. A weed "
            + "that nobody rated is not credited.";
        yield return "Control is full for the shortest published time and down to "
            + Text($"{numbers[UsualIds.ControlLeft]:0} % of that at the longest.");
        yield return "Each use was put to the rules again with the uses before it as done: on whichever of their days, "
            + "watered in, nothing come through.";
        foreach (
            IGrouping<string, SeasonGap> gaps in season.Problem.Gaps.GroupBy(gap =>
                knowledge.Treatments[gap.After].Name
            )
        )
        {
            IEnumerable<string> waits = gaps.Select(gap =>
                Text($"{gap.Weeks} weeks after {knowledge.Treatments[gap.Before].Name}")
            );
            yield return $"The rules keep {gaps.Key} away for a time: {string.Join("; ", waits)}.";
        }

        yield return "All that went on in the year before counts against yearly limits to the end of the plan, at the "
            + "rate told or else the highest published.";
        DateOnly before = season.Year.From.AddDays(-1);
        if (season.Through.CoveringAfter(before) is { } on)
            yield return Text($"Film goes on on {on:yyyy-MM-dd}, and on the same day every year.");
        if (season.Through.UncoveringAfter(before) is { } off)
            yield return Text($"Film comes off on {off:yyyy-MM-dd}.");
        string[] unknown =
        [
            .. season
                .Treatments.Where(treatment => LimitCheck.IntervalDays(treatment, knowledge) is null)
                .Select(treatment => treatment.Name),
        ];
        if (unknown.Length > 0)
        {
            yield return $"No interval is known for {string.Join("; ", unknown)}: "
                + Text($"{numbers[UsualIds.UnknownInterval]:0} weeks were taken.");
        }

        string[] unlimited =
        [
            .. season
                .Treatments.SelectMany(treatment => LimitTable.Of(knowledge).YearlyOf(treatment))
                .Where(limit => limit.IsStandIn)
                .Select(limit => limit.Active!)
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal),
        ];
        if (unlimited.Length > 0)
            yield return $"No yearly limit is known for {string.Join("; ", unlimited)}: one full use was taken. Ask "
                + $"the label.";

        yield return Text($"Hands cost {season.Sums.WageUsd:0.##} US dollars an hour and weed every ")
            + Text($"{season.Sums.Interval.Value} weeks; how many weeds come up is a working value ")
            + "(docs/weeding-model.md).";
        yield return "A use costs product and work for the pots of the area, set-up and cleaning once; how long it "
            + "takes is from memory.";
        yield return "Prices are invented until you put in your own. Published ratings are not label permissions.";
    }

    private static string Text(FormattableString text) => FormattableString.Invariant(text);
}

using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Season.Programme;

/// <summary>
/// Plans that bite: worked areas on other days of the year, with other films, pottings and earlier uses.
/// </summary>
internal static class RandomYears
{
    /// <summary>Random years that can be planned; the rest of what is drawn is thrown away.</summary>
    public static Gen<SeasonCase> Cases =>
        from index in Gen.Int[0, Years.WorkedAreas.Length - 1]
        from days in Gen.Int[0, 364]
        from film in Gen.Int[1, 300].Nullable()
        from potted in Gen.Int[0, 90].Nullable()
        from pasts in Gen.Select(Gen.Int[0, 1000], Gen.Int[0, 250]).Array[0, 3]
        from run in Gen.Int[1, 3].Nullable()
        let season = Of(index, days, film, potted, pasts, run)
        where season is not null
        select season;

    private static SeasonCase? Of(int index, int days, int? film, int? potted, (int What, int Ago)[] pasts, int? run)
    {
        VisitArea area = Years.WorkedAreas[index].Area;
        DateOnly day = Years.DemoDay.AddDays(days);
        ImmutableSortedDictionary<string, Answer> answers = area.Answers;
        if (
            film is { } until
            && answers.GetValueOrDefault("cover") is Answer.Words cover
            && cover.Value.Contains("open-sky")
        )
        {
            answers = answers
                .SetItem("covering-planned", new Answer.Words(WordSet.Of(["yes"])))
                .SetItem("covering-date", new Answer.Date(day.AddDays(until)));
        }

        if (potted is { } since)
        {
            answers = answers
                .SetItem("stock", new Answer.Words(WordSet.Of(["newly-potted"])))
                .SetItem("potted-on", new Answer.Date(day.AddDays(-since)));
        }

        string[] preventives =
        [
            .. ShippedRules.Knowledge.Treatments.Values.Where(one => one.Role == "preemergence").Select(one => one.Id),
        ];
        area = area with
        {
            Answers = answers,
            Past =
            [
                .. pasts.Select(past => new PastApplication(
                    preventives[past.What % preventives.Length],
                    day.AddDays(-past.Ago),
                    "clean",
                    WordSet.Empty
                )),
            ],
        };
        return SeasonCase
            .Of(ShippedRules.Advisor, Inference.AreaCase.Alone(day, area), new SeasonRequest { RunOfSite = run })
            .Value;
    }
}

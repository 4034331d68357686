using System.Collections.Immutable;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.World;

namespace WeedAdvisor.Inference.Tests.Entry;

/// <summary>
/// No advice holds anybody's work inside an entry interval: random houses, yards and uses, reckoned again by hand
/// (<see cref="HandClock"/>) from the records' figures, over days on which the clock changes.
/// </summary>
public sealed class EntryLawTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    private static readonly DateOnly[] s_days =
    [
        new(2026, 6, 15),
        new(2026, 3, 8),
        new(2026, 3, 9),
        new(2026, 11, 1),
        new(2026, 11, 2),
    ];

    private static readonly string[] s_treatments =
    [
        "diquat-floor-spray",
        "pelargonic-acid-floor-spray",
        "pendimethalin-spray",
        "isoxaben-spray",
        "prodiamine-granule",
        "hydrogen-peroxide-peroxyacetic-acid",
    ];

    private static readonly Gen<TimeOnly?> s_hour = Gen.Int[-8, 23]
        .Select(hour => hour < 0 ? (TimeOnly?)null : new TimeOnly(hour, 30));

    private static readonly Gen<PastApplication> s_use = Gen.Select(
        Gen.Int[-2, s_treatments.Length - 1],
        Gen.Int[-1, 9],
        s_hour,
        Gen.OneOf<string?>(null, "granules", "low-coarse-spray", "other-spray", "mist-or-fog"),
        Gen.OneOf<bool?>(null, true, false),
        (product, daysAgo, hour, method, aired) =>
            new PastApplication(
                product < 0 ? null : s_treatments[product],
                daysAgo < 0 ? null : new DateOnly(1, 1, 1).AddDays(daysAgo),
                "clean",
                WordSet.Empty
            )
            {
                Kind =
                    product == -1 ? "weed-killer"
                    : product == -2 ? "other-pesticide"
                    : null,
                Hour = hour,
                Method = method,
                Aired = aired,
            }
    );

    private static readonly Gen<VisitArea> s_area = Gen.Select(
        Gen.OneOf<string?>(null, "open-sky", "film-on", "film-on"),
        Gen.OneOf<string?>(null, "house-1", "house-1", "house-2"),
        s_use.Array[0, 3],
        (cover, house, uses) => Area(cover, house, [.. uses])
    );

    private static readonly Gen<Visit> s_visit = Gen.Select(
        Gen.Int[0, s_days.Length - 1].Select(i => s_days[i]),
        s_area.Array[1, 3],
        (day, areas) =>
            new Visit("v", null, day, null, [.. areas.Select((area, i) => Dated(area, day) with { Id = $"area-{i}" })])
    );

    [Fact]
    public void Nobody_is_sent_in_while_an_interval_runs_here_or_in_the_same_house() =>
        s_visit.Sample(
            visit =>
            {
                VisitAdvice advice = ShippedRules.Advisor.Advise(visit);
                foreach ((VisitArea area, AreaAdvice told) in visit.Areas.Zip(advice.Areas))
                {
                    if (!visit.Areas.Any(other => Closes(other, area, visit.Date)))
                        continue;
                    Assert.DoesNotContain(told.Clear, clear => Enters(clear.Action));
                    Assert.DoesNotContain(told.Waiting, waiting => Enters(waiting.Action));
                }
            },
            iter: Sizes.Of(150, 2000)
        );

    [Fact]
    public void Where_nothing_was_put_on_within_a_month_no_interval_keeps_anybody_out() =>
        s_visit.Sample(
            visit =>
            {
                Visit old = visit with
                {
                    Areas = [.. visit.Areas.Select(area => area with { Past = [.. area.Past!.Value.Select(Older)] })],
                };
                Assert.All(
                    ShippedRules
                        .Advisor.Advise(old)
                        .Areas.SelectMany(area => area.Barred)
                        .SelectMany(barred => barred.Because),
                    reason => Assert.NotEqual("entry", reason.Topic)
                );
            },
            iter: Sizes.Of(40, 500)
        );

    private static PastApplication Older(PastApplication use) =>
        use with
        {
            Date = (use.Date ?? new DateOnly(2026, 1, 1)).AddDays(-31),
        };

    // By hand: the area's own uses always; another's only where both are known to stand in one closed house.
    private static bool Closes(VisitArea treated, VisitArea area, DateOnly day)
    {
        bool isOwn = treated.Id == area.Id;
        bool isOneHouse =
            Word(treated, "cover") == "film-on"
            && Word(area, "cover") == "film-on"
            && Word(treated, "house") is { } house
            && house == Word(area, "house");
        if (!isOwn && !isOneHouse)
            return false;
        return treated.Past!.Value.Any(use =>
            use.Date is { } used && (isOwn || !StaysLow(use)) && HandClock.Reaches(used, use.Hour, HoursOf(use), day)
        );
    }

    private static bool StaysLow(PastApplication use) =>
        use.Method is "granules" or "low-coarse-spray" || (use.Method is null && use.Treatment == "prodiamine-granule");

    private static decimal HoursOf(PastApplication use) =>
        use.Treatment is { } id ? s_knowledge.Treatments[id].ReiHours?.High ?? 48
        : use.Kind == "weed-killer" ? 48
        : 72;

    private static bool Enters(string action) =>
        s_knowledge.ActionOf(action) is Treatment or Practice { Entry: EntryNeed.Worker };

    private static VisitArea Dated(VisitArea area, DateOnly day) =>
        area with
        {
            Past =
            [
                .. area.Past!.Value.Select(use =>
                    use with
                    {
                        Date = use.Date is { } ago ? day.AddDays(-ago.DayNumber) : null,
                    }
                ),
            ],
        };

    private static VisitArea Area(string? cover, string? house, ImmutableArray<PastApplication> past)
    {
        var answers = new Dictionary<string, string>
        {
            ["place"] = "growing-house",
            ["stock"] = "established",
            ["crops"] = "hydrangeas",
            ["region"] = "north-carolina-piedmont",
            ["put-on-lately"] = past.IsEmpty ? "no" : "yes",
        };
        if (cover is not null)
            answers["cover"] = cover;
        if (house is not null)
            answers["house"] = house;
        return new VisitArea(
            "a",
            "A",
            AreaAnswers.Of(answers),
            [new WeedSeen("liverwort", "mature", 10), new WeedSeen("bittercress-hairy", "young", 5)],
            past
        );
    }

    private static string? Word(VisitArea area, string question) =>
        area.Answers.GetValueOrDefault(question) is Answer.Words words ? words.Value.Single() : null;
}

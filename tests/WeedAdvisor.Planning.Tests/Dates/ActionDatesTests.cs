using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Dates;
using WeedAdvisor.World;

namespace WeedAdvisor.Planning.Tests.Dates;

public class ActionDatesTests
{
    private static readonly DateOnly s_visit = new(2026, 5, 4);

    [Fact]
    public void The_look_again_day_comes_when_the_shortest_residual_is_over() =>
        Assert.Equal(s_visit.AddDays(56), Of(Grain() with { ResidualWeeks = new Span(8, 13) }, AreaWith()).LookAgain);

    [Theory]
    [InlineData("seedling", 28)]
    [InlineData("young", 14)]
    [InlineData("flowering", 0)]
    [InlineData("seeding", 0)]
    public void Weeding_is_due_before_the_first_seed(string stage, int days)
    {
        VisitArea area = AreaWith() with { Weeds = [new WeedSeen("spurge", stage, 5)] };
        Assert.Equal(s_visit.AddDays(days), Of(Pulling(), area).Latest);
    }

    [Fact]
    public void The_weed_that_seeds_first_sets_the_day()
    {
        VisitArea area = AreaWith() with
        {
            Weeds = [new WeedSeen("spurge", "young", 5), new WeedSeen("cress", "young", 5)],
        };
        ActionDates dates = Of(Pulling(), area);
        Assert.Equal(s_visit.AddDays(10), dates.Latest);
        Assert.StartsWith("cress", dates.LatestBecause, StringComparison.Ordinal);
    }

    // Common practice: algae have no seed and horsetail comes from below; mosses and ferns press once spores are there.
    [Theory]
    [InlineData("alga", "mature", null)]
    [InlineData("alga", "seedling", null)]
    [InlineData("horsetail", "young", null)]
    [InlineData("horsetail", "seeding", null)]
    [InlineData("bryophyte", "mature", null)]
    [InlineData("bryophyte", "young", null)]
    [InlineData("bryophyte", "seeding", 0)]
    [InlineData("fern", "seedling", null)]
    [InlineData("broadleaf", "mature", 7)]
    [InlineData("broadleaf", "flowering", 0)]
    public void What_has_no_seed_has_no_day_by_which_it_seeds(string kind, string stage, int? days)
    {
        VisitArea area = AreaWith() with { Weeds = [new WeedSeen("spurge", stage, 5)] };
        ActionDates dates = ActionDates.Of(Pulling(), area, s_visit, Knowledge(kind));
        Assert.Equal(days is { } given ? s_visit.AddDays(given) : null, dates.Latest);
        if (kind == "bryophyte")
            Assert.DoesNotContain("seed", dates.LatestBecause ?? "", StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_up_presses_nothing()
    {
        VisitArea area = AreaWith() with { Weeds = [new WeedSeen("spurge", "expected", 0)] };
        Assert.Null(Of(Pulling(), area).Latest);
    }

    private static ActionDates Of(CatalogueAction action, VisitArea area) =>
        ActionDates.Of(action, area, s_visit, Knowledge());

    private static VisitArea AreaWith(params (string Question, string Date)[] dates) =>
        VisitArea.Blank("a", "A") with
        {
            Answers = dates.ToImmutableSortedDictionary(
                pair => pair.Question,
                Answer (pair) => new Answer.Date(DateOnly.ParseExact(pair.Date, "yyyy-MM-dd")),
                StringComparer.Ordinal
            ),
        };

    private static Practice Pulling() => Invented.Practice("pull") with { Name = "Pull" };

    private static Treatment Grain() => Invented.Treatment("grain", "oxadiazon", "14") with { Name = "Grain" };

    private static Weed WeedOf(string id, decimal weeks, string kind) =>
        Invented.Weed(id) with
        {
            Kind = kind,
            WeeksToFirstSeed = new Span(weeks, weeks + 2),
        };

    private static KnowledgeBase Knowledge(string kind = "broadleaf") =>
        Invented.Knowledge with
        {
            Weeds = Invented.ById(WeedOf("spurge", 4, kind), WeedOf("cress", 3, kind)),
            Treatments = Invented.ById(Grain()),
        };
}

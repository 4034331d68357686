using System.Collections.Immutable;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Inference.Escapes;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>One area's year, ready to be planned: its weeds, what may go on in which week, and the limits.</summary>
public sealed record SeasonCase
{
    /// <summary>The area as the visit found it.</summary>
    public required VisitArea Area { get; init; }

    /// <summary>What was asked.</summary>
    public required SeasonRequest Request { get; init; }

    /// <summary>The weeks.</summary>
    public required SeasonYear Year { get; init; }

    /// <summary>The area's region.</summary>
    public required Region Region { get; init; }

    /// <summary>The area through the year.</summary>
    public required AreaThroughYear Through { get; init; }

    /// <summary>The rules, to ask again once it is known what goes on.</summary>
    public required SeasonRules Rules { get; init; }

    /// <summary>What the rules allow on every day, apart from what the plan puts on.</summary>
    public required WeeklyAdvice Weekly { get; init; }

    /// <summary>The weeds, those seen first, the dearest of them first.</summary>
    public required ImmutableArray<WeedPressure> Weeds { get; init; }

    /// <summary>
    /// Treatments that are clear in some week and help against a weed of the plan, in the order of the candidates.
    /// </summary>
    public required ImmutableArray<Treatment> Treatments { get; init; }

    /// <summary>The year that everything is reckoned from.</summary>
    public required YearCase Sums { get; init; }

    /// <summary>What stands in every plan: the rounds, and the mulch that lies on the pots.</summary>
    public required WayPlan Standing { get; init; }

    /// <summary>What the plan assumes.</summary>
    public required UsualNumbers Numbers { get; init; }

    /// <summary>
    /// The problem to search; it is tightened where a plan showed that the rules ask for more than it said.
    /// </summary>
    public required SeasonProblem Problem { get; init; }

    /// <summary>Reads the case; refused with whole sentences when the visit or the request does not serve.</summary>
    public static Outcome<SeasonCase, string> Of(Advisor advisor, AreaCase found, SeasonRequest request) =>
        Of(advisor.Knowledge, SeasonRules.Of(advisor), found, request);

    /// <summary>The same through whatever gives advice on an area and a day.</summary>
    public static Outcome<SeasonCase, string> Of(
        KnowledgeBase knowledge,
        Func<AreaCase, AreaAdvice> advise,
        AreaCase found,
        SeasonRequest request
    ) => Of(knowledge, SeasonRules.Of(knowledge, advise), found, request);

    private static Outcome<SeasonCase, string> Of(
        KnowledgeBase knowledge,
        SeasonRules rules,
        AreaCase found,
        SeasonRequest request
    )
    {
        (DateOnly visit, VisitArea area, _) = found;
        var reading = AreaReading.Of(area, visit, knowledge);
        (SeasonBasis? basis, ImmutableArray<string> refusals) = SeasonBasis.Of(
            knowledge,
            reading,
            request.From ?? visit,
            request
        );
        if (basis is null)
            return Outcome<SeasonCase, string>.Bad(refusals);
        // What went on between the two days would be neither history nor plan.
        if (request.From < visit)
            return Outcome<SeasonCase, string>.Bad(
                FormattableString.Invariant($"The plan begins on the day of the visit, {visit:yyyy-MM-dd}, or later.")
            );
        var year = new SeasonYear(request.From ?? visit);
        WayPlan today = WaysOfYear.Today(basis.Sums);
        WayPlan standing = today with { Parts = [.. today.Parts.Where(part => part.Action is Practice)] };
        Outcome<Way, string> bare = WayCosting.Of(basis.Sums, standing);
        if (!bare.IsGood)
            return Outcome<SeasonCase, string>.Bad(bare.Refusals.Select(why => $"{area.Name}: {why}."));
        ImmutableArray<WeedPressure> weeds = WeedPressure.Of(
            basis.Sums,
            standing,
            YearEscapes.At(basis.Sums, bare.Value)
        );
        if (weeds.IsEmpty)
            return Outcome<SeasonCase, string>.Bad(
                "No weed of this area comes up in its region. Check the weeds and the region."
            );
        var through = new AreaThroughYear(
            found,
            reading,
            YearAssumptions.Of(knowledge.Usual, reading.FlushesAfterBloom),
            request.Uncovering
        );
        return Case(knowledge, area, request, basis, standing, year, through, rules, weeds);
    }

    /// <summary>A plan of this case as a way through the year, with its whole cost.</summary>
    /// <param name="applications">What goes on.</param>
    public Way WayOf(IEnumerable<SeasonApplication> applications)
    {
        IEnumerable<WayPart> uses = applications
            .GroupBy(one => one.Name, StringComparer.Ordinal)
            .Select(uses => new WayPart(
                Sums.Knowledge.Treatments[uses.Key],
                [.. uses.Select(use => use.Week).Order()]
            ));
        Outcome<Way, string> way = WayCosting.Of(
            Sums,
            Standing with
            {
                Id = "season",
                Means = "This season's plan",
                Parts = [.. Standing.Parts, .. uses],
            }
        );
        return way.IsGood ? way.Value : throw new InvalidOperationException(string.Join("; ", way.Refusals));
    }

    /// <summary>The same case over other rounds and measures that stand, at the costs of a way with them.</summary>
    internal SeasonCase Under(WayPlan standing, Way way)
    {
        SeasonCase under = this with { Standing = standing, Weeds = WeedPressure.Under(Weeds, Sums, standing) };
        return under.At(way);
    }

    /// <summary>The same case with what seedlings cost as it is when a way is taken.</summary>
    internal SeasonCase At(Way way)
    {
        ImmutableArray<WeedPressure> weeds = WeedPressure.At(Weeds, Sums, YearEscapes.At(Sums, way));
        return this with { Weeds = weeds, Problem = WithEscapes(weeds) };
    }

    /// <summary>The problem at other costs of the weeds.</summary>
    internal SeasonProblem WithEscapes(ImmutableArray<WeedPressure> weeds) =>
        Problem with
        {
            Weeds = [.. weeds.Select(weed => new SeasonWeed(weed.Weed.Id, weed.EscapeUsd))],
        };

    /// <summary>
    /// The same case with other wishes; nothing is asked of the rules again. Day, film and wage stay.
    /// </summary>
    public SeasonCase With(SeasonRequest request, KnowledgeBase knowledge)
    {
        SeasonRequest kept = request with
        {
            From = Request.From,
            Uncovering = Request.Uncovering,
            WageUsdPerHour = Request.WageUsdPerHour,
            RoundsWeeks = Request.RoundsWeeks,
            Pots = Request.Pots,
            Prices = Request.Prices,
        };
        SeasonProblem changed = Problem with
        {
            Wishes = SeasonWishList.Of(kept, Numbers, Treatments),
            Limits = ProblemLimits.Of(Area, kept, Year, Treatments, Numbers, knowledge),
        };
        return this with { Request = kept, Problem = changed };
    }

    private static Outcome<SeasonCase, string> Case(
        KnowledgeBase knowledge,
        VisitArea area,
        SeasonRequest request,
        SeasonBasis basis,
        WayPlan standing,
        SeasonYear year,
        AreaThroughYear through,
        SeasonRules rules,
        ImmutableArray<WeedPressure> weeds
    )
    {
        WeeklyAdvice weekly = rules.Weekly(through, year) with { CountsWaiting = request.CountsWaiting };
        var list = new CandidateList(weekly, weeds, basis.Sums, knowledge, EscapesOfArea.Of(area.Past, knowledge));
        (Treatment Treatment, SeasonCandidate Candidate)[] candidates =
        [
            .. weekly
                .Preventives(knowledge.Treatments)
                .Select(treatment => (Treatment: treatment, Candidate: list.Of(treatment)))
                .Where(pair => pair.Candidate is not null)
                .Select(pair => (pair.Treatment, pair.Candidate!)),
        ];
        ImmutableArray<Treatment> treatments = [.. candidates.Select(pair => pair.Treatment)];
        if (request.MustUse.Except(treatments.Select(treatment => treatment.Id)).FirstOrDefault() is { } never)
            return Outcome<SeasonCase, string>.Bad(
                $"{never} must go on, but it is clear here in no week or helps against no weed of the plan."
            );
        var history = new SeasonHistory(area, year, list, knowledge);
        var problem = new SeasonProblem(
            [.. weeds.Select(weed => new SeasonWeed(weed.Weed.Id, weed.EscapeUsd))],
            [.. candidates.Select(pair => history.Counted(pair.Treatment, pair.Candidate))],
            ProblemLimits.Of(area, request, year, treatments, knowledge.Usual, knowledge),
            SeasonWishList.Of(request, knowledge.Usual, treatments)
        )
        {
            Weeks = SeasonYear.Weeks,
            History = history.Uses(),
        };
        return Outcome<SeasonCase, string>.Good(
            new SeasonCase
            {
                Area = area,
                Request = request,
                Year = year,
                Region = basis.Region,
                Through = through,
                Rules = rules,
                Weekly = weekly,
                Weeds = weeds,
                Treatments = treatments,
                Sums = basis.Sums,
                Standing = standing,
                Numbers = knowledge.Usual,
                Problem = problem,
            }
        );
    }
}

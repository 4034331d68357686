using System.Collections.Immutable;
using System.CommandLine;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Costs;
using WeedAdvisor.Planning.Money;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Weeding;
using WeedAdvisor.Reports.Money;

namespace WeedAdvisor.Commands;

/// <summary><c>money</c>: what each way through the year costs, against today's.</summary>
internal static class MoneyCommand
{
    public static Command Of(Surroundings surroundings)
    {
        Argument<string> file = VisitArgument.File();
        Option<string?> area = VisitArgument.Area();
        var against = new Option<string?>("--against")
        {
            Description = "One way or action against today's, line by line.",
            HelpName = "WAY",
        };
        Option<int?> pots = NumberOptions.Whole(
            "--pots",
            "N",
            "Pots of each area (else its answer, else 10,000).",
            1,
            (int)YearCase.MostPots
        );
        Option<decimal?> wage = NumberOptions.Number(
            "--wage",
            "USD",
            "Cost of an hour, before the area's own answer.",
            0,
            Wage.Highest,
            FormattableString.Invariant($"0 to {Wage.Highest} US dollars an hour")
        );
        Option<string?> prices = PricesOption.Of();
        Option<string> format = FormatOption.Of("How it is written.");
        Option<string?> units = UnitsOption.Of();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "money",
            "Show what each way through the year costs: hands, mulches, granules, sprays, against today's.",
            "weedadvisor money visit.yaml --area container-yard --pots 25000",
            "weedadvisor money visit.yaml --area container-yard --against rice-hull-mulch --wage 21",
            "weedadvisor money visit.yaml --prices my-prices.yaml --format html > money.html"
        )
        {
            file,
            area,
            against,
            pots,
            wage,
            prices,
            format,
            units,
            width,
        };
        command.SetAction(parsed =>
        {
            var terms = new YearTerms(parsed.GetValue(wage), parsed.GetValue(pots));
            (KnowledgeBase knowledge, Visit visit) = VisitArgument.Load(
                parsed,
                file,
                area,
                KnowledgeScope.WithoutWorkedVisits,
                surroundings
            );
            PriceBook book = PricesOption.Read(parsed.GetValue(prices), knowledge, surroundings);
            MoneyReport report = Report(
                surroundings.Compile(knowledge).Advise(visit),
                knowledge,
                book,
                terms,
                parsed.GetValue(against)
            );
            surroundings.Out.Write(
                parsed.GetValue(format) == FormatOption.Json
                    ? MoneyJson.Of(report)
                    : FormatOption.Written(
                        parsed.GetValue(format),
                        UnitsOption.Applied(MoneyDocument.Of(report), parsed.GetValue(units), visit, knowledge),
                        parsed.GetValue(width)
                    )
            );
            return ExitCode.Done;
        });
        return command;
    }

    private static MoneyReport Report(
        VisitAdvice advice,
        KnowledgeBase knowledge,
        PriceBook book,
        YearTerms terms,
        string? against
    )
    {
        ImmutableArray<AreaMoney> areas =
        [
            .. advice.Areas.Select(area => Reckon(area, advice, knowledge, book, terms)),
        ];
        // What is missing everywhere is no report.
        if (areas.All(area => area.Compared is null))
            throw new RefusalException(ExitCode.Usage, string.Join(' ', areas.SelectMany(area => area.Refusals)));
        return new MoneyReport(
            advice.Visit,
            knowledge,
            book,
            against is null ? areas : Against(areas, against, knowledge)
        );
    }

    private static AreaMoney Reckon(
        AreaAdvice area,
        VisitAdvice advice,
        KnowledgeBase knowledge,
        PriceBook book,
        YearTerms terms
    )
    {
        Outcome<MoneyCase, string> money = MoneyCase.Of(area, advice.Visit.Date, knowledge, book, terms);
        if (!money.IsGood)
            return new AreaMoney(area.Area, null, null, money.Refusals);
        Outcome<WaysCompared, string> compared = WaysCompared.Of(money.Value);
        return new AreaMoney(area.Area, compared.Value, null, compared.Refusals);
    }

    private static ImmutableArray<AreaMoney> Against(
        ImmutableArray<AreaMoney> areas,
        string asked,
        KnowledgeBase knowledge
    )
    {
        string[] ways = [.. areas.SelectMany(area => area.Compared?.Ways ?? []).Select(way => way.Plan.Id).Distinct()];
        if (!ways.Contains(asked) && knowledge.ActionOf(asked) is null)
        {
            string hint = UsageError.DidYouMean(
                asked,
                [.. ways, .. knowledge.Practices.Keys, .. knowledge.Treatments.Keys]
            );
            throw new RefusalException(
                ExitCode.Usage,
                $"no way or action '{asked}'{hint}. Run the command without --against to see the ways."
            );
        }

        ImmutableArray<AreaMoney> held = [.. areas.Select(area => Against(area, asked))];
        return held.Any(area => area.Against is not null)
            ? held
            : throw new RefusalException(ExitCode.Usage, string.Join(' ', held.SelectMany(area => area.Refusals)));
    }

    private static AreaMoney Against(AreaMoney area, string asked)
    {
        if (area.Compared is not { } compared)
            return area;
        Outcome<Way, string> way = compared.Find(asked);
        return way.IsGood
            ? area with
            {
                Against = WayAgainst.Of(compared, way.Value),
            }
            : area with
            {
                Compared = null,
                Refusals = way.Refusals,
            };
    }
}

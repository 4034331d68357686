using System.Collections.Immutable;
using System.CommandLine;
using System.CommandLine.Parsing;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Planning.Weeding;

namespace WeedAdvisor.Commands.Season;

/// <summary>What can be asked of the season plan on the command line.</summary>
internal sealed class SeasonOptions
{
    private const string Any = "any";
    private const int MostRunning = 12;

    private readonly Option<DateOnly?> _from = NumberOptions.Day(
        "--from",
        "First day of the plan; the day of the visit when not given."
    );

    private readonly Option<Count?> _applications = NumberOptions.Given<Count>(
        "--applications",
        "N",
        $"The most applications: 4, or 2..4 for at least and at most; 0 to {SeasonYear.Weeks}.",
        CountIn,
        $"a whole number from 0 to {SeasonYear.Weeks}, or two of them as in 2..4"
    );

    private readonly Option<string?> _closed = new("--closed")
    {
        Description = "Weeks in which nothing may go on: days, months, spans.",
        HelpName = "WEEKS",
    };

    private readonly Option<decimal?> _budget = NumberOptions.Number(
        "--budget",
        "USD",
        "The most the applications may cost for 1000 pots.",
        0,
        1_000_000
    );

    private readonly Option<Rotation> _rotate = new("--rotate")
    {
        Description = $"How many running may share a site of action, 1 to {MostRunning}, or '{Any}' for no rotation.",
        HelpName = "N",
        DefaultValueFactory = _ => new Rotation(1),
        CustomParser = RotationIn,
    };

    private readonly Option<decimal?> _share = NumberOptions.Number(
        "--share",
        "PERCENT",
        "The greatest share of the year's applications for one site of action.",
        1,
        100
    );

    private readonly Option<string[]> _without = Several("--without", "TREATMENT", "Treatments that must not go on.");
    private readonly Option<string[]> _with = Several("--with", "TREATMENT", "Treatments that must go on.");
    private readonly Option<int?> _rounds = NumberOptions.Whole(
        "--rounds",
        "WEEKS",
        "Weeks between weeding rounds (the visit's answer when not given).",
        1,
        52
    );

    private readonly Option<decimal?> _wage = NumberOptions.Number(
        "--wage",
        "USD",
        "Cost of an hour (the visit's answer when not given).",
        0,
        Wage.Highest
    );

    private readonly Option<int?> _pots = NumberOptions.Whole(
        "--pots",
        "N",
        "Pots of each area (else those answered, else the usual number).",
        1,
        YearCase.MostPots
    );

    private readonly Option<string?> _prices = PricesOption.Of();
    private readonly Option<DateOnly?> _uncover = NumberOptions.Day(
        "--uncover",
        "The day film comes off; the average last frost when not given."
    );

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command)
    {
        Option[] all =
        [
            _from,
            _applications,
            _closed,
            _budget,
            _rotate,
            _share,
            _without,
            _with,
            _rounds,
            _wage,
            _pots,
            _prices,
            _uncover,
        ];
        foreach (Option option in all)
            command.Add(option);
    }

    /// <summary>The request.</summary>
    /// <exception cref="RefusalException">An option can't be read.</exception>
    public SeasonRequest Read(ParseResult parsed, Visit visit, KnowledgeBase knowledge, Surroundings surroundings)
    {
        DateOnly? from = parsed.GetValue(_from);
        Count count = parsed.GetValue(_applications) ?? default;
        return new SeasonRequest
        {
            From = from,
            AtLeast = count.AtLeast,
            AtMost = count.AtMost,
            Closed = Weeks(parsed, new SeasonYear(from ?? visit.Date)),
            BudgetUsd = parsed.GetValue(_budget),
            RunOfSite = parsed.GetValue(_rotate).MostRunning,
            ShareOfSite = parsed.GetValue(_share) / 100,
            Dropped = [.. parsed.GetValue(_without) ?? []],
            MustUse = [.. parsed.GetValue(_with) ?? []],
            RoundsWeeks = parsed.GetValue(_rounds),
            WageUsdPerHour = parsed.GetValue(_wage),
            Pots = parsed.GetValue(_pots),
            Prices = PricesOption.Read(parsed.GetValue(_prices), knowledge, surroundings),
            Uncovering = parsed.GetValue(_uncover),
        };
    }

    private static Option<string[]> Several(string name, string helpName, string description) =>
        new(name)
        {
            Description = description,
            HelpName = helpName,
            AllowMultipleArgumentsPerToken = true,
        };

    private static Count? CountIn(string text)
    {
        int?[] counts =
        [
            .. text.Split("..")
                .Select(end => (int?)NumberOptions.NumberIn(end.Trim(), 0, SeasonYear.Weeks, isWhole: true)),
        ];
        return counts switch
        {
            [{ } most] => new Count(null, most),
            [{ } least, { } most] when least <= most => new Count(least > 0 ? least : null, most),
            _ => null,
        };
    }

    private static Rotation RotationIn(ArgumentResult result)
    {
        string text = result.Tokens[0].Value;
        if (text == Any)
            return new Rotation(null);
        if (NumberOptions.NumberIn(text, 1, MostRunning, isWhole: true) is { } number)
            return new Rotation((int)number);
        result.AddError($"--rotate takes a whole number from 1 to {MostRunning}, not '{text}'");
        return default;
    }

    private ImmutableSortedSet<int> Weeks(ParseResult parsed, SeasonYear year)
    {
        if (parsed.GetValue(_closed) is not { } text)
            return [];
        (ImmutableSortedSet<int>? weeks, string? problem) = WeekWords.Read(text, year);
        return weeks ?? throw new RefusalException(ExitCode.Usage, $"{_closed.Name} {problem}.");
    }

    // How many applications, at least and at most.
    private readonly record struct Count(int? AtLeast, int? AtMost);

    // How many running may share a site of action; null for any number.
    private readonly record struct Rotation(int? MostRunning)
    {
        public override string ToString() => MostRunning?.ToString(CultureInfo.InvariantCulture) ?? Any;
    }
}

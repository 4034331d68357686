using System.Collections.Immutable;
using System.CommandLine;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Commands.Season;

/// <summary>What can be asked of the season plan on the command line.</summary>
internal sealed class SeasonOptions
{
    private const string Any = "any";

    private readonly Option<string?> _from = Text("--from", "DATE", "First day of the plan; the day of the visit when not given.");
    private readonly Option<string?> _applications = Text("--applications", "N", "The most applications: 4, or 2..4 for at least and at most.");
    private readonly Option<string?> _closed = Text("--closed", "WEEKS", "Weeks in which nothing may go on: days, months, spans.");
    private readonly Option<string?> _budget = Text("--budget", "USD", "The most the applications may cost for 1000 pots.");
    private readonly Option<string?> _rotate = Text("--rotate", "N", "How many running may share a site of action; 1 when not given, 'any' for no rotation.");
    private readonly Option<string?> _share = Text("--share", "PERCENT", "The greatest share of the year's applications for one site of action.");
    private readonly Option<string[]> _without = Several("--without", "TREATMENT", "Treatments that must not go on.");
    private readonly Option<string[]> _with = Several("--with", "TREATMENT", "Treatments that must go on.");
    private readonly Option<string?> _rounds = Text("--rounds", "WEEKS", "Weeks between weeding rounds; the visit's answer when not given.");
    private readonly Option<string?> _wage = Text("--wage", "USD", "Cost of an hour; the visit's answer when not given.");
    private readonly Option<string?> _prices = PricesOption.Of();
    private readonly Option<string?> _uncover = Text("--uncover", "DATE", "The day film comes off; the average last frost when not given.");

    /// <summary>Adds the options to a command.</summary>
    public void AddTo(Command command)
    {
        foreach (Option option in (Option[])[_from, _applications, _closed, _budget, _rotate, _share, _without, _with, _rounds, _wage, _prices, _uncover])
            command.Add(option);
    }

    /// <summary>The request.</summary>
    /// <exception cref="RefusalException">An option can't be read.</exception>
    public SeasonRequest Read(ParseResult parsed, Visit visit, KnowledgeBase knowledge, Surroundings surroundings)
    {
        DateOnly? from = Day(parsed, _from);
        (int? atLeast, int? atMost) = Count(parsed);
        return new SeasonRequest
        {
            From = from,
            AtLeast = atLeast,
            AtMost = atMost,
            Closed = Weeks(parsed, new SeasonYear(from ?? visit.Date)),
            BudgetUsd = Number(parsed, _budget, 0, 1_000_000, isWhole: false),
            RunOfSite = parsed.GetValue(_rotate) == Any ? null : (int?)Number(parsed, _rotate, 1, 12, isWhole: true) ?? 1,
            ShareOfSite = Number(parsed, _share, 1, 100, isWhole: false) / 100,
            Dropped = [.. parsed.GetValue(_without) ?? []],
            MustUse = [.. parsed.GetValue(_with) ?? []],
            RoundsWeeks = (int?)Number(parsed, _rounds, 1, 52, isWhole: true),
            WageUsdPerHour = Number(parsed, _wage, 0, 10_000, isWhole: false),
            Prices = PricesOption.Read(parsed.GetValue(_prices), knowledge, surroundings),
            Uncovering = Day(parsed, _uncover),
        };
    }

    private static Option<string?> Text(string name, string helpName, string description) =>
        new(name) { Description = description, HelpName = helpName };

    private static Option<string[]> Several(string name, string helpName, string description) => new(name)
    {
        Description = description,
        HelpName = helpName,
        AllowMultipleArgumentsPerToken = true,
    };

    private (int? AtLeast, int? AtMost) Count(ParseResult parsed)
    {
        if (parsed.GetValue(_applications) is not { } text)
            return (null, null);
        string[] ends = text.Split("..");
        int?[] counts = [.. ends.Select(end => Whole(end))];
        return counts switch
        {
            [{ } most] => (null, most),
            [{ } least, { } most] when least <= most => (least > 0 ? least : null, most),
            _ => throw Refused(_applications, "a whole number from 0 to 52, or two of them as in 2..4", text),
        };
    }

    private static int? Whole(string text) =>
        int.TryParse(text.Trim(), NumberStyles.None, CultureInfo.InvariantCulture, out int count) && count <= SeasonYear.Weeks
            ? count
            : null;

    private ImmutableSortedSet<int> Weeks(ParseResult parsed, SeasonYear year)
    {
        if (parsed.GetValue(_closed) is not { } text)
            return [];
        (ImmutableSortedSet<int>? weeks, string? problem) = WeekWords.Read(text, year);
        return weeks ?? throw new RefusalException(ExitCode.Usage, $"{_closed.Name} {problem}.");
    }

    private static DateOnly? Day(ParseResult parsed, Option<string?> option)
    {
        if (parsed.GetValue(option) is not { } text)
            return null;
        return DateOnly.TryParseExact(text, "yyyy-MM-dd", CultureInfo.InvariantCulture, DateTimeStyles.None, out DateOnly day)
            ? day
            : throw Refused(option, "a date such as 2026-04-14", text);
    }

    private static decimal? Number(ParseResult parsed, Option<string?> option, decimal low, decimal high, bool isWhole)
    {
        if (parsed.GetValue(option) is not { } text)
            return null;
        const NumberStyles style = NumberStyles.AllowLeadingSign | NumberStyles.AllowDecimalPoint;
        bool isGood = decimal.TryParse(text, style, CultureInfo.InvariantCulture, out decimal value)
            && value >= low && value <= high && (!isWhole || value == decimal.Truncate(value));
        string kind = isWhole ? "a whole number" : "a number";
        return isGood ? value : throw Refused(option, FormattableString.Invariant($"{kind} from {low} to {high}"), text);
    }

    private static RefusalException Refused(Option option, string expected, string text) =>
        new(ExitCode.Usage, $"{option.Name} takes {expected}, not '{text}'.");
}

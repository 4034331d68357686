using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Planning.OneYear;
using WeedAdvisor.Planning.Season.Programme;
using WeedAdvisor.Planning.Season.Year;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Season;

/// <summary>Plain words for what a season plan holds.</summary>
public static class SeasonWords
{
    /// <summary>What kind of work it is.</summary>
    public static string Kind(PlannedWorkKind kind) =>
        kind switch
        {
            PlannedWorkKind.Apply => "put on",
            PlannedWorkKind.CleanUp => "clean up",
            PlannedWorkKind.WaterIn => "water in",
            PlannedWorkKind.LookAgain => "look again",
            PlannedWorkKind.Round => "weeding round",
            PlannedWorkKind.Practice => "without chemicals",
            PlannedWorkKind.Film => "film",
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "a kind of work without words"),
        };

    /// <summary>What is to be done: the kind of work and the sentence, unless that names the kind itself.</summary>
    public static string Work(PlannedWork work, string between) =>
        work.NamesItsKind ? work.Text : $"{Kind(work.Kind)}{between}{work.Text}";

    /// <summary>Days of work or of an application: the first, and the last where there are several.</summary>
    public static string Days(DateOnly first, DateOnly last) =>
        first == last ? Figures.Day(first) : $"{Figures.Day(first)} to {InYear(last)}";

    /// <summary>The days of an application, all of them allowed.</summary>
    public static string Days(PlannedUse use) =>
        Days(use.Days.First, use.Days.Last) + (use.IsLongestOfSeveral ? " (the longest allowed run of that week)" : "");

    /// <summary>The days of a span of weeks.</summary>
    public static string Weeks(SeasonYear year, int from, int to) =>
        $"{Figures.Day(year.DayOf(from))} to {Figures.Day(year.DayOf(to + 1).AddDays(-1))}";

    /// <summary>The site-of-action groups of a treatment.</summary>
    public static string Groups(Treatment treatment, string between) =>
        string.Join(between, treatment.Actives.Select(active => active.Group ?? "none").Distinct());

    /// <summary>What goes on in a plan, each with the first of its days.</summary>
    public static string Brief(ImmutableArray<PlannedUse> uses, Func<string, string> nameOf) =>
        uses.IsEmpty
            ? "nothing goes on"
            : string.Join("; ", uses.Select(use => $"{nameOf(use.Treatment)} {InYear(use.Days.First)}"));

    /// <summary>How sure it is that no plan is cheaper.</summary>
    public static Line Proof(YearPlan plan) =>
        plan is not { Way: { } way, LeastUsd: { } least, GapPercent: { } gap } ? "The best found."
        : plan.IsProven
            ? Line.Of(
                $"Proven: at these rounds no plan that keeps the rules and wishes costs less than "
                    + $"{Amounts.Dollars(Math.Min(least, way.Usd))}, which is within "
                    + $"{new Amount(YearPlan.ProvenPercent, "%", "0")}."
            )
        : Line.Of(
            $"The best found. It is proven only that none at these rounds costs less than {Amounts.Dollars(least)}: "
                + $"{new Amount(gap, "%", "0")} below."
        );

    /// <summary>Why a plan has no application.</summary>
    public static string Nothing(YearPlan plan) =>
        plan.Case.Treatments.IsEmpty
            ? "Nothing: no preventive that helps against these weeds is clear here in any week."
            : "Nothing: hands cost less here than any preventive would save.";

    private static string InYear(DateOnly day) => day.ToString("MM-dd", CultureInfo.InvariantCulture);

    /// <summary>Why a weed is in the plan.</summary>
    public static string Origin(WeedOrigin origin) =>
        origin switch
        {
            WeedOrigin.Seen => "seen or expected",
            WeedOrigin.Seeding => "seen with ripe seed",
            WeedOrigin.CameThrough => "came through before",
            WeedOrigin.ToCome => "to come here",
            WeedOrigin.BlownIn => "may fly in",
            _ => throw new ArgumentOutOfRangeException(nameof(origin), origin, "an origin without words"),
        };
}

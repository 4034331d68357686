using System.Collections.Immutable;
using WeedAdvisor.Inference.Limits;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Planning.Season.Search;
using WeedAdvisor.Planning.Season.Year;

namespace WeedAdvisor.Planning.Season.Programme;

/// <summary>The limits of a problem: rotation, distance, and what a year may see of an active over all products.</summary>
internal static class ProblemLimits
{
    // The search counts kilograms; a limit on uses is a limit on a made-up active of which each use brings one.
    private const string Uses = " (uses)";

    /// <summary>The limits.</summary>
    public static SeasonLimits Of(
        VisitArea area,
        SeasonRequest request,
        SeasonYear year,
        ImmutableArray<Treatment> treatments,
        SeasonNumbers numbers,
        KnowledgeBase knowledge)
    {
        HashSet<string> held = [.. treatments.SelectMany(treatment => treatment.Actives).Select(active => active.Name)];
        return new SeasonLimits
        {
            Yearly = [.. knowledge.ActiveLimits.Values.Where(limit => held.Contains(limit.Active)).SelectMany(Figures)],
            MaxRunOfSite = request.RunOfSite,
            MaxShareOfSite = request.ShareOfSite,
            MinWeeksBetweenAny = Math.Max(1, numbers.Whole(SeasonNumbers.BetweenAny)),
        };

        IEnumerable<Search.ActiveLimit> Figures(Knowledge.Records.ActiveLimit limit)
        {
            (int usesBefore, decimal kgBefore) = LimitCheck.Before(limit, year.From.AddDays(-1), area.Past ?? [], knowledge);
            if (limit.KgAiHaPerYear is { } kg)
                yield return new(NameOf(limit), kg + ActiveDoses.RoundingKgPerHa, kgBefore);
            if (limit.UsesPerYear is { } uses)
                yield return new(limit.Active + Uses, uses, usesBefore);
        }
    }

    /// <summary>The doses of a treatment that count against limits on uses, and on the amount in one form.</summary>
    public static IEnumerable<ActiveDose> Counted(Treatment treatment, KnowledgeBase knowledge)
    {
        foreach (Active active in treatment.Actives)
        {
            Knowledge.Records.ActiveLimit[] limits =
                [.. knowledge.ActiveLimits.Values.Where(limit => limit.Active == active.Name)];
            if (limits.Any(limit => limit.UsesPerYear is not null))
                yield return new ActiveDose(active.Name + Uses, 1);
            foreach (Knowledge.Records.ActiveLimit limit in limits.Where(limit => limit is { Form: not null, KgAiHaPerYear: not null }))
            {
                if (limit.IsOn(treatment))
                    yield return new ActiveDose(NameOf(limit), ActiveDoses.KgPerHa(treatment, active) ?? 0);
            }
        }
    }

    // A limit on one form is one of a made-up active that only that form brings.
    private static string NameOf(Knowledge.Records.ActiveLimit limit) =>
        limit.Form is { } form ? $"{limit.Active} ({form})" : limit.Active;
}

using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.InHand;

/// <summary>
/// The answers on every chemical that somebody has or asks about: what the visit names, what went on here and is barred
/// now, what went on last, and what the label book holds. Each chemical once.
/// </summary>
internal static class HeldAnswers
{
    private const string Ask =
        "Ask your extension office; its label must name this crop and this place. Until then leave it shut.";

    /// <summary>The answers: what was asked first.</summary>
    /// <param name="names">Where names come from.</param>
    /// <param name="area">The advice on the area.</param>
    /// <param name="day">The day of the visit.</param>
    public static ImmutableArray<HeldAnswer> Of(Names names, AreaAdvice area, DateOnly day)
    {
        List<HeldAnswer> answers = [.. area.Reading.InHand.Select(word => OfWord(names, area, day, word))];
        HashSet<string> told = [.. answers.Select(one => one.Action).OfType<string>()];
        foreach (string used in UsedIn(area))
        {
            if (names.Treatment(used) is { } treatment && told.Add(used))
                answers.Add(OfUses(names, area, day, HeldFrom.Used, null, treatment.Name, [treatment]));
        }

        foreach (string owned in OwnedIn(names, area).Where(told.Add))
        {
            Treatment treatment = names.Treatment(owned)!;
            answers.Add(OfUses(names, area, day, HeldFrom.Label, null, treatment.Name, [treatment]));
        }

        return [.. answers];
    }

    // Of what went on long ago only what is barred now; of the last use everything. What let weeds through is told as
    // such where it is not barred.
    private static IEnumerable<string> UsedIn(AreaAdvice area)
    {
        ImmutableArray<PastApplication> past = area.Area.Past ?? [];
        HashSet<string> barred = [.. area.Barred.Select(one => one.Action)];
        PastApplication? last = past.Where(one => one.Date is not null).MaxBy(one => one.Date);
        return past.Where(one =>
                one.Treatment is { } id
                && (barred.Contains(id) || (ReferenceEquals(one, last) && one.Result is not ("escapes" or "injury")))
            )
            .Select(one => one.Treatment!)
            .Distinct(StringComparer.Ordinal);
    }

    // What waits or is not called for stands where all the others do.
    private static IEnumerable<string> OwnedIn(Names names, AreaAdvice area) =>
        area
            .Clear.Select(one => one.Action)
            .Concat(area.Barred.Select(one => one.Action))
            .Concat(area.Waiting.Select(one => one.Action))
            .Concat(area.NotAdvised.Select(one => one.Action))
            .Where(id => names.Treatment(id)?.Label is not null);

    private static HeldAnswer OfWord(Names names, AreaAdvice area, DateOnly day, string word)
    {
        ChemicalMeant meant = names.Chemical(word);
        string name = Figures.Sentence(meant.Name);
        if (!meant.Uses.IsEmpty)
            return OfUses(names, area, day, HeldFrom.InHand, word, name, meant.Uses);
        if (meant.Gone is { } gone)
            return Bare(
                word,
                name,
                HeldVerdict.Withdrawn,
                "no, it may not be used any more",
                names.BagText(gone, area.Reading.Region?.Country)
            );
        if (meant.Mixed is [var mixed, ..])
            return Bare(
                word,
                name,
                HeldVerdict.NotHeld,
                $"no answer of it alone: it is held here in mixtures only, such as {mixed.Name}",
                Ask
            );
        string slip = meant.Nearest is { } near ? $"Did you mean {near}? " : "";
        return Bare(word, name, HeldVerdict.NotHeld, "not held here, so nothing says that you may", slip + Ask);
    }

    private static HeldAnswer Bare(string word, string name, HeldVerdict verdict, string head, string why) =>
        new(HeldFrom.InHand, word, name, null, [], verdict, head, why, null, "");

    // Of several uses of one chemical the kindest is told, by its own name; of those that are all barred the one that
    // least stands in the way of.
    private static HeldAnswer OfUses(
        Names names,
        AreaAdvice area,
        DateOnly day,
        HeldFrom from,
        string? word,
        string name,
        ImmutableArray<Treatment> uses
    )
    {
        (Treatment use, HeldStanding standing) = uses.Select(one =>
                (Use: one, Standing: HeldStanding.Of(names, area, day, one))
            )
            .OrderBy(one => one.Standing.Verdict)
            .ThenBy(one => one.Standing.Bars)
            .ThenBy(one => one.Use.Id, StringComparer.Ordinal)
            .First();
        bool isOfThisUseOnly = uses.Length > 1 && standing.Verdict < HeldVerdict.NotAdvised;
        return new HeldAnswer(
            from,
            word,
            !isOfThisUseOnly ? name
                : use.Name.StartsWith(name, StringComparison.OrdinalIgnoreCase) ? use.Name
                : $"{name} ({use.Name})",
            use.Id,
            [.. uses.Where(one => one.Id != use.Id).Select(one => one.Id)],
            standing.Verdict,
            standing.Head,
            standing.Why,
            standing.Judgement,
            standing.Mind
        );
    }
}

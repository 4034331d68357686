using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.InHand;

/// <summary>How one use of a chemical in hand stands.</summary>
/// <param name="Verdict">The answer.</param>
/// <param name="Head">The answer in a few words, without a full stop.</param>
/// <param name="Why">The reason that counts most, or what it does here; empty where there is none.</param>
/// <param name="Bars">How many rules bar it.</param>
/// <param name="Judgement">The rule that the reason is of, where it is barred; else null.</param>
/// <param name="Mind">The caution that decides, where it may be used; else empty.</param>
internal sealed record HeldStanding(
    HeldVerdict Verdict,
    string Head,
    string Why,
    int Bars,
    string? Judgement,
    string Mind
)
{
    private const int MostNeeds = 3;

    /// <summary>How it stands.</summary>
    public static HeldStanding Of(Names names, AreaAdvice area, DateOnly day, Treatment use)
    {
        if (area.Clear.FirstOrDefault(one => one.Action == use.Id) is { } clear)
            return Clear(names, area, use, clear);
        if (area.Barred.FirstOrDefault(one => one.Action == use.Id) is { } barred)
            return Barred(barred, day, [.. area.KeepOut?.Because ?? []]);
        if (area.Waiting.FirstOrDefault(one => one.Action == use.Id) is { } waiting)
            return new(
                HeldVerdict.Waits,
                $"not before you tell {Needs(names, waiting)}",
                OnWeeds.Of(names, area, use),
                0,
                null,
                ""
            );
        Reason? against = area
            .NotAdvised.FirstOrDefault(one => one.Action == use.Id)
            ?.Against.OrderByDescending(reason => reason.IsCertain)
            .ThenByDescending(reason => reason.Certainty)
            .FirstOrDefault();
        string on = OnWeeds.Of(names, area, use);
        return new(
            HeldVerdict.NotAdvised,
            "not advised here",
            against is null ? Joined("Nothing calls for it.", on) : Names.UnderItsName(against.Said),
            0,
            null,
            ""
        );
    }

    private static HeldStanding Clear(Names names, AreaAdvice area, Treatment use, ClearAction clear)
    {
        bool isUnless = clear.Status == ActionStatus.ClearUnless;
        string when = clear.NotToday.IsEmpty ? "" : $" (not today: {Listing.And([.. clear.NotToday])})";
        string first = clear.ComesAfterCleaning || clear.WaitsForCleaning ? ", once the weeds are off" : "";
        string unless =
            !isUnless ? ""
            : StatusWords.DoubtOf(clear) is { } doubt ? $"Unless: {Names.UnderItsName(doubt)} "
            : "Unless an answer speaks against it. ";
        string ask = isUnless ? $"Ask: {string.Join(" ", names.QuestionsOf(clear.Unless))}" : "";
        return new(
            isUnless ? HeldVerdict.YesUnless : HeldVerdict.Yes,
            $"yes{first}{when}",
            Joined(OnWeeds.Of(names, area, use), (unless + ask).Trim()),
            0,
            null,
            Deciding(clear)
        );
    }

    // What keeps somebody from being hurt, then the crop and the water, then the first of the rest.
    private static string Deciding(ClearAction clear) =>
        CautionsInOrder.Of(clear.Cautions).Select(caution => Names.UnderItsName(caution.Said)).FirstOrDefault("");

    private static HeldStanding Barred(BarredAction barred, DateOnly day, HashSet<string> told)
    {
        string end = StatusWords.EndOf(barred, day);
        (HeldVerdict verdict, string head) = barred.Status switch
        {
            ActionStatus.NotYet => (HeldVerdict.NotYet, $"not now, at the earliest {end}"),
            ActionStatus.NotThisWay => (HeldVerdict.NotThisWay, $"not this way, only {end}"),
            _ => (HeldVerdict.No, "no"),
        };
        // What ends last says until when; of what never ends the reason that counts most is told.
        Reason reason = BarTiers.First(barred);
        string why = told.Contains(reason.Text) ? "" : BarSaid.InBrief(reason);
        return new(verdict, head, why, barred.Because.Length, reason.Judgement, "");
    }

    private static string Needs(Names names, WaitingAction waiting)
    {
        string[] needs = [.. waiting.Needs.Order().Select(names.NeedInWords).Distinct()];
        return needs.Length <= MostNeeds + 1
            ? Listing.And(needs)
            : string.Join(", ", needs.Take(MostNeeds))
                + $" and {Figures.Count(needs.Length - MostNeeds, "other thing", "other things")}";
    }

    private static string Joined(string first, string second) =>
        first.Length == 0 ? second
        : second.Length == 0 ? first
        : $"{first} {second}";
}

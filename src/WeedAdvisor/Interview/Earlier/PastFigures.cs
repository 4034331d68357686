using System.Globalization;
using System.Text.RegularExpressions;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Earlier;

/// <summary>The day of an earlier use.</summary>
internal sealed record PastDay()
    : PastField(
        "day",
        "Day",
        "a day such as 2026-04-30, today or yesterday",
        "While it is not known, whatever hangs on it waits."
    )
{
    public override bool IsTold(PastApplication past) => past.Date is not null;

    public override PastApplication Without(PastApplication past) => past with { Date = null };

    public override string Text(Telling telling, PastApplication past) =>
        past.Date is { } date ? Answering.Date(date) : "";

    public override Typed<PastApplication>? Take(Telling telling, PastApplication past, string text)
    {
        bool isDay = TypedAnswer.ReadDay(text, telling.Visit) is not null;
        if (!isDay && !LooksLikeDay(text))
            return null;
        Typed<DateOnly> day = TypedPast.ReadDay(text, telling.Visit);
        return day.Error is null
            ? Typed<PastApplication>.As(past with { Date = day.Value })
            : Typed<PastApplication>.Wrong(day.Error);
    }

    // Figures and marks alone, of which one is no colon: an hour is none, and a rate has letters.
    private static bool LooksLikeDay(string text) =>
        char.IsAsciiDigit(text[0]) && text.All(c => char.IsAsciiDigit(c) || c is '-' or '/' or '.');
}

/// <summary>The hour at which an earlier use ended.</summary>
internal sealed partial record PastHour()
    : PastField(
        "hour",
        "Hour it ended",
        "an hour such as 14:00 or 2 pm",
        "The entry interval runs from then; not known counts as midnight at the end of that day."
    )
{
    public override bool IsTold(PastApplication past) => past.Hour is not null;

    public override PastApplication Without(PastApplication past) => past with { Hour = null };

    public override string Text(Telling telling, PastApplication past) =>
        past.Hour is { } hour ? hour.ToString("HH:mm", CultureInfo.InvariantCulture) : "";

    public override Typed<PastApplication>? Take(Telling telling, PastApplication past, string text)
    {
        Match form = Form().Match(text);
        if (!form.Success)
            return null;
        int hour = int.Parse(form.Groups["hour"].Value, CultureInfo.InvariantCulture);
        int minute = form.Groups["minute"].Success
            ? int.Parse(form.Groups["minute"].Value, CultureInfo.InvariantCulture)
            : 0;
        string half = form.Groups["half"].Value.ToLowerInvariant();
        if (half.Length > 0 && hour is < 1 or > 12)
            hour = 24;
        else if (half.Length > 0)
            hour = (hour % 12) + (half[0] == 'p' ? 12 : 0);
        return hour <= 23 && minute <= 59
            ? Typed<PastApplication>.As(past with { Hour = new TimeOnly(hour, minute) })
            : Typed<PastApplication>.Wrong($"\"{text}\" is not an hour. Give it as 14:00 or 2 pm.");
    }

    [GeneratedRegex(
        @"^(at\s+)?(?<hour>\d{1,2})((:(?<minute>\d{2}))(\s*(?<half>[ap]\.?m\.?))?|\s*(?<half>[ap]\.?m\.?))$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant
    )]
    private static partial Regex Form();
}

/// <summary>How much of an earlier use went on.</summary>
internal sealed partial record PastRate()
    : PastField(
        "rate",
        "How much",
        "product for an area, such as 150 lb/acre",
        "Counts towards the year's limit; not known counts as the highest published rate."
    )
{
    public override bool IsTold(PastApplication past) => past.Rate is not null;

    public override PastApplication Without(PastApplication past) => past with { Rate = null, RateUnit = null };

    public override string Text(Telling telling, PastApplication past) =>
        past.Rate is { } rate ? $"{Answering.Number(rate)} {past.RateUnit}" : "";

    public override Typed<PastApplication>? Take(Telling telling, PastApplication past, string text)
    {
        Match form = Form().Match(text);
        if (!form.Success || PastSeasons.IsMeant(text))
            return null;
        string unit = form.Groups["unit"].Value.Trim();
        string[] known = [.. telling.Knowledge.RateUnits()];
        string folded = NearWords.Fold(unit);
        if (Array.Find(known, one => NearWords.Fold(one) == folded) is not { } word)
        {
            string hint = NearWords.Nearest(unit, known) is { } near ? $" Did you mean {near}?" : "";
            return Typed<PastApplication>.Wrong($"\"{unit}\" is not a unit of a rate.{hint}");
        }

        return
            decimal.TryParse(
                form.Groups["rate"].Value,
                NumberStyles.AllowDecimalPoint,
                CultureInfo.InvariantCulture,
                out decimal rate
            )
            && rate <= 1_000_000
            ? Typed<PastApplication>.As(past with { Rate = rate, RateUnit = word })
            : Typed<PastApplication>.Wrong($"\"{form.Groups["rate"].Value}\" is not a believable rate.");
    }

    [GeneratedRegex(
        @"^(?<rate>\d{1,9}(\.\d{1,6})?)\s*(?<unit>[a-z].*)$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant
    )]
    private static partial Regex Form();
}

/// <summary>In how many seasons running the weeds came through.</summary>
internal sealed partial record PastSeasons()
    : PastField(
        "seasons",
        "Seasons running",
        "a number of seasons, such as 3 seasons",
        "In how many seasons one after the other the same weeds came through it."
    )
{
    private const int Most = 50;

    public static bool IsMeant(string text) => Form().IsMatch(text);

    public override bool IsTold(PastApplication past) => past.SeasonsRunning is not null;

    public override PastApplication Without(PastApplication past) => past with { SeasonsRunning = null };

    public override string Text(Telling telling, PastApplication past) =>
        past.SeasonsRunning switch
        {
            null => "",
            1 => "1 season",
            { } seasons => $"{seasons} seasons",
        };

    public override Typed<PastApplication>? Take(Telling telling, PastApplication past, string text)
    {
        Match form = Form().Match(text);
        if (!form.Success)
            return null;
        int seasons = int.Parse(form.Groups["seasons"].Value, CultureInfo.InvariantCulture);
        return seasons is >= 1 and <= Most
            ? Typed<PastApplication>.As(past with { SeasonsRunning = seasons })
            : Typed<PastApplication>.Wrong($"Seasons running are a number from 1 to {Most}.");
    }

    [GeneratedRegex(
        @"^(?<seasons>\d{1,4})\s*(seasons?|years?)(\s+running)?$",
        RegexOptions.IgnoreCase | RegexOptions.ExplicitCapture | RegexOptions.CultureInvariant
    )]
    private static partial Regex Form();
}

/// <summary>The weeds that came through an earlier use.</summary>
internal sealed record PastWeeds()
    : PastField(
        "escaped",
        "Weeds that came through",
        "names of weeds, commas between",
        "What came through although the product is rated good on it is counted; after the second time its credit "
            + "lapses."
    )
{
    private const string Escapes = "escapes";

    public override bool IsTold(PastApplication past) => past.Escaped.Count > 0;

    public override PastApplication Without(PastApplication past) => past with { Escaped = WordSet.Empty };

    public override string Text(Telling telling, PastApplication past) =>
        string.Join(", ", past.Escaped.Select(weed => Answering.WeedName(telling.Knowledge, weed)));

    public override Typed<PastApplication>? Take(Telling telling, PastApplication past, string text)
    {
        var weeds = new List<string>(past.Escaped);
        foreach (string name in text.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries))
        {
            Typed<NameHit> weed = TypedWeed.OneOf(NameSearch.Weeds(telling.Knowledge, name, null), name, "weed");
            if (weed.Value is null)
                return Typed<PastApplication>.Wrong(weed.Error!);
            weeds.Add(weed.Value.Id);
        }

        return Typed<PastApplication>.As(past with { Escaped = WordSet.Of(weeds), Result = past.Result ?? Escapes });
    }
}

using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Limits;

/// <summary>One earlier use that holds an active, or may hold it.</summary>
/// <param name="Told">What was told of it.</param>
/// <param name="Product">Its product.</param>
/// <param name="IsSure">Whether it is known to hold the active, and its day is known.</param>
internal sealed record UseOfActive(PastApplication Told, PastProduct Product, bool IsSure);

/// <summary>The earlier uses of products that hold an active, or may hold it.</summary>
internal sealed record UsesOfActive
{
    /// <summary>All uses up to a day.</summary>
    public UsesOfActive(string active, DateOnly day, ImmutableArray<PastApplication> past, KnowledgeBase knowledge)
    {
        (Active, Day) = (active, day);
        Uses =
        [
            .. past
                .Where(use => use.Date is null || use.Date <= day)
                .Select(use => (Use: use, Product: PastProduct.Of(use, knowledge)))
                .Where(one => one.Product.Actives is null || one.Product.Actives.Contains(active))
                .Select(one => new UseOfActive(one.Use, one.Product, one.Product.Actives is not null && one.Use.Date is not null))
                .OrderBy(one => one.Told.Date),
        ];
    }

    /// <summary>The active's ISO common name.</summary>
    public string Active { get; }

    /// <summary>The day on which one more use is looked at.</summary>
    public DateOnly Day { get; }

    /// <summary>The uses, oldest first; those without a day first of all.</summary>
    public ImmutableArray<UseOfActive> Uses { get; private init; }

    /// <summary>Whether uses count against a calendar year and not against any twelve months.</summary>
    public bool IsCalendarYear { get; private init; }

    /// <summary>Whether there is none.</summary>
    public bool IsEmpty => Uses.IsEmpty;

    /// <summary>Whether all of them are sure.</summary>
    public bool AreAllSure => Uses.All(use => use.IsSure);

    /// <summary>Days on which the active went on for sure: what is put on together is one use.</summary>
    public int SureDays => Uses.Where(use => use.IsSure).Select(use => use.Told.Date).Distinct().Count();

    /// <summary>The most days on which it may have gone on.</summary>
    public int MostDays => SureDays + Uses.Where(use => !use.IsSure).Count(use => use.Told.Date is null || !IsSureOn(use.Told.Date));

    /// <summary>Those that count in the year of the day.</summary>
    public UsesOfActive InYear(bool calendarYear) => this with
    {
        IsCalendarYear = calendarYear,
        Uses = [.. Uses.Where(use => use.Told.Date is not { } day || FreedOn(day, calendarYear) > Day)],
    };

    /// <summary>Those of the form that a limit speaks of; a product without a record may be of any form.</summary>
    public UsesOfActive InForm(ActiveLimit limit) => this with
    {
        Uses = [.. Uses.Where(use => use.Product.Record is not { } record || limit.IsOn(record))],
    };

    /// <summary>Those of one treatment, or that may be.</summary>
    public UsesOfActive Of(Treatment treatment) => this with
    {
        Uses =
        [
            .. Uses
                .Where(use => use.Product.Record is not { } record || record.Id == treatment.Id)
                .Select(use => use with { IsSure = use.IsSure && use.Product.Record is not null }),
        ],
    };

    /// <summary>The day on which a use no longer counts.</summary>
    public DateOnly FreedOn(DateOnly used) => FreedOn(used, IsCalendarYear);

    /// <summary>The days in words, for people.</summary>
    public string Days => string.Join(", ", Uses.Select(use =>
        use.Told.Date is { } day ? day.ToString("yyyy-MM-dd", CultureInfo.InvariantCulture) : "on a day that is not known").Distinct());

    private static DateOnly FreedOn(DateOnly used, bool calendarYear) =>
        calendarYear ? new DateOnly(used.Year, 1, 1).AddYears(1) : used.AddYears(1);

    private bool IsSureOn(DateOnly? day) => Uses.Any(use => use.IsSure && use.Told.Date == day);
}

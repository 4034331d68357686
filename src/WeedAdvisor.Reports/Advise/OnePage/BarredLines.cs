using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Advise.InHand;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise.OnePage;

/// <summary>A line on chemicals that are barred.</summary>
/// <param name="Text">What it says.</param>
/// <param name="Sources">Keys of the sources of its rule.</param>
internal sealed record BarredLine(string Text, ImmutableArray<string> Sources)
{
    /// <summary>Whether it says itself how many are barred.</summary>
    public bool IsCounted { get; init; }
}

/// <summary>
/// Why chemicals may not be used here: first what bars nearly all, then those that a grower would reach for by name,
/// each with the reason that counts most. What a label merely does not name the place for is only counted.
/// </summary>
internal sealed class BarredLines
{
    private const double NearlyAll = 0.6;
    private const int MostNamed = 4;
    private const int MostInALine = 3;

    private readonly Names _names;
    private readonly AreaAdvice _area;
    private readonly ImmutableArray<HeldAnswer> _held;
    private readonly HashSet<string> _dated;
    private readonly ImmutableArray<BarredChemical> _all;

    private BarredLines(Names names, AreaAdvice area, ImmutableArray<HeldAnswer> held, HashSet<string> dated)
    {
        _names = names;
        _area = area;
        _held = held;
        _dated = dated;
        _all =
        [
            .. area.Barred.Where(one => names.IsTreatment(one.Action)).Select(one => BarredChemical.Of(names, one)),
        ];
    }

    /// <summary>The lines; what is told of chemicals in hand is not told again.</summary>
    /// <param name="names">Where names come from.</param>
    /// <param name="area">The advice on the area.</param>
    /// <param name="held">The answers on what the grower has.</param>
    /// <param name="dated">Ids of those that are told with the day or state from which they may go on.</param>
    public static ImmutableArray<BarredLine> Of(
        Names names,
        AreaAdvice area,
        ImmutableArray<HeldAnswer> held,
        HashSet<string> dated
    ) => new BarredLines(names, area, held, dated).Lines();

    /// <summary>How many are barred, and how many of them for nothing but the place.</summary>
    public static string Count(Names names, AreaAdvice area)
    {
        BarredChemical[] all =
        [
            .. area.Barred.Where(one => names.IsTreatment(one.Action)).Select(one => BarredChemical.Of(names, one)),
        ];
        int ofSite = all.Count(one => one.Tier == BarTier.Site);
        string only = ofSite == 0 ? "" : $", {Whole(ofSite)} of them only as no label names this place";
        return $"Barred in all: {Whole(all.Length)}{only}.";
    }

    private ImmutableArray<BarredLine> Lines()
    {
        if (_all.IsEmpty)
            return [];
        BarredChemical[] open = [.. Open()];
        Heap? heap = HeapOf();
        var lines = ImmutableArray.CreateBuilder<BarredLine>();
        HashSet<string> named = new(StringComparer.Ordinal);
        if (heap is not null)
            lines.Add(LineOf(heap, open, named));
        else if (NotYet() is { } notYet)
            lines.Add(notYet);
        foreach (var group in GroupsIn([.. open.Where(one => one.Reason.Judgement != heap?.Judgement)]))
        {
            string[] next = [.. group.Names.Take(Math.Min(MostNamed - named.Count, MostInALine))];
            named.UnionWith(next);
            if (next.Length > 0)
                lines.Add(
                    new BarredLine(
                        ToldOf(group.Text) is { } told
                            ? $"Nor {Listing.Or(next)}, for the reason told of {told}."
                            : $"Not {Listing.Or(next)}: {group.Text}",
                        group.Sources
                    )
                );
        }

        return lines.Count > 0 ? lines.ToImmutable() : [Largest()];
    }

    // A reason that stands with a chemical in hand is not told again: with which.
    private string? ToldOf(string text) =>
        _held.FirstOrDefault(one => one.Judgement is not null && one.Why == text)?.Name;

    // Those that nothing else on the page tells of, in no use that could still go on: of several uses of one chemical
    // the one that least stands in the way of.
    private IEnumerable<BarredChemical> Open()
    {
        HashSet<string> answered =
        [
            .. _held.SelectMany(one => one.Others).Concat(_held.Select(one => one.Action ?? "")),
        ];
        HashSet<string> barred = [.. _all.Select(one => one.Action)];
        HashSet<string> usable =
        [
            .. _area
                .Clear.Select(one => one.Action)
                .Concat(_area.Waiting.Select(one => one.Action))
                .Concat(_area.NotAdvised.Select(one => one.Action))
                .Concat(_dated)
                .Where(_names.IsTreatment)
                .Select(action => BarredChemical.ActivesOf(_names, action)),
        ];
        HashSet<string> toldOfEntry = [.. _area.KeepOut?.Because ?? []];
        return _all.GroupBy(one => one.Name, StringComparer.Ordinal)
            .Where(uses => !usable.Contains(uses.Key) && !uses.Any(use => answered.Contains(use.Action)))
            .Select(uses => uses.MinBy(use => use.Bars)!)
            .Where(one => !toldOfEntry.Contains(one.Reason.Text));
    }

    private IEnumerable<Group> GroupsIn(BarredChemical[] open) =>
        open.Where(one => one.Tier < (_area.Reading.HasPots ? BarTier.Site : BarTier.Label))
            .Select(one => (Chemical: one, Reach: Reach.Of(_names, _area, one)))
            .Where(one => one.Reach > 0)
            .GroupBy(one => BarSaid.InBrief(one.Chemical.Reason), StringComparer.Ordinal)
            .Select(group =>
                (
                    group.Key,
                    Members: group
                        .OrderByDescending(one => one.Reach)
                        .ThenBy(one => one.Chemical.Name, StringComparer.Ordinal)
                        .ToArray()
                )
            )
            .OrderByDescending(group => group.Members[0].Reach - Penalty(group.Members[0].Chemical.Tier))
            .ThenBy(group => group.Key, StringComparer.Ordinal)
            .Select(group => new Group(
                group.Key,
                [.. Plain([.. group.Members.Select(one => one.Chemical)])],
                group.Members[0].Chemical.Reason.Sources
            ));

    // A mixture of what is named already says nothing new.
    private static IEnumerable<string> Plain(BarredChemical[] chemicals) =>
        chemicals.Where(one => !one.IsMixture || chemicals.All(other => other.IsMixture)).Select(one => one.Name);

    // That a label does not name the crop is said where nothing worse is known.
    private static double Penalty(BarTier tier) =>
        tier switch
        {
            BarTier.Injury or BarTier.Vapour => 0,
            BarTier.WaterAndPeople => 1,
            BarTier.Law => 2,
            _ => 6,
        };

    // A reason of the crop, vapour, water, people or law that holds for nearly all says more than any name.
    private Heap? HeapOf() =>
        _all.SelectMany(one => one.Barred.Because.DistinctBy(reason => reason.Judgement))
            .Where(reason => BarTiers.Of(reason) < BarTier.Label)
            .GroupBy(reason => (reason.Judgement, Text: BarSaid.Of(reason)))
            .Where(group => group.Count() >= NearlyAll * _all.Length)
            .OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key.Judgement, StringComparer.Ordinal)
            .Select(group => new Heap(group.Key.Judgement, group.Key.Text, group.Count(), group.First()))
            .FirstOrDefault();

    private BarredLine LineOf(Heap heap, BarredChemical[] open, HashSet<string> named)
    {
        string[] such =
            BarTiers.Of(heap.Reason) >= BarTier.Law
                ? []
                :
                [
                    .. open.Where(one => one.Barred.Because.Any(reason => reason.Judgement == heap.Judgement))
                        .Select(one => (one.Name, Reach: Reach.Of(_names, _area, one)))
                        .Where(one => one.Reach > 0)
                        .OrderByDescending(one => one.Reach)
                        .ThenBy(one => one.Name, StringComparer.Ordinal)
                        .Take(MostInALine)
                        .Select(one => one.Name),
                ];
        named.UnionWith(such);
        string names = such.Length == 0 ? "" : $", {Listing.And(such)} among them";
        HeldAnswer? told = _held.FirstOrDefault(one => one.Judgement == heap.Judgement);
        string text = told is null
            ? heap.Text
            : $"the reason told of {told.Name}. {BarSaid.AfterTheFirst(heap.Text)}".TrimEnd();
        return new BarredLine($"{Share(heap.Count)}{names}: {text}", heap.Reason.Sources) { IsCounted = true };
    }

    // Where nothing may go on now but something later, what it waits for.
    private BarredLine? NotYet()
    {
        bool isAnyNow = _area
            .Clear.Select(one => one.Action)
            .Concat(_area.Waiting.Select(one => one.Action))
            .Any(_names.IsTreatment);
        return isAnyNow
            ? null
            : _all.Where(one => _dated.Contains(one.Action))
                .Select(one => one.Barred.Deciding[0])
                .Where(reason => _area.KeepOut?.Because.Contains(reason.Text) != true)
                .GroupBy(BarSaid.InBrief)
                .OrderByDescending(group => group.Count())
                .ThenBy(group => group.Key, StringComparer.Ordinal)
                .Select(group => new BarredLine(
                    ToldOf(group.Key) is { } told
                        ? $"{Figures.Count(group.Count(), "other waits", "others wait")} for what is told of {told}."
                        : $"Not yet: {group.Key}",
                    group.First().Sources
                ))
                .FirstOrDefault();
    }

    // Where nobody would reach for any of them, the reason of most.
    private BarredLine Largest()
    {
        var largest = _all.GroupBy(one => (one.Reason.Judgement, Text: BarSaid.Of(one.Reason)))
            .OrderByDescending(group => group.Count())
            .ThenBy(group => group.Key.Judgement, StringComparer.Ordinal)
            .First();
        return new BarredLine($"{Share(largest.Count())}: {largest.Key.Text}", largest.First().Reason.Sources)
        {
            IsCounted = true,
        };
    }

    private string Share(int some) => $"Barred, {Whole(some)} of {Whole(_all.Length)}";

    private static string Whole(int count) => count.ToString(CultureInfo.InvariantCulture);

    private sealed record Heap(string Judgement, string Text, int Count, Reason Reason);

    private sealed record Group(string Text, ImmutableArray<string> Names, ImmutableArray<string> Sources);
}

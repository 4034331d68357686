using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>Lists of weeds and of earlier uses: an item that is still there keeps its lines.</summary>
internal sealed partial class VisitPatch
{
    private void List<T>(
        MappingNode area,
        string key,
        ImmutableArray<T>? before,
        ImmutableArray<T>? after,
        Func<T, string> write,
        Func<T, T, bool> isSame,
        params ReadOnlySpan<string> behind
    )
        where T : class
    {
        if (before.HasValue == after.HasValue && (before ?? []).SequenceEqual(after ?? []))
            return;
        if (after is not { } items)
            _text.Remove(area, key, VisitReader.NotKnown);
        else if (items.IsEmpty)
            _text.Set(area, key, "[]", behind);
        else if (
            before is { IsEmpty: false } old
            && area.Find(key) is SequenceNode { IsFlow: false } list
            && list.Items.Count == old.Length
        )
            Items(list, old, items, write, isSame);
        else
            _text.SetLines(area, key, items.SelectMany(item => Item([write(item)])), behind);
    }

    private void Items<T>(
        SequenceNode list,
        ImmutableArray<T> old,
        ImmutableArray<T> now,
        Func<T, string> write,
        Func<T, T, bool> isSame
    )
        where T : class
    {
        if (Kept.Of(old, now) is not { } kept)
        {
            _text.GiveUp();
            return;
        }

        var wanted = new List<ListItem>();
        int from = 0;
        for (int i = 0; i < now.Length; i++)
        {
            if (kept[i] is { } at)
            {
                wanted.Add(new ListItem(at, null));
                from = at + 1;
                continue;
            }

            // An item that speaks of the same thing takes the place of the old one, so that a comment behind it stays.
            int until = kept.Skip(i).FirstOrDefault(next => next is not null) ?? old.Length;
            int? taken = Enumerable
                .Range(from, until - from)
                .Cast<int?>()
                .FirstOrDefault(one => isSame(old[one!.Value], now[i]));
            wanted.Add(new ListItem(taken, [write(now[i])]));
            from = taken + 1 ?? from;
        }

        _text.Rearrange(list, wanted);
    }

    private static bool IsSameWeed(WeedSeen one, WeedSeen other) => one.Weed == other.Weed && one.Stage == other.Stage;

    private static bool IsSameProduct(PastApplication one, PastApplication other) =>
        one.Treatment == other.Treatment
        && one.Actives.Equals(other.Actives)
        && one.Groups.Equals(other.Groups)
        && one.Kind == other.Kind;

    private static IEnumerable<string> Item(string[] lines) => lines.Select((line, i) => (i == 0 ? "- " : "  ") + line);
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Yaml;

namespace WeedAdvisor.Knowledge.Visits;

/// <summary>
/// Writes an edited visit into the text it was read from: lines that say what they said before stay as they are,
/// whatever their order, style or comments; what changed is written as <see cref="VisitText"/> writes it.
/// </summary>
internal sealed partial class VisitPatch
{
    private static readonly string[] s_odd = ["\u2028", "\u2029"];

    private readonly BlockText _text;
    private readonly Visit _before;
    private readonly Visit _after;

    private VisitPatch(string text, Visit before, Visit after)
    {
        _text = new BlockText(text);
        _before = before;
        _after = after;
    }

    /// <summary>
    /// The changed text; null when it does not stand in lines that could be changed one by one. It has still to be read
    /// again.
    /// </summary>
    /// <param name="text">The text.</param>
    /// <param name="before">The visit that it holds.</param>
    /// <param name="after">The visit that it is to hold.</param>
    public static string? Of(string text, Visit before, Visit after)
    {
        // The parser takes more than line feeds for the end of a line.
        bool isOdd = s_odd.Any(text.Contains) || text.Replace("\r\n", "", StringComparison.Ordinal).Contains('\r');
        if (isOdd || TreeBuilder.Build("", text).Root is not MappingNode { IsFlow: false } root)
            return null;
        var patch = new VisitPatch(text, before, after);
        patch.Root(root);
        return patch._text.Text();
    }

    private void Root(MappingNode root)
    {
        if (_before.Id != _after.Id)
            _text.Set(root, "visit", _after.Id);
        Words(root, "title", _before.Title, _after.Title, "visit", "format");
        if (_before.Date != _after.Date)
            _text.Set(root, "date", Schema.ScalarGrammar.Write(_after.Date));
        Words(root, "nursery", _before.Nursery, _after.Nursery, "date");
        Words(root, "units", WordOf(_before.Units), WordOf(_after.Units), "date", "nursery");
        Answers(
            root,
            question => Change(_before.Head.GetValueOrDefault(question), _after.Head.GetValueOrDefault(question)),
            _before.Head.Keys.Concat(_after.Head.Keys),
            _after.Head,
            "date",
            "nursery",
            "units"
        );
        Areas(root);
        if (
            !_text.IsUntouched
            && (root.Find("format") as ScalarNode)?.Text != Schema.ScalarGrammar.Write(VisitReader.Format)
        )
            _text.Set(root, "format", Schema.ScalarGrammar.Write(VisitReader.Format), "visit");
    }

    private void Words(MappingNode map, string key, string? before, string? after, params ReadOnlySpan<string> behind)
    {
        if (before == after)
            return;
        if (string.IsNullOrWhiteSpace(after))
            _text.Remove(map, key, "");
        else
            _text.Set(map, key, ScalarText.Of(after), behind);
    }

    private static string? WordOf(UnitsWanted? units) => units is { } wanted ? UnitsWords.Of(wanted) : null;

    private void Areas(MappingNode root)
    {
        var list = root.Find("areas") as SequenceNode;
        bool isLines = list is { IsFlow: false } && list.Items.Count == _before.Areas.Length;
        if (!isLines && _before.Areas.SelectMany(Before).SequenceEqual(_after.Areas.SelectMany(After)))
            return;
        if (_after.Areas.IsEmpty)
        {
            if (!_before.Areas.IsEmpty)
                _text.Set(root, "areas", "[]");
            return;
        }

        if (!isLines)
        {
            _text.SetLines(root, "areas", _after.Areas.SelectMany(area => Item(After(area))));
            return;
        }

        ImmutableArray<string> old = [.. _before.Areas.Select(area => area.Id)],
            now = [.. _after.Areas.Select(area => area.Id)];
        if (Kept.Of(old, now) is not { } kept)
        {
            _text.GiveUp();
            return;
        }

        for (int i = 0; i < now.Length; i++)
        {
            if (kept[i] is { } at)
                Area(list!.Items[at], _before.Areas[at], _after.Areas[i]);
        }

        if (!old.SequenceEqual(now))
        {
            _text.Rearrange(
                list!,
                [.. now.Select((_, i) => new ListItem(kept[i], kept[i] is null ? After(_after.Areas[i]) : null))]
            );
        }
    }

    private void Area(Node node, VisitArea before, VisitArea after)
    {
        if (node is not MappingNode { IsFlow: false } map)
        {
            if (!Before(before).SequenceEqual(After(after)))
                _text.Replace(node, After(after));
            return;
        }

        if (VisitText.Name(before) != VisitText.Name(after))
            _text.Set(map, "name", VisitText.Name(after));
        var given = map.Find("answers") as MappingNode;
        Answers(
            map,
            question => OwnChange(question, given?.Find(question) is not null, before, after),
            before.Answers.Keys.Concat(after.Answers.Keys).Concat(_before.Head.Keys).Concat(_after.Head.Keys),
            VisitText.Own(after, _after.Head),
            "id",
            "name"
        );
        List(map, "weeds", before.Weeds, after.Weeds, VisitText.Seen, IsSameWeed, "id", "name", "answers");
        List(map, "past", before.Past, after.Past, VisitText.Past, IsSameProduct, "id", "name", "answers", "weeds");
    }

    private string[] Before(VisitArea area) => VisitText.AreaLines(area, _before.Head);

    private string[] After(VisitArea area) => VisitText.AreaLines(area, _after.Head);

    private static AnswerChange Change(Answer? before, Answer? after) =>
        after is null
            ? before is null
                ? AnswerChange.None
                : AnswerChange.Gone
            : after.Equals(before)
                ? AnswerChange.None
                : new AnswerChange(after);

    // What an area itself has to say of a question, beside what the head says now.
    private AnswerChange OwnChange(string question, bool isGiven, VisitArea before, VisitArea after)
    {
        Answer? head = _after.Head.GetValueOrDefault(question),
            wanted = after.Answers.GetValueOrDefault(question);
        if (wanted is null && head is not (null or Answer.NotKnown))
            wanted = new Answer.NotKnown();
        Answer? said = isGiven ? before.Answers.GetValueOrDefault(question) : null;
        if (wanted is not null && wanted.Equals(said))
            return AnswerChange.None;
        bool isNeeded = wanted is not null && !wanted.Equals(head);
        return isNeeded ? new AnswerChange(wanted)
            : isGiven ? AnswerChange.Gone
            : AnswerChange.None;
    }

    private void Answers(
        MappingNode owner,
        Func<string, AnswerChange> change,
        IEnumerable<string> questions,
        IEnumerable<KeyValuePair<string, Answer>> all,
        params ReadOnlySpan<string> behind
    )
    {
        (string Question, AnswerChange To)[] changes =
        [
            .. questions
                .Distinct(StringComparer.Ordinal)
                .Order(StringComparer.Ordinal)
                .Select(question => (question, change(question)))
                .Where(one => one.Item2 != AnswerChange.None),
        ];
        if (changes.Length == 0)
            return;
        Entry? entry = BlockText.EntryOf(owner, "answers");
        if (entry?.Value is not MappingNode { IsFlow: false } map)
        {
            string[] lines = VisitText.AnswerLines(all);
            if (lines.Length > 0)
                _text.SetLines(owner, "answers", lines, behind);
            else
                _text.Remove(owner, "answers", "{}");
            return;
        }

        bool isEmptied =
            changes.All(one => one.To == AnswerChange.Gone)
            && map.Entries.All(given => changes.Any(one => one.Question == given.Key.Text));
        if (isEmptied)
        {
            _text.Remove(owner, "answers", "{}");
            return;
        }

        foreach ((string question, AnswerChange to) in changes)
        {
            if (to.Answer is null)
                _text.Remove(map, question, VisitReader.NotKnown);
            else if (map.Find(question) is null)
                _text.AddSorted(entry, question, VisitText.Value(to.Answer));
            else
                _text.Set(map, question, VisitText.Value(to.Answer));
        }
    }

    /// <summary>What becomes of the line of an answer.</summary>
    /// <param name="Answer">What it says from now on.</param>
    private sealed record AnswerChange(Answer? Answer)
    {
        /// <summary>It stays as it is.</summary>
        public static AnswerChange None { get; } = new(new Answer.NotKnown()) { IsNone = true };

        /// <summary>It is taken out.</summary>
        public static AnswerChange Gone { get; } = new((Answer?)null);

        /// <summary>Tells no change from a change to not known.</summary>
        public bool IsNone { get; private init; }
    }
}

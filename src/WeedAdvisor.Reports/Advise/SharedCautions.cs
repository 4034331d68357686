using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Text;

namespace WeedAdvisor.Reports.Advise;

/// <summary>
/// Cautions that several clear chemicals of an area have in common, as every spray or every granule has: they are said
/// once, with the chemicals that they belong to, and not again with each.
/// </summary>
internal sealed class SharedCautions
{
    // Two chemicals can say a thing each; from three on it is said for all.
    private const int Several = 3;

    // Of more than so many it is told which do not share it.
    private const int MostNamed = 4;

    private readonly ImmutableArray<Shared> _shared;
    private readonly HashSet<string> _texts;
    private readonly ImmutableArray<string> _chemicals;
    private readonly Names _names;

    private SharedCautions(Names names, ImmutableArray<Shared> shared, ImmutableArray<string> chemicals)
    {
        _names = names;
        _shared = shared;
        _chemicals = chemicals;
        _texts = new HashSet<string>(shared.Select(one => one.Text), StringComparer.Ordinal);
    }

    /// <summary>The cautions that several clear chemicals of an area share.</summary>
    public static SharedCautions Of(Names names, AreaAdvice area)
    {
        ClearAction[] chemicals = [.. area.Clear.Where(action => names.IsTreatment(action.Action))];
        return new SharedCautions(
            names,
            [
                .. chemicals
                    .SelectMany(one => one.Cautions.Select(caution => (one.Action, Text: Wording(names, one, caution))))
                    .Distinct()
                    .GroupBy(one => one.Text, one => one.Action, StringComparer.Ordinal)
                    .Where(group => group.Count() >= Several)
                    .Select(group => new Shared(group.Key, [.. group])),
            ],
            [.. chemicals.Select(one => one.Action)]
        );
    }

    /// <summary>Whether a caution of a clear chemical is said for several.</summary>
    public bool Holds(ClearAction action, ActionCaution caution) =>
        _names.IsTreatment(action.Action) && _texts.Contains(Wording(_names, action, caution));

    /// <summary>The cautions under their heading; nothing where none is shared.</summary>
    public IEnumerable<Block> Blocks()
    {
        if (_shared.IsEmpty)
            yield break;
        yield return Heading.Section("Mind with these chemicals");
        yield return ItemList
            .Dashes(_shared.Select(one => Line.FromString($"{one.Text} ({Whose(one)})") with { Tone = Tone.Warning }))
            .At(2);
    }

    // All chemicals, all sprays or all granules, some of them left out; else their names.
    private string Whose(Shared one)
    {
        (string Kind, string[] Members)[] kinds =
        [
            ("chemicals", [.. _chemicals]),
            ("sprays", [.. _chemicals.Where(id => _names.Treatment(id)?.Form == "spray")]),
            ("granules", [.. _chemicals.Where(id => _names.Treatment(id)?.Form == "granule")]),
        ];
        foreach ((string kind, string[] members) in kinds)
        {
            string[] without = [.. members.Except(one.Actions)];
            if (one.Actions.Any(action => !members.Contains(action)) || without.Length >= one.Actions.Length)
                continue;
            if (without.Length == 0)
                return $"all {kind} above";
            if (one.Actions.Length > MostNamed && without.Length <= MostNamed)
                return $"all {kind} above but {Named(without)}";
        }

        return Named(one.Actions);
    }

    private string Named(IEnumerable<string> actions) => string.Join("; ", actions.Select(_names.Action));

    private static string Wording(Names names, ClearAction action, ActionCaution caution)
    {
        string text = names.OfAny(action.Action, caution.Said);
        return caution.IsCertain ? text : $"If it applies: {text}";
    }

    private sealed record Shared(string Text, ImmutableArray<string> Actions);
}

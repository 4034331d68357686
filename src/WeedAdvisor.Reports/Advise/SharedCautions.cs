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

    private readonly ImmutableArray<Shared> _shared;
    private readonly HashSet<string> _texts;
    private readonly int _chemicals;

    private SharedCautions(ImmutableArray<Shared> shared, int chemicals)
    {
        _shared = shared;
        _chemicals = chemicals;
        _texts = new HashSet<string>(shared.Select(one => one.Said), StringComparer.Ordinal);
    }

    /// <summary>The cautions that several clear chemicals of an area share.</summary>
    public static SharedCautions Of(Names names, AreaAdvice area)
    {
        ClearAction[] chemicals = [.. area.Clear.Where(action => names.IsTreatment(action.Action))];
        return new SharedCautions(
            [
                .. chemicals
                    .SelectMany(action => action.Cautions.Select(caution => (action.Action, Said: Wording(caution))))
                    .Distinct()
                    .GroupBy(one => one.Said, one => one.Action, StringComparer.Ordinal)
                    .Where(group => group.Count() >= Several)
                    .Select(group => new Shared(group.Key, [.. group])),
            ],
            chemicals.Length
        );
    }

    /// <summary>Whether a caution of a clear chemical is said for several.</summary>
    public bool Holds(ActionCaution caution) => _texts.Contains(Wording(caution));

    /// <summary>The cautions under their heading; nothing where none is shared.</summary>
    public IEnumerable<Block> Blocks(Names names)
    {
        if (_shared.IsEmpty)
            yield break;
        yield return Heading.Section("Mind with these chemicals");
        yield return ItemList
            .Dashes(
                _shared.Select(one => Line.FromString($"{one.Said} ({Whose(names, one)})") with { Tone = Tone.Warning })
            )
            .At(2);
    }

    private string Whose(Names names, Shared one) =>
        one.Actions.Length == _chemicals
            ? $"all {_chemicals} chemicals above"
            : string.Join("; ", one.Actions.Select(names.Action));

    private static string Wording(ActionCaution caution) =>
        caution.IsCertain ? Names.UnderItsName(caution.Said) : $"If it applies: {Names.UnderItsName(caution.Said)}";

    private sealed record Shared(string Said, ImmutableArray<string> Actions);
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>
/// What a treatment has from its actives: the worst of them. It may say such a value itself only where it differs, and
/// then by a published source, so that no fact stands twice and no hazard is talked away from memory.
/// </summary>
internal sealed class Inheritance(MappingReader map, ImmutableArray<ActiveIngredient> actives)
{
    /// <summary>From the least vapour to the most; the words of list <c>volatility</c>.</summary>
    private static readonly ImmutableArray<string> s_vapour = ["none", "low", "moderate", "high"];

    private static readonly ImmutableArray<string> s_unpublished = [Origins.FromMemory, "common-practice", "invented"];

    private readonly List<FieldSource> _inherited = [];
    private readonly List<string> _own = [];

    /// <summary>Word of list <c>volatility</c>.</summary>
    public string Volatile() =>
        Worst(
            "volatile",
            active => active.Volatile,
            words => words.MaxBy(word => s_vapour.IndexOf(word))!,
            () => map.OptionalWord("volatile", "list:volatility"),
            word => word
        ) ?? "";

    /// <summary>A flag that one of its actives is enough to set.</summary>
    public bool Flag(string key, Func<ActiveIngredient, bool?> value) =>
        Worst<bool?>(
            key,
            value,
            flags => flags.Any(flag => flag == true),
            () => map.FlagIfKnown(key),
            flag => flag == true ? "true" : "false"
        ) == true;

    /// <summary>The origins of the record with those of what it inherits; reports what is said from memory.</summary>
    public Origins With(Origins own)
    {
        foreach (string key in _own.Where(key => own.Of(key).Any(s_unpublished.Contains)))
            map.Context.Report(
                map.Optional(key)!,
                $"'{key}' other than its actives have it, without a published source",
                "a source of sources.yaml for what differs, or no such key"
            );
        return own.Inheriting([.. _inherited, .. Named()]);
    }

    private T? Worst<T>(
        string key,
        Func<ActiveIngredient, T?> value,
        Func<IEnumerable<T>, T> worst,
        Func<T?> own,
        Func<T, string> text
    )
    {
        bool isSaid = map.Has(key);
        T? said = own();
        // An unknown active has been reported as such.
        if (actives.IsEmpty)
            return said;
        ActiveIngredient[] silent = [.. actives.Where(active => value(active) is null)];
        if (silent.Length > 0)
        {
            if (!isSaid)
                map.Context.Report(
                    map.Node,
                    $"a treatment without '{key}', which '{silent[0].Id}' does not say either",
                    $"the key '{key}', here or at the active"
                );
            return said;
        }

        T given = worst(actives.Select(active => value(active)!));
        if (isSaid && said is not null)
        {
            if (Equals(said, given))
                map.Context.Report(
                    map.Optional(key)!,
                    $"'{key}: {text(said)}', as its actives have it",
                    $"no key '{key}': it is inherited"
                );
            _own.Add(key);
            return said;
        }

        _inherited.Add(
            new FieldSource(
                key,
                [
                    .. actives
                        .Where(active => Equals(value(active), given))
                        .SelectMany(active => active.From.Of(key))
                        .Distinct(StringComparer.Ordinal),
                ]
            )
        );
        return given;
    }

    // Group, older codes and site of each active.
    private IEnumerable<FieldSource> Named()
    {
        string[] sources =
        [
            .. actives
                .SelectMany(active => active.From.Of("group").Concat(active.From.Of("site-of-action")))
                .Distinct(StringComparer.Ordinal),
        ];
        if (sources.Length > 0)
            yield return new FieldSource("actives", [.. sources]);
    }
}

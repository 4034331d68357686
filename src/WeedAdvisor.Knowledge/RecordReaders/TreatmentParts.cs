using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads the lists and maps inside a treatment.</summary>
internal static class TreatmentParts
{
    private const decimal MostProduct = 1_000_000;

    /// <summary>The actives: at least one, by id; and what the treatment has from them.</summary>
    public static (ImmutableArray<Active> Actives, Inheritance Inherited) Actives(
        MappingReader map,
        IReadOnlyDictionary<string, ActiveIngredient> ingredients
    )
    {
        ImmutableArray<string> ids = map.Words("actives", "active-ids", isRequired: true);
        ImmutableArray<decimal> shares = map.Has("shares-percent") ? map.Numbers("shares-percent", 0, 100) : [];
        if (ids.IsEmpty && map.Has("actives"))
            map.Context.Report(map.Node, "a treatment without actives", "at least one active under 'actives'");
        if (!shares.IsEmpty && shares.Length != ids.Length)
            map.Context.Report(
                map.Optional("shares-percent")!,
                $"{shares.Length} shares of {ids.Length} actives",
                "one share for each of the actives, in their order, or none"
            );
        // What is not an active has been reported; without it the worst of them is not known.
        ActiveIngredient[] known = [.. ids.Select(ingredients.GetValueOrDefault).OfType<ActiveIngredient>()];
        return (
            [.. known.Select((active, i) => active.In(shares.Length == ids.Length ? shares[i] : null))],
            new Inheritance(map, known.Length == ids.Length ? [.. known] : [])
        );
    }

    /// <summary>Holds the shares of a premix against its strength: they add up to it.</summary>
    public static void CheckShares(MappingReader map, Treatment treatment)
    {
        if (
            treatment.Actives.All(active => active.Percent is not null)
            && treatment.Strength is { Unit: "percent", Value: var strength }
            && treatment.Actives.Sum(active => active.Percent) is { } sum
            && !treatment.Actives.IsEmpty
            && sum != strength
        )
        {
            map.Context.Report(
                map.Node,
                $"shares of the actives that add up to {ScalarGrammar.Write(sum)} percent",
                $"the strength, {ScalarGrammar.Write(strength)} percent"
            );
        }
    }

    /// <summary>A published rate.</summary>
    public static Rate Rate(MappingReader map)
    {
        var rate = new Rate(
            map.OptionalRange("product-per-area", 0, MostProduct),
            map.OptionalText("unit"),
            map.OptionalRange("ai-lb-per-acre", 0, 1000),
            map.Sources(),
            map.OptionalText("note")
        );
        if (rate.Product is null && rate.AiLbPerAcre is null)
            map.Context.Report(map.Node, "a rate without a figure", "'product-per-area', 'ai-lb-per-acre' or both");
        if (rate.Product is null != rate.Unit is null)
            map.Context.Report(
                map.Node,
                "a product figure and its unit apart",
                "'product-per-area' with 'unit', or neither"
            );
        map.Finish();
        return rate;
    }

    /// <summary>How strong the product kind is, or null.</summary>
    public static Strength? Strength(MappingReader map)
    {
        if (map.OptionalMap("strength", "a strength") is not { } reader)
            return null;
        var strength = new Strength(
            reader.Number("value", 0, 10_000),
            reader.Word("unit", "words:percent|lb-ai-per-gal|g-ai-per-litre")
        );
        if (strength is { Unit: "percent", Value: > 100 })
            map.Context.Report(reader.Node, "a strength above 100 percent", "at most 100 percent");
        reader.Finish();
        return strength;
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads the lists and maps inside a treatment.</summary>
internal static class TreatmentParts
{
    private const decimal MostProduct = 1_000_000;

    /// <summary>The actives: at least one.</summary>
    public static ImmutableArray<Active> Actives(MappingReader map)
    {
        ImmutableArray<Active> actives = map.Each("actives", "an active", Active);
        if (actives.IsEmpty)
            map.Context.Report(map.Node, "a treatment without actives", "at least one active under 'actives'");
        return actives;
    }

    /// <summary>
    /// Holds the shares of a premix against its strength: all or none are given, and they add up to it.
    /// </summary>
    public static void CheckShares(MappingReader map, Treatment treatment)
    {
        int given = treatment.Actives.Count(active => active.Percent is not null);
        if (given == 0)
            return;
        if (given < treatment.Actives.Length)
            map.Context.Report(
                map.Node,
                "a premix with a share of some actives only",
                "'percent' for every active, or for none"
            );
        else if (
            treatment.Strength is { Unit: "percent", Value: var strength }
            && treatment.Actives.Sum(active => active.Percent) is { } sum
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

    private static Active Active(MappingReader map)
    {
        var active = new Active(
            map.Text("name"),
            map.OptionalText("group"),
            map.OptionalWord("site-of-action", "list:site-of-action"),
            map.OptionalText("was"),
            map.OptionalNumber("percent", 0, 100)
        );
        map.Finish();
        return active;
    }
}

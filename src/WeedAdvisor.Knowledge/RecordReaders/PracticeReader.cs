using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;

namespace WeedAdvisor.Knowledge.RecordReaders;

/// <summary>Reads practices.</summary>
internal static class PracticeReader
{
    private const string Grounds = "list:ground";

    /// <summary>A practice.</summary>
    public static Practice Read(MappingReader map) =>
        new()
        {
            Id = map.Id(),
            Name = ActionParts.Name(map),
            Brief = map.OptionalText("brief"),
            What = map.Text("what"),
            Wordings = Wordings(map),
            When = map.Word("when", "list:when"),
            Possible = map.Word("possible", "list:possible"),
            OneOf = map.OptionalWord("one-of", "list:one-of"),
            Kind = map.Word("kind", "list:practice-kind"),
            Tags = map.OptionalWordSet("tags", "list:practice-tag"),
            Places = map.WordSet("places", "answers:place"),
            StockStages = ActionParts.StockStages(map),
            NeedsEquipment = map.WordSet("needs-equipment", "answers:equipment"),
            WorksOn = map.Word("works-on", "list:works-on"),
            EnclosedOk = map.Flag("enclosed-ok"),
            Entry = map.OptionalWord("entry", "words:worker|elsewhere|handlers") switch
            {
                "elsewhere" => EntryNeed.Elsewhere,
                "handlers" => EntryNeed.Handlers,
                _ => EntryNeed.Worker,
            },
            Cost = ActionParts.Cost(map, hasTool: false),
            CostOnGrounds = map.Each("cost-on", "the cost on a ground", CostOn),
            Cautions = map.Texts("cautions"),
            Effects = map.Each("effects", "an effect", Effect),
            NotWhere = map.Texts("not-where"),
            Where = map.Where,
            From = map.FinishWithOrigins(ValueFields.Practice),
        };

    // Where no vocabulary declares the grounds, every key is one too many.
    private static ImmutableArray<WhatOnGround> Wordings(MappingReader map)
    {
        if (map.OptionalMap("what-on", "what to do on a ground") is not { } wordings)
            return [];
        ImmutableArray<WhatOnGround> read =
        [
            .. (map.Context.Lexicon.Of(Grounds)?.All ?? [])
                .Order(StringComparer.Ordinal)
                .Select(ground => (Ground: ground, What: wordings.OptionalText(ground)))
                .Where(one => one.What is not null)
                .Select(one => new WhatOnGround(one.Ground, one.What!)),
        ];
        wordings.Finish();
        return read;
    }

    private static CostOnGround CostOn(MappingReader map)
    {
        var cost = new CostOnGround(map.Word("on", Grounds), ActionParts.Drivers(map));
        map.Finish();
        return cost;
    }

    private static PublishedEffect Effect(MappingReader map)
    {
        var effect = new PublishedEffect(
            map.Word("on", "targets-or-all"),
            map.Range("reduction-percent", 0, 100),
            map.Sources(),
            map.OptionalText("note")
        );
        map.Finish();
        return effect;
    }
}

using System.Collections.Immutable;
using System.Reflection;
using System.Text.RegularExpressions;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Schema;
using WeedAdvisor.Knowledge.Tests.Support;
using Record = WeedAdvisor.Knowledge.Records.Record;

namespace WeedAdvisor.Knowledge.Tests;

/// <summary>Where the values of a record come from, once it is read.</summary>
public sealed partial class OriginTests
{
    // Where a property is called otherwise than its field, and what no file spells: worked out, or of all records.
    private static readonly Dictionary<string, string> s_spelt = new(StringComparer.Ordinal)
    {
        [nameof(Weed.IsUnnamed)] = "unnamed",
        ["Parents"] = "is-a",
        ["KgAiHaPerYear"] = "yearly-limit-kg-ai-ha",
        ["IsCalendarYear"] = "per",
        ["IsUnlimited"] = "unlimited",
        ["BorrowsMonths"] = "months-of",
        ["Wordings"] = "what-on",
        ["CostOnGrounds"] = "cost-on",
    };

    private static readonly string[] s_ofAllRecords = ["From", "Sources", "Memory", "Where", "EqualityContract"];
    private static readonly string[] s_workedOut =
    [
        "Treatment.Form",
        "Treatment.Label",
        "Treatment.WithdrawnIn",
        "Crop.IsA",
    ];

    [Fact]
    public void Every_field_of_every_kind_of_record_is_a_value_a_list_of_rows_or_words_of_ours()
    {
        foreach ((Type type, ValueFields fields) in ValueFields.ByRecord)
        {
            string[] told = [.. fields.Values, .. fields.Rows, .. fields.Words];
            Assert.Equal(told.Length, told.Distinct().Count());
            foreach (PropertyInfo property in type.GetProperties(BindingFlags.Public | BindingFlags.Instance))
            {
                if (s_ofAllRecords.Contains(property.Name) || s_workedOut.Contains($"{type.Name}.{property.Name}"))
                    continue;
                Assert.Contains(s_spelt.GetValueOrDefault(property.Name, Kebab(property.Name)), told);
            }
        }
    }

    [Fact]
    public void Every_kind_of_record_is_in_the_table_or_one_sentence()
    {
        Type[] sentences = [typeof(Question), typeof(FindingText), typeof(ScaleStep)];
        Assert.Equal(
            typeof(Record)
                .Assembly.GetTypes()
                .Where(type => type.IsSubclassOf(typeof(Record)) && !type.IsAbstract)
                .Except(sentences)
                .OrderBy(type => type.Name, StringComparer.Ordinal),
            ValueFields.ByRecord.Select(row => row.Key).OrderBy(type => type.Name, StringComparer.Ordinal)
        );
    }

    [Fact]
    public void A_record_tells_the_sources_of_each_value_and_rests_on_all_of_them()
    {
        KnowledgeBase knowledge = new FixtureKnowledge().Load().Value!;
        Weed weed = knowledge.Weeds["liverwort"];
        Assert.Equal(["memory"], weed.From.Of("spread-distance-m"));
        Assert.Equal(["book"], weed.From.Of("underground"));
        Assert.Empty(weed.From.Of("seed-life-years"));
        Assert.Equal(["spread-distance-m"], weed.Memory);
        Assert.Equal(["book"], weed.Sources);
        Treatment treatment = knowledge.Treatments["oxadine-granules"];
        Assert.Equal(["book"], treatment.From.Of("rei-hours"));
        Assert.Equal(["book", "leaflet"], treatment.From.Of("ratings"));
        Assert.Equal(["book"], treatment.Sources);
    }

    [Fact]
    public void A_row_from_memory_marks_its_field()
    {
        Practice practice = new FixtureKnowledge().Load().Value!.Practices["let-it-dry"];
        Assert.Equal(["effects"], practice.Memory);
    }

    [Fact]
    public void A_record_wholly_from_memory_rests_on_memory()
    {
        var from = new Origins([new FieldSource("traits", ["memory"])], []);
        Assert.Equal(["memory"], from.Sources);
        Assert.Equal(["traits"], from.Memory);
    }

    private static string Kebab(string name) =>
        Humps().Replace(name, match => "-" + match.Value).TrimStart('-').ToLowerInvariant();

    [GeneratedRegex("[A-Z]")]
    private static partial Regex Humps();
}

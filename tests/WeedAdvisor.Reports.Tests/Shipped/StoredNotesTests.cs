using System.Text.RegularExpressions;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Reports.Tests.Samples;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Shipped;

/// <summary>
/// What the records note is said where it applies, and nothing is noted that no worked visit says. The oracle takes the
/// notes from the records and looks for them in finished text.
/// </summary>
public sealed partial class StoredNotesTests
{
    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    private static readonly Lazy<(AreaAdvice Advice, string Full)[]> s_areas = new(() =>
        [
            .. ShippedRules.WorkedAdvice.SelectMany(advice =>
                advice.Areas.Select(area =>
                    (
                        area,
                        OneLine(
                            TextReport.Of(
                                new VisitAdvice(s_knowledge.Stamp, advice.Visit with { Areas = [area.Area] }, [area]),
                                s_knowledge,
                                new TextLayout(Full: true)
                            )
                        )
                    )
                )
            ),
        ]
    );

    [Fact]
    public void Every_note_on_a_weed_is_said_where_it_stands_and_by_some_visit()
    {
        HashSet<string> said = new(StringComparer.Ordinal);
        foreach ((AreaAdvice advice, string full) in s_areas.Value)
        {
            foreach (string weed in (advice.Area.Weeds ?? []).Select(seen => seen.Weed).Distinct())
            {
                if (!s_knowledge.Weeds.TryGetValue(weed, out Weed? record))
                    continue;
                Assert.All(record.Control, note =>
                    Assert.Contains(Words(note), full, StringComparison.OrdinalIgnoreCase)
                );
                said.Add(weed);
            }
        }

        Assert.Empty(
            s_knowledge.Weeds.Values.Where(weed => weed.Control.Length > 0).Select(weed => weed.Id).Except(said)
        );
    }

    [Fact]
    public void Every_note_on_a_crop_is_said_where_it_stands_and_by_some_visit()
    {
        HashSet<string> said = new(StringComparer.Ordinal);
        foreach ((AreaAdvice advice, string full) in s_areas.Value)
        {
            foreach (string crop in advice.Reading.Crops)
            {
                foreach (string kind in s_knowledge.Crops[crop].IsA.Append(crop).Distinct())
                {
                    if (!s_knowledge.Crops.TryGetValue(kind, out Crop? record))
                        continue;
                    Assert.All(record.Notes, note =>
                        Assert.Contains(Words(note), full, StringComparison.OrdinalIgnoreCase)
                    );
                    said.Add(kind);
                }
            }
        }

        Assert.Empty(
            s_knowledge.Crops.Values.Where(crop => crop.Notes.Length > 0).Select(crop => crop.Id).Except(said)
        );
    }

    [Fact]
    public void Every_place_where_a_practice_does_not_help_is_said_with_it_and_by_some_visit()
    {
        HashSet<string> said = new(StringComparer.Ordinal);
        foreach ((AreaAdvice advice, string full) in s_areas.Value)
        {
            foreach (ClearAction clear in advice.Clear)
            {
                if (!s_knowledge.Practices.TryGetValue(clear.Action, out Practice? practice))
                    continue;
                Assert.All(practice.NotWhere, note =>
                    Assert.Contains("not where: " + Words(note), full, StringComparison.OrdinalIgnoreCase)
                );
                said.Add(clear.Action);
            }
        }

        Assert.Empty(
            s_knowledge.Practices.Values.Where(one => one.NotWhere.Length > 0).Select(one => one.Id).Except(said)
        );
    }

    [Fact]
    public void What_several_chemicals_have_to_mind_is_said_once_and_none_of_it_is_lost()
    {
        int shared = 0;
        foreach ((AreaAdvice advice, string full) in s_areas.Value)
        {
            (string Own, string OfAny)[] cautions =
            [
                .. advice
                    .Clear.Where(one => s_knowledge.Treatments.ContainsKey(one.Action))
                    .SelectMany(one =>
                        one.Cautions.Where(caution => caution.IsCertain)
                            .Select(caution => (Own(caution), OfAny(caution)))
                            .Distinct()
                    ),
            ];
            foreach (var alike in cautions.GroupBy(one => one.OfAny))
            {
                bool isShared = alike.Count() >= 3;
                Assert.All(alike, one =>
                    Assert.Contains(isShared ? one.OfAny : "mind: " + one.Own, full, StringComparison.OrdinalIgnoreCase)
                );
                // One that is the beginning of another cannot be told from it in finished text.
                if (!isShared || cautions.Any(one => IsBeginningOf(alike.Key, one.OfAny)))
                    continue;
                shared++;
                Assert.All(alike, one =>
                    Assert.DoesNotContain("mind: " + one.Own, full, StringComparison.OrdinalIgnoreCase)
                );
            }
        }

        Assert.True(shared > 50, $"only {shared} cautions were shared");
    }

    [GeneratedRegex("\\s+")]
    private static partial Regex Blanks();

    private static string Own(ActionCaution caution) => Words(caution.Said.UnderItsName);

    private static string OfAny(ActionCaution caution) => Words(caution.Said.Of("this chemical"));

    private static bool IsBeginningOf(string text, string other) =>
        text != other && other.StartsWith(text, StringComparison.Ordinal);

    private static string Words(string text) => OneLine(text).Trim();

    private static string OneLine(string text) => Blanks().Replace(text, " ");
}

using System.Text.Json;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Tests.Samples;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Shipped;

/// <summary>
/// What holds of the answers on chemicals that somebody has or asks about, over areas drawn at random. The oracle reads
/// the finished texts, the JSON and the advice.
/// </summary>
public sealed class HeldLawTests
{
    private const string Heading = "CHEMICALS YOU HAVE, OR ASK ABOUT";

    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;

    [Fact]
    public void Every_chemical_in_hand_is_answered_on_the_page_in_the_full_report_and_in_json() =>
        OnDrawn(advice =>
        {
            string page = Section(Text(advice, full: false));
            string full = Section(Text(advice, full: true));
            JsonElement[] held = Held(advice);
            foreach (string word in advice.Reading.InHand)
            {
                JsonElement one = Assert.Single(held, held => held.GetProperty("word").GetString() == word);
                string name = one.GetProperty("name").GetString()!;
                Assert.Contains(name, page, StringComparison.Ordinal);
                Assert.Contains(name, full, StringComparison.Ordinal);
            }
        });

    [Fact]
    public void A_chemical_in_hand_is_answered_yes_only_where_the_advice_clears_it() =>
        OnDrawn(advice =>
        {
            foreach (JsonElement one in Held(advice))
            {
                string answer = one.GetProperty("answer").GetString()!;
                string? action = one.GetProperty("action").GetString();
                if (action is null)
                    Assert.Contains(answer, (string[])["not-held", "withdrawn"]);
                else
                    Assert.Equal(ActionStatuses.Word(advice.StatusOf(action)), answer);
                Assert.Equal(
                    answer is "clear" or "clear-unless",
                    one.GetProperty("text").GetString()!.StartsWith("Yes", StringComparison.Ordinal)
                );
            }
        });

    [Fact]
    public void What_one_may_use_stands_with_its_label_or_with_the_work_that_tells_it() =>
        OnDrawn(advice =>
        {
            string section = Section(Text(advice, full: false));
            foreach (
                JsonElement one in Held(advice)
                    .Where(one => one.GetProperty("answer").GetString() is "clear" or "clear-unless")
            )
            {
                string name = one.GetProperty("name").GetString()!;
                string[] after = section.Split($"{name}: yes");
                bool isTold =
                    after.Length > 1
                    && (
                        after[1].StartsWith(", see ", StringComparison.Ordinal)
                        || after[1].Contains("label first: ", StringComparison.Ordinal)
                    );
                Assert.True(
                    isTold
                        || section.Contains("read its label first", StringComparison.Ordinal)
                        || section.Contains("yes, unless an answer", StringComparison.Ordinal),
                    section
                );
            }
        });

    [Fact]
    public void What_lies_in_the_store_changes_no_advice() =>
        OnDrawn(advice =>
        {
            AreaAdvice without = Advise(advice.Area with { Answers = advice.Area.Answers.Remove("in-hand") });
            Assert.Equal(Standing(without), Standing(advice));
        });

    private static string[] Standing(AreaAdvice advice) =>
        [.. s_knowledge.Treatments.Keys.Concat(s_knowledge.Practices.Keys).Select(id => $"{id} {advice.StatusOf(id)}")];

    private static void OnDrawn(Action<AreaAdvice> holds) =>
        DrawnAdvice.OfCases.Sample((_, drawn) => holds(Advise(Stocked(drawn.Area))), Sizes.Of(few: 25, many: 1_000));

    // A store of eight: what the drawn area has itself, a mixture, what was withdrawn, and what nobody knows.
    private static VisitArea Stocked(VisitArea area)
    {
        string[] own = area.Answers.GetValueOrDefault("in-hand") is Answer.Words words ? [.. words.Value] : [];
        string[] stock =
        [
            "vinegar",
            "glyphosate",
            "oxadiazon",
            "dcpa",
            "isoxaben-trifluralin",
            "some-old-can",
            "2-4-d",
        ];
        return area with
        {
            Answers = area.Answers.SetItem("in-hand", new Answer.Words(WordSet.Of([.. own, .. stock]))),
        };
    }

    private static AreaAdvice Advise(VisitArea area) => ShippedRules.Advisor.Advise(VisitOf(area)).Areas[0];

    private static Visit VisitOf(VisitArea area) => ShippedRules.Demo with { Date = RandomVisits.Day, Areas = [area] };

    private static VisitAdvice Alone(AreaAdvice advice) => new(s_knowledge.Stamp, VisitOf(advice.Area), [advice]);

    private static string Text(AreaAdvice advice, bool full) =>
        TextReport.Of(Alone(advice), s_knowledge, new TextLayout(Full: full));

    private static JsonElement[] Held(AreaAdvice advice)
    {
        using var json = JsonDocument.Parse(JsonReport.Of(Alone(advice), s_knowledge));
        return [.. json.RootElement.GetProperty("areas")[0].GetProperty("inHand").Clone().EnumerateArray()];
    }

    private static string Section(string text)
    {
        string[] lines = text.Split('\n');
        int at = Array.IndexOf(lines, Heading);
        return at < 0
            ? ""
            : string.Join(' ', lines.Skip(at).TakeWhile(line => line.Length > 0).Select(line => line.Trim()));
    }
}

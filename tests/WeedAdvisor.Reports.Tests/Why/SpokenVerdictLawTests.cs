using System.Collections.Immutable;
using System.Text.Json;
using System.Text.RegularExpressions;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Why;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Why;

/// <summary>The verdict that is read aloud says what the advice says, whatever the visit.</summary>
public sealed class SpokenVerdictLawTests
{
    private const int Wide = 240;
    private const int MostCautions = 5;

    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly CatalogueAction[] s_actions =
    [
        .. s_knowledge.Practices.Values.Cast<CatalogueAction>().Concat(s_knowledge.Treatments.Values),
    ];

    [Fact]
    public void It_begins_with_the_full_name_and_the_answer_of_its_status() =>
        Each(
            (area, action, json, _) =>
            {
                string spoken = json.GetProperty("spoken").GetString()!;
                Assert.StartsWith(
                    $"{action.Name}? {Answer(area.StatusOf(action.Id))}",
                    spoken,
                    StringComparison.Ordinal
                );
                Assert.DoesNotContain('{', spoken);
                Assert.DoesNotContain("  ", spoken, StringComparison.Ordinal);
                Assert.Matches("[.?]$", spoken);
            }
        );

    [Fact]
    public void What_it_names_instead_is_clear_and_of_the_same_job_where_anything_clear_is() =>
        Each(
            (area, action, json, text) =>
            {
                if (json.GetProperty("instead").GetString() is not { } instead)
                    return;
                ClearAction named = area.Clear.Single(one => one.Action == instead);
                Assert.Equal(ActionStatus.Clear, named.Status);
                Assert.NotEqual(action.Id, instead);
                Assert.DoesNotContain(area.Clear, one =>
                    one.Action == action.Id && one is { LacksTool: false, NotToday.IsEmpty: true }
                );
                Assert.False(named.LacksTool);
                Assert.Empty(named.NotToday);
                if (
                    Works.JobOf(action) is { } job
                    && area.Clear.Any(one =>
                        one.OneOf == job
                        && one is { Status: ActionStatus.Clear, LacksTool: false, NotToday.IsEmpty: true }
                        && one.Horizon != Horizon.Habit
                    )
                )
                    Assert.Equal(job, named.OneOf);
                if (s_knowledge.Treatments.ContainsKey(instead))
                    Assert.Contains(Safety.StandingLines[0], text, StringComparison.Ordinal);
            }
        );

    [Fact]
    public void What_protects_people_stands_on_the_first_page_and_no_more_than_five_others()
    {
        int looked = 0;
        Each(
            (area, action, _, text) =>
            {
                if (area.Clear.FirstOrDefault(one => one.Action == action.Id) is not { Cautions: var cautions })
                    return;
                string[] told = Minding(text);
                int people = cautions.Count(caution => caution is { IsCertain: true, ProtectsPeople: true });
                Assert.InRange(told.Length, 0, Math.Max(people, MostCautions));
                Assert.All(told.Take(people), line =>
                    Assert.Contains(cautions, caution => caution.ProtectsPeople && Says(line, caution))
                );
                // None of what holds for sure is left out while there is room.
                if (told.Length < MostCautions)
                    Assert.Equal(cautions.Count(caution => caution.IsCertain), told.Length);
                looked += told.Length;
            }
        );
        Assert.True(looked > 20, $"only {looked} cautions were looked at");
    }

    private static string Answer(ActionStatus status) =>
        status switch
        {
            ActionStatus.Clear or ActionStatus.ClearUnless => "Yes",
            ActionStatus.NotYet => "Not yet",
            ActionStatus.NotThisWay => "Not this way",
            ActionStatus.Waits => "Not before",
            _ => "No,",
        };

    // The words of the caution, with some name where it names its action.
    private static bool Says(string line, ActionCaution caution) =>
        Regex.IsMatch(
            line,
            $"^{string.Join(".+", caution.Said.Of("\n").Split('\n').Select(Regex.Escape))}$",
            RegexOptions.IgnoreCase
        );

    private static string[] Minding(string text)
    {
        const string heading = "WHAT TO MIND WITH IT\n";
        int from = text.IndexOf(heading, StringComparison.Ordinal);
        return from < 0
            ? []
            :
            [
                .. Regex
                    .Replace(text[(from + heading.Length)..], "\n    (?=\\S)", " ")
                    .Split('\n')
                    .TakeWhile(line => line.StartsWith("  - ", StringComparison.Ordinal))
                    .Select(line => line[4..]),
            ];
    }

    private static void Each(Action<AreaAdvice, CatalogueAction, JsonElement, string> holds) =>
        Gen.Select(new RandomVisits(s_knowledge).Case, Gen.Int[0, s_actions.Length - 1].Array[8])
            .Sample(
                (looked, which) =>
                {
                    var visit = new Visit("drawn", null, looked.Date, null, [looked.Area])
                    {
                        Elsewhere = looked.Others,
                    };
                    VisitAdvice advice = ShippedRules.Advisor.Advise(visit);
                    // One in two is clear, where anything is: few of all are.
                    ImmutableArray<ClearAction> clear = advice.Areas[0].Clear;
                    IEnumerable<CatalogueAction> drawn = which.Select(at =>
                        at % 2 == 0 && !clear.IsEmpty
                            ? s_knowledge.ActionOf(clear[at % clear.Length].Action)!
                            : s_actions[at]
                    );
                    foreach (CatalogueAction action in drawn.Distinct())
                    {
                        using var json = JsonDocument.Parse(WhyJson.Of(advice, action, s_knowledge));
                        holds(
                            advice.Areas[0],
                            action,
                            json.RootElement.GetProperty("areas")[0],
                            DocumentText.Of(WhyDocument.Of(advice, action, s_knowledge), Wide)
                        );
                    }
                },
                iter: Sizes.Of(50, 1000),
                threads: 1
            );
}

using System.Text.RegularExpressions;
using CsCheck;
using WeedAdvisor.Golden;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Tests.Samples;
using WeedAdvisor.Reports.Text;
using WeedAdvisor.World;

namespace WeedAdvisor.Reports.Tests.Shipped;

/// <summary>
/// What holds for the page of an area, over all worked visits and areas drawn at random. The oracle reads finished text
/// and the advice; it shares no code with what writes the page.
/// </summary>
public sealed partial class PageLawTests
{
    private const int Lines = 40;
    private const int RoomForNeverCut = 15;
    private const int RoomUsed = 28;

    private static readonly KnowledgeBase s_knowledge = ShippedRules.Knowledge;
    private static readonly Names s_names = new(ShippedRules.Knowledge);

    [Fact]
    public void A_page_has_at_most_40_lines_but_for_what_is_never_cut() =>
        OnEveryPage(
            (advice, page) =>
            {
                int lines = page.Split('\n').Length - 1;
                int neverCut =
                    LinesOf(page, "label first: ")
                    + LinesUnder(page, "KEEP OUT")
                    + LinesUnder(page, "FIRST OF ALL")
                    + LinesUnder(page, "CHEMICALS YOU HAVE")
                    + LinesUnder(page, "BEFORE ANYBODY")
                    + LinesUnder(page, "MIND WITH THESE")
                    // Answers that contradict each other are told in two lines or three.
                    + (advice.Gaps.Count(gap => gap.Kind == GapKind.Contradiction) * 3);
                Assert.True(
                    lines <= Lines + Math.Max(0, neverCut - RoomForNeverCut),
                    $"{lines} lines, {neverCut} of them never cut:\n{page}"
                );
            }
        );

    [Fact]
    public void A_page_never_repeats_an_action_a_caution_or_a_reason() =>
        OnEveryPage(
            (_, page) =>
            {
                string[] said =
                [
                    .. Joined(page)
                        .Where(line =>
                            line.StartsWith("why: ", StringComparison.Ordinal)
                            || line.StartsWith("mind: ", StringComparison.Ordinal)
                        ),
                ];
                Assert.Equal(said.Distinct(), said);
                string[] actions =
                [
                    .. Joined(page)
                        .Select(line => NumberedLine().Match(line))
                        .Where(match => match.Success)
                        .Select(match => match.Groups[1].Value),
                ];
                Assert.True(actions.Distinct().SequenceEqual(actions), page);
            }
        );

    [Fact]
    public void What_is_due_today_and_the_step_of_the_weed_that_covers_most_stand_open_and_not_under_more()
    {
        int looked = 0;
        OnEveryPage(
            (advice, page) =>
            {
                string[] open =
                [
                    .. Joined(page)
                        .Select(line => NumberedLine().Match(line))
                        .Where(match => match.Success)
                        .Select(match => match.Groups[1].Value),
                ];
                ClearAction[] byHand =
                [
                    .. advice
                        .Clear.DistinctBy(one => one.Rank)
                        .Where(one => one.Horizon <= Horizon.ThisWeek && s_knowledge.Practices.ContainsKey(one.Action))
                        .Take(10),
                ];
                string? own = byHand.FirstOrDefault(one => one.IsOwnStep)?.Action;
                foreach (ClearAction one in byHand)
                {
                    if (one.Action != own && (one.Horizon != Horizon.Today || one.LacksTool))
                        continue;
                    looked++;
                    string name = s_knowledge.Practices[one.Action].Name;
                    Assert.True(open.Any(line => line.StartsWith(name, StringComparison.Ordinal)), $"{name}:\n{page}");
                }
            }
        );
        Assert.True(looked > 100, $"only {looked} lines showed it");
    }

    [Fact]
    public void A_page_speaks_no_ids_and_sends_nobody_to_a_command_for_each_thing() =>
        OnEveryPage(
            (_, page) =>
            {
                Assert.DoesNotContain("clear unless", page, StringComparison.Ordinal);
                Assert.DoesNotContain("(ask: ", page, StringComparison.Ordinal);
                Assert.DoesNotContain("'why VISIT", page, StringComparison.Ordinal);
                Assert.DoesNotContain("no figure is published", page, StringComparison.Ordinal);
                foreach (Question question in s_knowledge.Questions.Where(one => one.Id.Contains('-')))
                    Assert.DoesNotContain($"({question.Id})", page, StringComparison.Ordinal);
            }
        );

    [Fact]
    public void A_page_that_leaves_work_to_a_list_of_names_has_used_its_room() =>
        OnEveryPage(
            (_, page) =>
            {
                int lines = page.Split('\n').Length - 1;
                if (page.Contains("\n  More: ", StringComparison.Ordinal))
                    Assert.True(lines >= RoomUsed, $"{lines} lines:\n{page}");
            }
        );

    [Fact]
    public void Every_page_says_how_it_stands_with_chemicals() =>
        OnEveryPage(
            (advice, page) =>
            {
                bool isAny =
                    advice.Clear.Any(one => s_knowledge.Treatments.ContainsKey(one.Action))
                    || advice.Waiting.Any(one => s_knowledge.Treatments.ContainsKey(one.Action));
                if (!isAny)
                    Assert.Contains("no chemical may be used here now", page, StringComparison.OrdinalIgnoreCase);
                else if (
                    !page.Contains("label first: ", StringComparison.Ordinal)
                    && !page.Contains("\nCHEMICALS YOU HAVE", StringComparison.Ordinal)
                    && !page.Contains("\nMIND WITH THESE CHEMICALS", StringComparison.Ordinal)
                )
                    Assert.True(page.Contains("\nCHEMICALS\n", StringComparison.Ordinal), page);
            }
        );

    [Fact]
    public void Who_must_keep_out_and_until_when_stands_on_the_page_as_in_the_full_report() =>
        OnEveryPage(
            (advice, page) =>
            {
                if (advice.KeepOut is null)
                    return;
                string full = TextReport.Of(PageOfArea.Alone(advice), s_knowledge, new TextLayout(Full: true));
                Assert.Equal(Why(full), Why(page));
            }
        );

    [Fact]
    public void What_the_grower_used_or_holds_and_may_not_use_stands_on_the_page() =>
        OnEveryPage(
            (advice, page) =>
            {
                IEnumerable<string> used = (advice.Area.Past ?? []).Select(past => past.Treatment).OfType<string>();
                string held = string.Join(' ', Under(page, "CHEMICALS YOU HAVE").Select(line => line.Trim()));
                foreach (BarredAction barred in advice.Barred.Where(one => used.Contains(one.Action)))
                {
                    // Who has the same active in hand is answered once, by the active.
                    Treatment record = s_knowledge.Treatments[barred.Action];
                    bool isAnswered =
                        held.Contains(record.Name, StringComparison.Ordinal)
                        || (
                            record.Actives is [var only] && held.Contains(only.Name, StringComparison.OrdinalIgnoreCase)
                        );
                    Assert.True(isAnswered, $"{record.Name}: {held}");
                }
            }
        );

    [Fact]
    public void What_decides_over_a_chemical_that_the_page_says_yes_to_stands_on_it()
    {
        int looked = 0;
        OnEveryPage(
            (advice, page) =>
            {
                string words = Words(page);
                foreach (ClearAction clear in advice.Clear.Where(one => s_knowledge.Treatments.ContainsKey(one.Action)))
                {
                    string name = s_knowledge.Treatments[clear.Action].Name;
                    if (!words.Contains(Words($"- {name}: yes"), StringComparison.Ordinal) && !IsNumbered(page, name))
                        continue;
                    foreach (ActionCaution caution in clear.Cautions.Where(one => one.IsCertain))
                    {
                        if (!caution.ProtectsPeople && !caution.GoesWithItsName)
                            continue;
                        looked++;
                        string[] ways = [Names.UnderItsName(caution.Said), s_names.OfAny(clear.Action, caution.Said)];
                        Assert.True(
                            ways.Any(way => words.Contains(Words(way), StringComparison.Ordinal)),
                            $"{name}: {caution.Text}\n{page}"
                        );
                    }
                }
            }
        );
        Assert.True(looked > 50, $"only {looked} cautions were looked at");
    }

    private static bool IsNumbered(string page, string name) =>
        Joined(page)
            .Select(line => NumberedLine().Match(line))
            .Any(match => match.Success && match.Groups[1].Value.StartsWith(name, StringComparison.Ordinal));

    [Fact]
    public void What_keeps_somebody_from_being_hurt_stands_on_the_page_word_for_word() =>
        OnEveryPage(
            (advice, page) =>
            {
                string words = Words(page);
                foreach (AreaCaution caution in advice.Cautions.Where(one => one.IsCertain))
                {
                    if (caution.Because.Then is Consequence.Caution { ProtectsPeople: true })
                        Assert.Contains(Words(Figures.Sentence(caution.Text)), words, StringComparison.Ordinal);
                }
            }
        );

    [Fact]
    public void Costs_stand_there_only_where_the_pots_are_told_and_say_that_they_are_invented()
    {
        // Where no chemical is named there is room for costs.
        VisitArea untold = ShippedRules.Visit("container-yard-with-spurge").Areas[0].With("organic", "yes");
        VisitArea told = untold.With("pots", 1200m).With("pot-width", 16m).With("spacing", "spaced");
        Assert.DoesNotContain("; about $", TextOf(untold.Without("pots")), StringComparison.Ordinal);
        string text = TextOf(told);
        Assert.Contains("; about $", text, StringComparison.Ordinal);
        Assert.Contains("Costs rest on invented figures.", text, StringComparison.Ordinal);

        static string TextOf(VisitArea area) =>
            TextReport.Of(
                ShippedRules.Advisor.Advise(ShippedRules.Demo with { Areas = [area] }),
                s_knowledge,
                new TextLayout()
            );
    }

    [Fact]
    public void A_chemical_told_with_its_reason_is_told_with_its_equipment_and_its_entry_interval() =>
        OnEveryPage(
            (advice, page) =>
            {
                string[] lines = page.Split('\n');
                foreach (ClearAction clear in advice.Clear)
                {
                    if (!s_knowledge.Treatments.TryGetValue(clear.Action, out Treatment? treatment))
                        continue;
                    int at = Array.FindIndex(lines, line => IsHeadOf(line, treatment.Name));
                    string[] below =
                    [
                        .. lines.Skip(at + 1).TakeWhile(line => line.StartsWith("     ", StringComparison.Ordinal)),
                    ];
                    if (at < 0 || !below.Any(line => line.Contains("why: ", StringComparison.Ordinal)))
                        continue;
                    string told = string.Join(' ', below.Select(line => line.Trim()));
                    Assert.Contains("label first: ", told, StringComparison.Ordinal);
                    Assert.Contains("restricted entry: ", told, StringComparison.Ordinal);
                    Assert.Contains("protective equipment: ", told, StringComparison.Ordinal);
                }
            }
        );

    [GeneratedRegex("^[0-9]{1,2}\\. (.*)$")]
    private static partial Regex NumberedLine();

    private static string Words(string text) => Blanks().Replace(text, " ").Trim();

    [GeneratedRegex("[ \\n]+")]
    private static partial Regex Blanks();

    private static bool IsHeadOf(string line, string name) =>
        line.TrimStart() is { Length: > 0 } text
        && char.IsAsciiDigit(text[0])
        && text.Contains($". {name}", StringComparison.Ordinal);

    private static void OnEveryPage(Action<AreaAdvice, string> holds)
    {
        foreach (AreaAdvice advice in ShippedRules.WorkedAreas)
            holds(advice, PageOf(advice));
        DrawnAdvice.OfCases.Sample((_, advice) => holds(advice, PageOf(advice)), Sizes.Of(few: 40, many: 5_000));
    }

    private static string PageOf(AreaAdvice advice) => PageOfArea.Of(advice);

    private static int LinesOf(string page, string mark)
    {
        string[] lines = page.Split('\n');
        int count = 0;
        for (int i = 0; i < lines.Length; i++)
        {
            if (!lines[i].TrimStart().StartsWith(mark, StringComparison.Ordinal))
                continue;
            int hang = lines[i].IndexOf(mark, StringComparison.Ordinal) + mark.Length;
            count +=
                1
                + lines
                    .Skip(i + 1)
                    .TakeWhile(line => line.StartsWith(new string(' ', hang), StringComparison.Ordinal))
                    .Count();
        }

        return count;
    }

    private static string[] Under(string page, string heading)
    {
        string[] lines = page.Split('\n');
        int at = Array.FindIndex(lines, line => line.StartsWith(heading, StringComparison.Ordinal));
        return at < 0 ? [] : [.. lines.Skip(at).TakeWhile(line => line.Length > 0)];
    }

    // With the empty line above the heading.
    private static int LinesUnder(string page, string heading) =>
        Under(page, heading) is { Length: > 0 } lines ? lines.Length + 1 : 0;

    private static IEnumerable<string> Why(string page) =>
        Under(page, "KEEP OUT").TakeWhile(line => !line.StartsWith("  From then", StringComparison.Ordinal));

    // Lines that are wrapped, as one again.
    private static List<string> Joined(string page)
    {
        List<string> joined = [];
        int hang = 0;
        foreach (string line in page.Split('\n').Where(line => line.Trim().Length > 0))
        {
            int indent = line.Length - line.TrimStart().Length;
            if (joined.Count > 0 && hang > 0 && indent >= hang)
            {
                joined[^1] += " " + line.Trim();
                continue;
            }

            string text = line.Trim();
            hang =
                text.StartsWith("why: ", StringComparison.Ordinal)
                || text.StartsWith("mind: ", StringComparison.Ordinal)
                    ? indent + text.IndexOf(": ", StringComparison.Ordinal) + 2
                    : 0;
            joined.Add(text);
        }

        return joined;
    }
}

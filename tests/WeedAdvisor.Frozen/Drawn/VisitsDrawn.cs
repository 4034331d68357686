using System.Globalization;
using System.Text;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Frozen.Drawn;

/// <summary>Draws visits at random, in the first format of visit files, from the words of a knowledge folder.</summary>
internal static class VisitsDrawn
{
    private static readonly string[] s_results = ["clean", "escapes", "injury"];
    private static readonly DateOnly s_first = new(2026, 1, 5);

    /// <summary>Writes visits into a folder, the same every time.</summary>
    public static int Write(string rules, string folder, int count)
    {
        KnowledgeBase knowledge = KnowledgeFolder.Load(rules).Value!;
        Directory.CreateDirectory(folder);
        for (int number = 1; number <= count; number++)
        {
            string id = "drawn-" + number.ToString("000", CultureInfo.InvariantCulture);
            AtomicFile.Write(Path.Combine(folder, id + ".yaml"), Visit(knowledge, id, new Tape((ulong)number)));
        }

        return 0;
    }

    private static string Visit(KnowledgeBase knowledge, string id, Tape tape)
    {
        DateOnly date = s_first.AddDays(tape.Below(360));
        var text = new StringBuilder();
        text.Append(CultureInfo.InvariantCulture, $"visit: {id}\ndate: {AnswersDrawn.Day(date)}\nareas:\n");
        int areas = 1 + tape.Below(3);
        for (int area = 1; area <= areas; area++)
        {
            text.Append(CultureInfo.InvariantCulture, $"  - id: area-{area}\n    name: Area {area}\n");
            Answers(text, knowledge, date, tape);
            List(text, "weeds", Weeds(knowledge, tape));
            List(text, "past", Past(knowledge, date, tape));
        }

        return text.ToString();
    }

    private static void Answers(StringBuilder text, KnowledgeBase knowledge, DateOnly date, Tape tape)
    {
        text.Append("    answers:\n");
        int place = knowledge.Questions.ToList().FindIndex(question => question.Id == "place");
        foreach (Question question in knowledge.Questions)
        {
            // One question in five stays open; the place is always said.
            bool isSaid = question == knowledge.Questions[place] || tape.Below(10) < 8;
            if (isSaid && AnswersDrawn.Answer(knowledge, question, date, tape) is { } answer)
                text.Append(CultureInfo.InvariantCulture, $"      {question.Id}: {answer}\n");
        }
    }

    private static IEnumerable<string>? Weeds(KnowledgeBase knowledge, Tape tape)
    {
        if (tape.Below(8) == 0)
            return null;
        string[] stages = knowledge.Vocabulary.TryGetValue("stage", out WordList? list)
            ? [.. list.Words.Select(word => word.Key)]
            : [];
        return
        [
            .. tape.Some([.. knowledge.Weeds.Keys], 4)
                .Select(weed =>
                {
                    string stage = tape.Below(5) == 0 ? "" : $", stage: {stages[tape.Below(stages.Length)]}";
                    string cover =
                        tape.Below(3) == 0 ? "" : FormattableString.Invariant($", cover-percent: {tape.Below(40)}");
                    return $"{{ weed: {weed}{stage}{cover} }}";
                }),
        ];
    }

    private static IEnumerable<string>? Past(KnowledgeBase knowledge, DateOnly date, Tape tape)
    {
        if (tape.Below(6) == 0)
            return null;
        string[] treatments = [.. knowledge.Treatments.Keys];
        string[] weeds = [.. knowledge.Weeds.Keys];
        return
        [
            .. tape.Some(treatments, 4)
                .Select(treatment =>
                {
                    string day =
                        tape.Below(8) == 0 ? "" : $", date: {AnswersDrawn.Day(date.AddDays(-tape.Below(500)))}";
                    string result = tape.Below(6) == 0 ? "" : s_results[tape.Below(s_results.Length)];
                    string escaped =
                        result == "escapes" ? $", escaped: [{string.Join(", ", tape.Some(weeds, 2))}]" : "";
                    return $"{{ treatment: {treatment}{day}{(result.Length > 0 ? ", result: " + result : "")}{escaped} "
                        + $"}}";
                }),
        ];
    }

    private static void List(StringBuilder text, string key, IEnumerable<string>? items)
    {
        if (items is null)
            return;
        string[] all = [.. items];
        text.Append(CultureInfo.InvariantCulture, $"    {key}:{(all.Length == 0 ? " []" : "")}\n");
        foreach (string item in all)
            text.Append(CultureInfo.InvariantCulture, $"      - {item}\n");
    }
}

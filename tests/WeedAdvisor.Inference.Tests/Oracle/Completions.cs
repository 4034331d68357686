using System.Collections.Immutable;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Judgements;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Inference.Tests.Oracle;

/// <summary>
/// Every way in which what is open in a case can turn out. An answer that was given to a question which may not apply
/// says that it does.
/// </summary>
internal static class Completions
{
    private static readonly string[] s_stages = ["seedling", "mature", "expected"];
    private static readonly string[] s_results = ["clean", "escapes", "injury"];
    private static readonly string?[] s_signals = ["caution", "warning", "danger"];

    // Below, at, between and above all limits that are drawn.
    private static readonly decimal[] s_numbers = [0, 1, 1.5m, 2, 3];

    /// <summary>The worlds, or null when there are more than so many.</summary>
    public static World[]? Of(DrawnCase drawn, int most)
    {
        string[] asked =
        [
            .. drawn.Knowledge.Judgements.SelectMany(judgement => judgement.When).SelectMany(AttributesIn).Distinct(),
        ];
        IEnumerable<VisitArea> areas = [drawn.Area];
        foreach (Question question in drawn.Knowledge.Questions)
            areas = areas.SelectMany(area => Answered(area, question, drawn.Knowledge));
        areas = areas.SelectMany(area => Weeds(area, drawn.Knowledge)).SelectMany(area => Past(area, drawn.Knowledge));
        IEnumerable<KnowledgeBase> labels = [drawn.Knowledge];
        foreach (string id in drawn.Knowledge.Treatments.Keys)
            labels = labels.SelectMany(knowledge => Labels(knowledge, id, asked));

        KnowledgeBase[] read = [.. labels];
        VisitArea[] told = [.. areas.Take((most / read.Length) + 1)];
        return told.Length * read.Length > most
            ? null
            : [.. told.SelectMany(area => read.Select(knowledge => Worlds.Of(area, knowledge)))];
    }

    private static IEnumerable<string> AttributesIn(Pattern pattern) =>
        pattern switch
        {
            Pattern.Fact fact => fact.Tests.Select(test => test.Attribute),
            Pattern.Any any => AttributesIn(any.Inner),
            Pattern.None none => AttributesIn(none.Inner),
            _ => [],
        };

    private static IEnumerable<VisitArea> Answered(VisitArea area, Question question, KnowledgeBase knowledge)
    {
        bool isGiven = area.Answers.ContainsKey(question.Id);
        if (!Applies(area, question))
            return isGiven ? [] : [area];
        return isGiven
            ? [area]
            : Ways(question, knowledge)
                .Select(answer => area with { Answers = area.Answers.SetItem(question.Id, answer) });
    }

    private static bool Applies(VisitArea area, Question question) =>
        question.AskedWhen.All(condition =>
            area.Answers[condition.Attribute] is Answer.Words words
            && ((AttributeTest.Word)condition.Test).Words.Contains(words.Value.First())
        );

    private static IEnumerable<Answer> Ways(Question question, KnowledgeBase knowledge) =>
        question.Kind switch
        {
            QuestionKind.Number => s_numbers.Select(number => new Answer.Number(number)),
            QuestionKind.OneOf => question.Choices.Select(choice => new Answer.Words(WordSet.Of([choice.Id]))),
            // No crop at all contradicts that stock stands there.
            QuestionKind.Crops => Subsets([.. knowledge.Crops.Keys]).Where(crops => crops.Length > 0).Select(Words),
            _ => Subsets([.. question.Choices.Select(choice => choice.Id)]).Select(Words),
        };

    private static Answer.Words Words(string[] words) => new(WordSet.Of(words));

    private static IEnumerable<T[]> Subsets<T>(T[] all) =>
        Enumerable.Range(0, 1 << all.Length).Select(bits => all.Where((_, at) => (bits & (1 << at)) != 0).ToArray());

    // What has not been listed may be any of the weeds, each at any stage.
    private static IEnumerable<VisitArea> Weeds(VisitArea area, KnowledgeBase knowledge)
    {
        IEnumerable<WeedSeen[]> lists = area.Weeds is { } listed
            ?
            [
                [.. listed],
            ]
            : Subsets([.. knowledge.Weeds.Keys.Select(weed => new WeedSeen(weed, null, null))]);
        return lists.SelectMany(list => Each(list, Closely)).Select(list => area with { Weeds = [.. list] });
    }

    private static IEnumerable<WeedSeen> Closely(WeedSeen seen) =>
        from stage in seen.Stage is null ? s_stages : [seen.Stage]
        from cover in seen.CoverPercent is null ? [0, 1.5m, 3] : (decimal[])[seen.CoverPercent.Value]
        select seen with
        {
            Stage = stage,
            CoverPercent = cover,
        };

    private static IEnumerable<VisitArea> Past(VisitArea area, KnowledgeBase knowledge)
    {
        IEnumerable<PastApplication[]> lists = area.Past is { } listed
            ?
            [
                [.. listed],
            ]
            :
            [
                [],
                .. knowledge.Treatments.Keys.Select(Of),
            ];
        return lists.SelectMany(list => Each(list, Remembered)).Select(list => area with { Past = [.. list] });
    }

    private static PastApplication[] Of(string treatment) =>
        [new PastApplication(treatment, null, null, WordSet.Empty)];

    private static IEnumerable<PastApplication> Remembered(PastApplication use) =>
        from result in use.Result is null ? s_results : [use.Result]
        from ago in use.Date is null ? [0, 1, 2, 3] : (int[])[DrawnCase.Day.DayNumber - use.Date.Value.DayNumber]
        select use with
        {
            Result = result,
            Date = DrawnCase.Day.AddDays(-ago),
        };

    private static IEnumerable<T[]> Each<T>(T[] list, Func<T, IEnumerable<T>> ways) =>
        list.Aggregate(
            (IEnumerable<T[]>)
                [
                    [],
                ],
            (soFar, next) => soFar.SelectMany(before => ways(next).Select(way => (T[])[.. before, way]))
        );

    private static string?[] Signals(Treatment record, bool isAsked) =>
        record.SignalWord is null && isAsked ? s_signals : [record.SignalWord];

    // What a record leaves out only its label can tell; what no judgement asks for is left as it is.
    private static IEnumerable<KnowledgeBase> Labels(KnowledgeBase knowledge, string id, string[] asked)
    {
        Treatment record = knowledge.Treatments[id];
        IEnumerable<Treatment> waits = Figures(record.WaitAfterPottingDays, asked.Contains("wait-after-potting-days"))
            .Select(days => record with { WaitAfterPottingDays = days });
        IEnumerable<Treatment> repeats = waits.SelectMany(told =>
            Figures(record.RepeatAfterDays, asked.Contains("repeat-after-days"))
                .Select(days => told with { RepeatAfterDays = days })
        );
        return repeats
            .SelectMany(told =>
                Signals(record, asked.Contains("signal-word")).Select(word => told with { SignalWord = word })
            )
            .Select(told => knowledge with { Treatments = knowledge.Treatments.SetItem(id, told) });
    }

    private static IEnumerable<decimal?> Figures(decimal? figure, bool isAsked) =>
        figure is null && isAsked ? s_numbers.Cast<decimal?>() : [figure];
}

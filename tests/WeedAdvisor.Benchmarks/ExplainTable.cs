using System.Diagnostics;
using System.Globalization;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Readings;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Lessons;
using WeedAdvisor.Reports.Unlock;
using WeedAdvisor.Reports.WhatIf;
using WeedAdvisor.Reports.Why;
using WeedAdvisor.World;

namespace WeedAdvisor.Benchmarks;

/// <summary>
/// How long explanations take on the full knowledge, warm, of worked visits and actions taken at even steps: median,
/// nine in ten and worst, by the clock, on one thread.
/// </summary>
internal static class ExplainTable
{
    private const int Visits = 24,
        Actions = 6,
        Step = 67;

    /// <summary>Measures and writes the table.</summary>
    public static void Write(TextWriter output)
    {
        KnowledgeBase knowledge = ShippedRules.Knowledge;
        Advisor advisor = ShippedRules.Advisor;
        CatalogueAction[] actions =
        [
            .. knowledge.Practices.Values.Cast<CatalogueAction>().Concat(knowledge.Treatments.Values),
        ];
        Question moisture = knowledge.QuestionOf("surface-moisture")!;
        var dry = new Answer.Words(WordSet.Of("dry"));
        int drawn = 0;
        VisitAdvice[] visits =
        [
            .. knowledge
                .WorkedVisits.Select(worked => worked.Visit)
                .Select(visit => visit with { Areas = [visit.Areas[0]] })
                .Where((_, at) => at % (knowledge.WorkedVisits.Length / Visits) == 0)
                .Take(Visits)
                .Select(advisor.Advise),
        ];
        Dictionary<string, List<double>> times = [];
        foreach (bool isWarm in (bool[])[false, true])
        {
            times.Clear();
            foreach (VisitAdvice now in visits)
            {
                foreach (int at in Enumerable.Range(0, Actions).Select(_ => Next()))
                {
                    CatalogueAction action = actions[at];
                    Time("why", () => DocumentText.Of(WhyDocument.Of(now, action, knowledge), 80));
                    Time("why --full", () => DocumentText.Of(WhyDocument.Of(now, action, knowledge, full: true), 80));
                }

                CatalogueAction one = actions[Next()];
                Time("unlock", () => DocumentText.Of(UnlockDocument.Of(advisor, now, one), 80));
                Time("whatif, with both advices", () =>
                {
                    VisitArea area = now.Visit.Areas[0];
                    Visit other = now.Visit with
                    {
                        Areas = [area with { Answers = area.Answers.SetItem(moisture.Id, dry) }],
                    };
                    return DocumentText.Of(
                        WhatIfDocument.Of(
                            advisor.Advise(now.Visit),
                            advisor.Advise(other),
                            [(moisture, dry)],
                            knowledge,
                            false
                        ),
                        80
                    );
                });
                Time("what the next question settles", () =>
                    advisor.WithOutcomes(now).Areas[0].NextQuestion?.ToString() ?? ""
                );
            }

            foreach (Lesson lesson in knowledge.Lessons)
            {
                AreaAdvice area = advisor
                    .Advise(ShippedRules.Visit(lesson.Visit))
                    .Areas.First(one => one.Area.Id == lesson.Area);
                Time("a lesson", () => DocumentText.Of(LessonDocument.Of(lesson, area, knowledge), 80));
            }
        }

        output.WriteLine("| | runs | median | nine in ten | worst |");
        output.WriteLine("| --- | --- | --- | --- | --- |");
        foreach ((string what, List<double> all) in times)
        {
            double[] sorted = [.. all.Order()];
            output.WriteLine(
                string.Create(
                    CultureInfo.InvariantCulture,
                    $"| {what} | {sorted.Length} | {sorted[sorted.Length / 2]:0.0} ms | "
                        + $"{sorted[sorted.Length * 9 / 10]:0.0} ms | {sorted[^1]:0.0} ms |"
                )
            );
        }

        // Steps that share no divisor with the number of actions come to each of them in turn.
        int Next() => drawn++ * Step % actions.Length;

        void Time(string what, Func<string> work)
        {
            long from = Stopwatch.GetTimestamp();
            if (work() is not { Length: >= 0 })
                throw new InvalidOperationException(what);
            double took = Stopwatch.GetElapsedTime(from).TotalMilliseconds;
            if (!times.TryGetValue(what, out List<double>? list))
                times[what] = list = [];
            list.Add(took);
        }
    }
}

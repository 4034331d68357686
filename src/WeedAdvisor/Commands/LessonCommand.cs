using System.Collections.Immutable;
using System.CommandLine;
using WeedAdvisor.Asking;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Lessons;
using WeedAdvisor.Reports.Units;

namespace WeedAdvisor.Commands;

/// <summary><c>lesson</c>: a worked visit rule by rule, for a class.</summary>
internal static class LessonCommand
{
    public static Command Of(Surroundings surroundings)
    {
        var name = new Argument<string?>("NAME")
        {
            Description = "The lesson; without it all of them are listed.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var score = new Option<string?>("--score")
        {
            Description =
                "Your own order of the work: actions with commas, the first first. It is held against the advice.",
            HelpName = "ACTIONS",
        };
        Option<string> format = FormatOption.Of("How it is written.");
        Option<string?> units = UnitsOption.Of();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "lesson",
            "Take a worked visit rule by rule, for a class: first the question, then, on Enter, the answer. Into a "
                + "pipe it goes straight through.",
            "weedadvisor lesson",
            "weedadvisor lesson liverwort",
            "weedadvisor lesson rounds --score \"hand-weed-now, bark-mulch\""
        )
        {
            name,
            score,
            format,
            units,
            width,
        };
        command.SetAction(parsed =>
        {
            KnowledgeBase knowledge = KnowledgeOption.Load(parsed, surroundings, KnowledgeScope.Whole);
            string? medium = parsed.GetValue(format);
            int columns = parsed.GetValue(width);
            if (parsed.GetValue(name) is not { } asked)
            {
                surroundings.Out.Write(
                    medium == FormatOption.Json
                        ? LessonJson.List(knowledge)
                        : FormatOption.Written(medium, LessonDocument.List(knowledge), columns)
                );
                return ExitCode.Done;
            }

            Lesson lesson = Find(asked, knowledge);
            Visit visit = knowledge.WorkedVisits.First(worked => worked.Visit.Id == lesson.Visit).Visit;
            AreaAdvice area = Advisor.Of(knowledge).Advise(visit).Areas.First(one => one.Area.Id == lesson.Area);
            ImmutableArray<string>? named = parsed.GetValue(score) is { } order ? Order(order, knowledge) : null;
            if (medium == FormatOption.Json)
                surroundings.Out.Write(LessonJson.Of(lesson, area, knowledge, named));
            else if (named is { } ranked)
                surroundings.Out.Write(
                    FormatOption.Written(medium, LessonDocument.Scored(lesson, area, ranked, knowledge), columns)
                );
            else if (
                medium is null or FormatOption.Text
                && surroundings is { IsInputTerminal: true, IsOutputTerminal: true }
            )
                Pause(
                    lesson,
                    area,
                    knowledge,
                    surroundings,
                    columns,
                    UnitsWords.Find(parsed.GetValue(units)) ?? VisitUnits.Of(visit, knowledge)
                );
            else
                surroundings.Out.Write(
                    FormatOption.Written(
                        medium,
                        UnitsOption.Applied(
                            LessonDocument.Of(lesson, area, knowledge),
                            parsed.GetValue(units),
                            visit,
                            knowledge
                        ),
                        columns
                    )
                );
            return ExitCode.Done;
        });
        return command;
    }

    // The class answers; Enter shows what the rules say. The end of the input ends the lesson.
    private static void Pause(
        Lesson lesson,
        AreaAdvice area,
        KnowledgeBase knowledge,
        Surroundings surroundings,
        int width,
        UnitsWanted? units
    )
    {
        var lines = new Lines(surroundings.In, surroundings.Out, echo: false);
        lines.SayAsIs($"Lesson: {lesson.Title}");
        lines.Say();
        ImmutableArray<ImmutableArray<Block>> pages = new LessonPages(knowledge).Of(lesson, area);
        for (int i = 0; i < pages.Length; i++)
        {
            surroundings.Out.Write(DocumentText.Of([.. DocumentUnits.In(pages[i], units, [])], width));
            if (i < pages.Length - 1 && lines.Hear("  Enter shows the answer") is null)
                return;
        }
    }

    private static ImmutableArray<string> Order(string text, KnowledgeBase knowledge)
    {
        string[] named =
        [
            .. text.Split(',', StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries)
                .Select(one => ActionAsked.Find(one, knowledge).Id),
        ];
        if (named.GroupBy(id => id, StringComparer.Ordinal).FirstOrDefault(same => same.Count() > 1) is { } twice)
            throw new RefusalException(ExitCode.Usage, $"'{twice.Key}' stands in your order a second time.");
        if (named.Length == 0)
            throw new RefusalException(ExitCode.Usage, "no action in your order. Give their ids or names with commas.");
        return [.. named];
    }

    private static Lesson Find(string asked, KnowledgeBase knowledge) =>
        knowledge.Lessons.FirstOrDefault(lesson => lesson.Id == asked)
        ?? throw new RefusalException(
            ExitCode.Usage,
            knowledge.Lessons.IsEmpty
                ? "the knowledge has no lessons."
                : $"no lesson '{asked}'{UsageError.DidYouMean(asked, knowledge.Lessons.Select(lesson => lesson.Id))}. "
                    + $"See '{CommandLine.Name} lesson'."
        );
}

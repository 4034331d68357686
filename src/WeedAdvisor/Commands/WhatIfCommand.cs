using System.CommandLine;
using WeedAdvisor.Inference;
using WeedAdvisor.Inference.Areas;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.WhatIf;

namespace WeedAdvisor.Commands;

/// <summary><c>whatif</c>: what would be otherwise if some answers were other ones.</summary>
internal static class WhatIfCommand
{
    public static Command Of(Surroundings surroundings)
    {
        Argument<string> file = VisitArgument.File();
        var answers = new Argument<string[]>("ANSWER")
        {
            Description = "QUESTION=ANSWER, one or several; the answer as in 'ask', or - for not known.",
            Arity = ArgumentArity.OneOrMore,
        };
        Option<string?> area = VisitArgument.Area();
        var full = new Option<bool>("--full") { Description = "Every action and rule that stands otherwise." };
        Option<string> format = FormatOption.Of("How it is written.");
        Option<string?> units = UnitsOption.Of();
        Option<int> width = LayoutOptions.Width();
        var command = new ExampleCommand(
            "whatif",
            "Say what would be otherwise if some answers were other ones: what appears, goes and moves, which rules "
                + "turn, what it costs. The visit stays as it is.",
            "weedadvisor whatif visit.yaml surface-moisture=dry-between",
            "weedadvisor whatif visit.yaml drainage=free mulch=bark --area container-yard"
        )
        {
            file,
            answers,
            area,
            full,
            format,
            units,
            width,
        };
        command.SetAction(parsed =>
        {
            (KnowledgeBase knowledge, Visit visit) = VisitArgument.Load(
                parsed,
                file,
                area,
                KnowledgeScope.ForAdvice,
                surroundings
            );
            (Question Question, Answer Answer)[] told =
            [
                .. parsed.GetRequiredValue(answers).Select(text => Read(text, knowledge, visit.Date)),
            ];
            Advisor advisor = surroundings.Compile(knowledge);
            var now = advisor.Advise(visit);
            var then = advisor.Advise(With(visit, told));
            string? medium = parsed.GetValue(format);
            surroundings.Out.Write(
                medium == FormatOption.Json
                    ? WhatIfJson.Of(now, then, told, knowledge)
                    : FormatOption.Written(
                        medium,
                        UnitsOption.Applied(
                            WhatIfDocument.Of(
                                now,
                                then,
                                told,
                                knowledge,
                                parsed.GetValue(full) || FormatOption.IsWhole(medium)
                            ),
                            parsed.GetValue(units),
                            visit,
                            knowledge
                        ),
                        parsed.GetValue(width)
                    )
            );
            return ExitCode.Done;
        });
        return command;
    }

    private static Visit With(Visit visit, (Question Question, Answer Answer)[] told) =>
        visit with
        {
            Areas = [.. visit.Areas.Select(area => area.Taking(told.Select(one => (one.Question.Id, one.Answer))))],
        };

    private static (Question Question, Answer Answer) Read(string text, KnowledgeBase knowledge, DateOnly day)
    {
        int equals = text.IndexOf('=', StringComparison.Ordinal);
        if (equals <= 0)
            throw new RefusalException(
                ExitCode.Usage,
                $"'{text}' is no answer. Write QUESTION=ANSWER, such as drainage=free."
            );
        string id = text[..equals].Trim();
        if (knowledge.QuestionOf(id) is not { } question)
        {
            string near = UsageError.DidYouMean(id, knowledge.Questions.Select(one => one.Id));
            throw new RefusalException(
                ExitCode.Usage,
                $"no question '{id}'{near}. See '{CommandLine.Name} knowledge list questions'."
            );
        }

        if (question.Kind is QuestionKind.Weeds or QuestionKind.Past)
            throw new RefusalException(
                ExitCode.Usage,
                $"'{id}' is a list: change it in a copy of the visit and compare the advice."
            );
        Typed<Answer> read = TypedAnswer.Read(knowledge, question, text[(equals + 1)..], day);
        return read.Value is { } answer
            ? (question, answer)
            : throw new RefusalException(ExitCode.Usage, $"{id}: {read.Error}");
    }
}

using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Interview.Desks.Labels;
using WeedAdvisor.Interview.Files;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Asking;

/// <summary>The interview line by line: it shows a question, hears an answer or a command, and goes on.</summary>
public sealed class AskDialogue
{
    private readonly InterviewSession _session;
    private readonly Lines _lines;
    private readonly AskCommands _commands;
    private string? _shown;
    private string? _troubleTold;
    private string? _remarkTold;

    /// <summary>Sets up the interview.</summary>
    /// <param name="session">The interview.</param>
    /// <param name="store">Where visits are saved.</param>
    /// <param name="lines">The two ends of the line.</param>
    /// <param name="saveTo">The file to save to when none is named; null when not given.</param>
    /// <param name="advice">Writes the advice in full; null for the short list.</param>
    /// <param name="labels">The label book; null when none can be kept.</param>
    public AskDialogue(
        InterviewSession session,
        IVisitStore store,
        Lines lines,
        string? saveTo = null,
        Func<InterviewSession, string>? advice = null,
        LabelShelf? labels = null
    )
    {
        _session = session;
        _lines = lines;
        _commands = new AskCommands(session, store, lines, saveTo, advice, labels);
    }

    /// <summary>Runs the interview to its end.</summary>
    public AskEnding Run()
    {
        _lines.Say(
            $"Visit of {Answering.Date(_session.Visit.Date)}, area {_session.Area.Name}. Answer with a number or a "
                + $"word. "
                + "? tells why a question is put, - says that you do not know, help lists the rest."
        );
        while (!_commands.Leaving)
        {
            if (_session.Current is { } question)
                Put(question);
            else
                AtTheEnd();
            if (_lines.Ended)
                break;
        }

        return End();
    }

    private void Put(Question question)
    {
        if (_shown != Key(question))
        {
            Show(question);
            _shown = Key(question);
        }

        if (_lines.Hear("") is not { } typed || typed.Length == 0)
            return;
        if (typed == "?")
        {
            _lines.Say(question.Why, "  ");
            return;
        }

        if (_commands.Try(typed))
        {
            _shown = null;
            return;
        }

        if (Scoped(question, typed) is not { } rest)
            return;
        Answer(question, rest);
        TellRemark();
        TellTrouble();
    }

    /// <summary>Hears <c>here</c> or <c>all</c> before an answer to a question of the whole nursery.</summary>
    /// <returns>The answer; null when the line held no more than that word.</returns>
    private string? Scoped(Question question, string typed)
    {
        string[] parts = typed.Split(' ', 2, StringSplitOptions.TrimEntries);
        if (HeadAnswers.Told(_session, question) is null || parts[0].ToLowerInvariant() is not ("here" or "all"))
            return typed;
        _session.AnswerForAll(question, parts[0].Equals("all", StringComparison.OrdinalIgnoreCase));
        if (parts.Length > 1)
            return parts[1];
        _shown = null;
        return null;
    }

    private void Answer(Question question, string typed)
    {
        if (TypedAnswer.IsNotKnown(typed))
        {
            if (!_commands.MayDrop(question, typed))
                return;
            _session.SayNotKnown(question);
            _session.Next();
            return;
        }

        string? error = question.Kind switch
        {
            QuestionKind.Weeds => new AskList(_session, _lines, question).Weed(typed),
            QuestionKind.Past => new AskList(_session, _lines, question).Past(typed),
            _ => Plain(question, typed),
        };
        if (error is not null)
            _lines.Say(error + AskCommands.Hint(typed, error), "  ");
    }

    private string? Plain(Question question, string typed)
    {
        Typed<Answer> answer = TypedAnswer.Read(_session.Knowledge, question, typed, _session.Visit.Date);
        if (answer.Value is null)
            return answer.Error;
        ImmutableArray<string> gone = Losses.Entries(_session.Knowledge, question, _session.Area, answer.Value);
        bool none = answer.Value is Answer.Words { Value.Count: 0 };
        if (
            gone.Length > (none ? 0 : 1)
            && !_lines.Agrees($"\"{typed}\" takes out what was named: {Losses.Named(gone)}. Take it out?")
        )
        {
            return null;
        }

        _session.Say(question.Id, answer.Value);
        TellSetAside();
        _session.Next();
        return null;
    }

    private void Show(Question question)
    {
        _lines.Say();
        string area = _session.Visit.Areas.Length > 1 ? $"{_session.Area.Name}: " : "";
        _lines.Say($"[{area}{_session.Progress}]");
        _lines.Say(question.Ask);
        if (_session.DraftTrouble is null && WhatWasSaid.To(_session.Knowledge, question, _session.Area) is { } said)
            _lines.Say($"so far: {said}", "  ");
        var choices = Answering.ChoicesOf(_session.Knowledge, question);
        for (int i = 0; i < choices.Length; i++)
        {
            string number = (i + 1).ToString(CultureInfo.InvariantCulture).PadLeft(4) + "  ";
            _lines.Say(choices[i].Text, number);
        }

        if (HowTo(question) is { } how)
            _lines.Say(how, "  ");
        if (HeadAnswers.Told(_session, question) is { } scope)
        {
            string other = _session.IsForAll(question)
                ? "here before an answer gives it for this area alone"
                : "all before an answer gives it for the whole nursery";
            _lines.Say($"(an answer holds {scope}; {other})", "  ");
        }
    }

    private static string? HowTo(Question question) =>
        question.Kind switch
        {
            QuestionKind.Number or QuestionKind.Date or QuestionKind.Name or QuestionKind.Chemicals =>
                $"({Answering.Expected(question)})",
            QuestionKind.Weeds =>
                "(one weed a line, with stage and cover when known: liverwort, mature, 20; in a part of the pots only: "
                    + "liverwort, mature, 80, in 20 % of pots; in the gravel or ground and not in the pots: "
                    + "nutsedge, young, 10, "
                    + "beside the pots; a weed without a name: unnamed grass; remove liverwort "
                    + "takes it out; "
                    + "list liver looks it up; identify finds it by what you see; none when there are none; done when "
                    + "all are "
                    + "named)",
            QuestionKind.Past =>
                "(one application a line: product, day, and with commas between whatever else you know: 2 pm, "
                    + "granules, "
                    + "150 lb/acre, part only, watered in, aired, clean or escapes or injury, weeds that came through, "
                    + "many, "
                    + "3 seasons; a product that is not in the list: active NAME, group 14, other weed killer, other "
                    + "pesticide; "
                    + "tell asks for it step by step, change 1 changes one, remove 1 takes one out; list pendi looks "
                    + "it up; none "
                    + "when there were none; done when all are named)",
            _ when Answering.TakesSeveral(question) => "(several with commas between, or none)",
            _ => null,
        };

    private void AtTheEnd()
    {
        if (_shown != Key(null))
        {
            _shown = Key(null);
            _lines.Say();
            InterviewProgress progress = _session.Progress;
            _lines.Say($"[{_session.Area.Name}: {progress}]");
            _lines.Say(
                progress.Left
                    + (progress.Skipped > 0 ? " An empty line takes up what was passed over." : "")
                    + (progress.WorthAgain > 0 ? " Type again to go through what is not known." : "")
            );
            _lines.Say("Type advice, save, area new NAME, list, back, undo or quit.");
        }

        if (_lines.Hear("") is not { } typed)
            return;
        if (typed.Length == 0)
            _session.Next();
        else if (_commands.Try(typed))
            _shown = _session.Current is null ? _shown : null;
        else
            _lines.Say($"\"{typed}\" is not a command. {AskCommands.Nearest(typed)}", "  ");
    }

    private AskEnding End()
    {
        if (_session.IsSaved)
            return AskEnding.Saved;
        string where = _session.WhereAnswersAre;
        _lines.Say(_lines.Ended ? $"The input has ended before the visit was saved. {where}" : where);
        return _lines.Ended ? AskEnding.InputEnded : AskEnding.Left;
    }

    private void TellSetAside()
    {
        if (_session.SetAside is { IsEmpty: false } idle)
        {
            string labels = string.Join(", ", idle.Select(EditNames.Label));
            _lines.Say($"No longer applies, and is set aside until it does: {labels}", "  ");
        }
    }

    private void TellRemark()
    {
        if (_session.Remark is { } remark && remark != _remarkTold)
            _lines.Say(remark, "  ");
        _remarkTold = _session.Remark;
    }

    private void TellTrouble()
    {
        if (_session.DraftTrouble is { } trouble && trouble != _troubleTold)
            _lines.Say($"Note: this answer is not kept for recovery: {trouble}", "  ");
        _troubleTold = _session.DraftTrouble;
    }

    private string Key(Question? question) => $"{_session.Area.Id}/{question?.Id}";
}

using System.Collections.Immutable;
using System.Globalization;
using WeedAdvisor.Interview.Desks.Labels;
using WeedAdvisor.Interview.Files;
using WeedAdvisor.Interview.Pages;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Problems;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Asking;

/// <summary>The words that steer a line-by-line interview.</summary>
internal sealed class AskCommands(
    InterviewSession session,
    IVisitStore store,
    Lines lines,
    string? saveTo,
    Func<InterviewSession, string>? advice,
    LabelShelf? labels = null
)
{
    private const string NoUnits = "none";

    private static readonly string[] s_words =
    [
        "back",
        "skip",
        "clear",
        "undo",
        "redo",
        "again",
        "questions",
        "go",
        "area",
        "date",
        "nursery",
        "units",
        "label",
        "advice",
        "save",
        "quit",
        "help",
    ];

    /// <summary>Whether the grower wants to leave.</summary>
    public bool Leaving { get; private set; }

    /// <summary>A hint at the command nearest to what was typed.</summary>
    public static string Nearest(string typed) =>
        NearWords.Nearest(typed.Split(' ')[0], s_words) is { } near
            ? $"Did you mean {near}?"
            : "Type help for the list.";

    /// <summary>
    /// A hint at a command, for a line that was meant as one; empty when another hint is given or nothing is near.
    /// </summary>
    public static string Hint(string typed, string error) =>
        error.Contains("Did you mean", StringComparison.Ordinal) || typed.Contains(',') ? ""
        : NearWords.Nearest(typed, s_words) is { } near ? $" Did you mean the command {near}?"
        : "";

    /// <summary>Does what a command says.</summary>
    /// <returns>False when the line is no command.</returns>
    public bool Try(string typed)
    {
        string[] parts = typed.Split(' ', 2, StringSplitOptions.RemoveEmptyEntries | StringSplitOptions.TrimEntries);
        string rest = parts.Length > 1 ? parts[1] : "";
        switch (parts[0].ToLowerInvariant())
        {
            case "back" when rest.Length == 0:
                if (!session.Back())
                    lines.Say("This is the first question.", "  ");
                return true;
            case "skip" when rest.Length == 0:
                session.Skip();
                return true;
            case "clear" when rest.Length == 0 && session.Current is { } question:
                if (MayDrop(question, "clear"))
                    session.Clear(question);
                return true;
            case "undo" when rest.Length == 0:
                lines.Say(session.Undo() is { } undone ? $"undone: {undone}" : "There is nothing to undo.", "  ");
                return true;
            case "redo" when rest.Length == 0:
                lines.Say(
                    session.Redo() is { } redone ? $"done again: {redone}" : "There is nothing to do again.",
                    "  "
                );
                return true;
            case "again" when rest.Length == 0:
                if (!session.AskAgain())
                    lines.Say("No question that is not known would change the advice.", "  ");
                return true;
            case "questions" when rest.Length == 0:
            case "list" when rest.Length == 0 && session.Current?.Kind is not (QuestionKind.Weeds or QuestionKind.Past):
                Questions();
                return true;
            case "go":
                Go(rest);
                return true;
            case "area":
                new AskAreas(session, lines).Do(rest);
                return true;
            case "date":
                if (
                    TypedAnswer.ReadDay(rest, session.Visit.Date) is { } day
                    && session.Describe(day, session.Visit.Title, session.Visit.Nursery) is { } trouble
                )
                {
                    lines.Say(trouble, "  ");
                }

                lines.Say(
                    $"The visit is of {Answering.Date(session.Visit.Date)}. Type date 2026-04-30 to change it.",
                    "  "
                );
                return true;
            case "nursery":
                session.Describe(session.Visit.Date, session.Visit.Title, rest);
                lines.Say($"Nursery: {session.Visit.Nursery ?? "not named"}", "  ");
                return true;
            case "units":
                Units(rest.ToLowerInvariant());
                return true;
            case "label" when labels is not null:
                new LabelDialogue(labels, lines).Run(rest);
                return true;
            case "advice" when rest.Length == 0:
                Advice();
                return true;
            case "save":
                Save(rest, over: false);
                return true;
            case "save!":
                Save(rest, over: true);
                return true;
            case "quit" when rest.Length == 0:
                Leaving = true;
                return true;
            case "help" when rest.Length == 0:
                Help();
                return true;
            default:
                return false;
        }
    }

    /// <summary>Asks before a list of two or more is dropped.</summary>
    /// <param name="question">The question.</param>
    /// <param name="word">What was typed.</param>
    public bool MayDrop(Question question, string word)
    {
        ImmutableArray<string> gone = Losses.Entries(session.Knowledge, question, session.Area);
        return gone.Length < 2
            || lines.Agrees($"\"{word}\" takes out what was named: {Losses.Named(gone)}. Take it out?");
    }

    private void Save(string named, bool over)
    {
        string? path = named.Length > 0 ? named : saveTo ?? session.FilePath ?? lines.Hear("Save to which file?");
        if (string.IsNullOrEmpty(path))
        {
            lines.Say("Not saved: no file was named.", "  ");
            return;
        }

        Outcome<Saved, NotSaved> outcome = session.SaveTo(store, path, over);
        if (outcome.IsGood)
        {
            lines.Say(outcome.Value.Told(path), "  ");
            return;
        }

        NotSaved refused = outcome.Refusals[0];
        string ways = refused.IsChanged
            ? " Type save! to write over it (a copy of it is kept), or save and another name."
            : "";
        lines.Say($"Not saved: {refused.Why}{ways}", "  ");
    }

    private void Questions()
    {
        for (int i = 0; i < session.Questions.Length; i++)
        {
            QuestionEntry entry = session.Questions[i];
            string said = WhatWasSaid.To(session.Knowledge, entry.Question, session.Area)
                ?? entry.State switch
                {
                    QuestionState.NotKnown => "not known",
                    QuestionState.Skipped => "skipped",
                    _ => entry.Matters ? "open" : "open; no rule needs it here",
                };
            string number = (i + 1).ToString(CultureInfo.InvariantCulture).PadLeft(4) + "  ";
            lines.Say($"{entry.Question.Ask} {said}", number);
        }

        lines.Say("Type go and a number to change one.", "  ");
    }

    private void Go(string to)
    {
        Question? question =
            int.TryParse(to, NumberStyles.None, CultureInfo.InvariantCulture, out int at)
            && at >= 1
            && at <= session.Questions.Length
                ? session.Questions[at - 1].Question
                : session.Questions.FirstOrDefault(entry => entry.Question.Id == NearWords.Fold(to))?.Question;
        if (question is null)
            lines.Say("There is no such question here; type questions to see them.", "  ");
        else
            session.GoTo(question);
    }

    private void Advice()
    {
        if (advice is not null)
        {
            foreach (string line in advice(session).ReplaceLineEndings("\n").TrimEnd('\n').Split('\n'))
                lines.SayAsIs(line);
            return;
        }

        foreach (
            AdviceLine line in PageLines.Of(
                AdvicePage.Of(session.Knowledge, session.Advice, session.Suggested, full: true),
                76
            )
        )
            lines.SayAsIs(line.Text);
    }

    private void Units(string word)
    {
        UnitsWanted? units = UnitsWords.Find(word);
        if (word.Length > 0 && units is null && word != NoUnits)
        {
            lines.Say($"Units are {string.Join(", ", UnitsWords.All)} or {NoUnits}, not '{word}'.", "  ");
            return;
        }

        if (word.Length > 0)
            session.Describe(session.Visit.Date, session.Visit.Title, session.Visit.Nursery, units);
        lines.Say(
            session.Visit.Units is { } said
                ? $"Units: {UnitsWords.Of(said)}."
                : "Units: as the sources have them. Type units metric, us or both to change that.",
            "  "
        );
    }

    private void Help()
    {
        string[] help =
        [
            "?          why the question is put",
            "-          you do not know (also: don't know)",
            "back       the question before",
            "skip       leave this one open for now",
            "clear      take the answer back",
            "undo       undo the last change of the visit; redo does it again",
            "again      put the questions again that you did not know",
            "questions  every question here with what was said",
            "go N       straight to a question of that list",
            "area       the areas; area 2 goes to one; area new NAME, area name NAME, area remove 2",
            "date       the day of the visit; date 2026-04-30 changes it",
            "nursery    nursery NAME names the nursery",
            "units      units metric, us or both; units none: as the sources have them",
            "label      your label book; label NAME copies what your own label says",
            "advice     the advice as it stands",
            "save FILE  save the visit; save! writes over a file that others have changed",
            "quit       leave; what is not saved is kept for the next start",
        ];
        foreach (string line in help)
            lines.Say(line[11..], "  " + line[..11]);
    }
}

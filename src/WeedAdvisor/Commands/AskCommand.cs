using System.CommandLine;
using System.Runtime.InteropServices;
using WeedAdvisor.Asking;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Interview.Files;
using WeedAdvisor.Interview.Session;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Visits;
using WeedAdvisor.Reports.Advise;
using WeedAdvisor.Reports.Documents;
using WeedAdvisor.Reports.Units;

namespace WeedAdvisor.Commands;

/// <summary><c>ask</c>: the interview line by line.</summary>
internal static class AskCommand
{
    private const int Width = 78;

    public static Command Of(Surroundings surroundings)
    {
        var file = new Argument<string?>("VISIT")
        {
            Description = "A visit file to go on with; without it, a new visit of today.",
            Arity = ArgumentArity.ZeroOrOne,
        };
        var output = new Option<string?>("--out")
        {
            Description = "The file that save writes when it is given no other.",
            HelpName = "FILE",
        };
        var command = new ExampleCommand(
            "ask",
            "Answer the questions line by line; for pipes and screen readers. Every answer is kept until it is saved.",
            "weedadvisor ask",
            "weedadvisor ask --out visit.yaml",
            "weedadvisor ask visit.yaml",
            "weedadvisor ask --out visit.yaml < answers.txt"
        )
        {
            file,
            output,
        };
        command.SetAction(parsed =>
            Run(
                KnowledgeOption.Load(parsed, surroundings, KnowledgeScope.WithoutWorkedVisits),
                LabelsOption.Given(parsed),
                parsed.GetValue(file),
                parsed.GetValue(output),
                surroundings
            )
        );
        return command;
    }

    private static int Run(
        KnowledgeBase knowledge,
        string? labels,
        string? path,
        string? saveTo,
        Surroundings surroundings
    )
    {
        if (path == "-")
        {
            throw new RefusalException(
                ExitCode.Usage,
                "standard input is for the answers. Name the file of the visit, or leave it out."
            );
        }

        VisitDocument? document = path is null ? null : VisitArgument.Document(path, knowledge, surroundings);
        using InterviewStart start = InterviewStart.Of(knowledge, labels, document, path, surroundings);
        var lines = new Lines(surroundings.In, surroundings.Out, echo: !surroundings.IsInputTerminal);
        (IReadOnlyList<RecoveryOffer> offers, IReadOnlyList<string> troubles) = start.Offers();
        string? first = AskRecovery.Offer(offers, troubles, lines);
        start.Recovery?.Release();
        if (first is not null)
            lines.HearFirst(first);
        using PosixSignalRegistration interrupted = OnSignal(PosixSignal.SIGINT, start, surroundings.Error);
        using PosixSignalRegistration closed = OnSignal(PosixSignal.SIGHUP, start, surroundings.Error);
        using PosixSignalRegistration ended = OnSignal(PosixSignal.SIGTERM, start, surroundings.Error);
        AskEnding outcome = new AskDialogue(start.Session, start.Store, lines, saveTo, Advice, start.Labels).Run();
        return outcome == AskEnding.InputEnded ? ExitCode.Negative : ExitCode.Done;
    }

    /// <summary>
    /// Every answer has been kept by then; the signal only needs the place told, and then does what it always does.
    /// </summary>
    private static PosixSignalRegistration OnSignal(PosixSignal signal, InterviewStart start, TextWriter error) =>
        PosixSignalRegistration.Create(signal, _ =>
        {
            if (start.Session is { IsSaved: false, DraftTrouble: null, DraftPlace: { } place })
                error.WriteLine(
                    $"\n{CommandLine.Name}: the answers are kept in {place} and are offered at the next start."
                );
        });

    private static string Advice(InterviewSession session)
    {
        Visit here = session.Visit with { Areas = [session.Area] };
        Document document = AdviceDocument.Of(
            new VisitAdvice(session.Knowledge.Stamp, here, [session.Advice]),
            session.Knowledge
        );
        return DocumentText.Of(DocumentUnits.In(document, session.Units, DocumentUnits.NamesIn(session.Visit)), Width);
    }
}

using System.Collections.Immutable;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Earlier;

/// <summary>What an earlier use is told against.</summary>
/// <param name="Knowledge">The knowledge.</param>
/// <param name="Visit">The day of the visit; no earlier use lies after it.</param>
public sealed record Telling(KnowledgeBase Knowledge, DateOnly Visit);

/// <summary>
/// One thing that is told of an earlier use. The screens, the one-line form and the step-by-step form of the
/// line-by-line interview are all made from these.
/// </summary>
/// <param name="Id">Its id.</param>
/// <param name="Label">What it is, a few words.</param>
/// <param name="Expected">What is to be written.</param>
/// <param name="Help">Why it is asked and what counts when it is not known, one sentence.</param>
public abstract record PastField(string Id, string Label, string Expected, string Help)
{
    /// <summary>The words that can be told, where it takes one of a few; else empty.</summary>
    public virtual ImmutableArray<AnswerChoice> Choices => [];

    /// <summary>Whether an application tells it.</summary>
    public abstract bool IsTold(PastApplication past);

    /// <summary>The application without it.</summary>
    public abstract PastApplication Without(PastApplication past);

    /// <summary>What an application tells, as it would be typed; empty when nothing.</summary>
    public abstract string Text(Telling telling, PastApplication past);

    /// <summary>
    /// The application with it told; an error when the text is meant for it but wrong; null when it is not meant for
    /// it.
    /// </summary>
    /// <param name="telling">What it is told against.</param>
    /// <param name="past">The application so far.</param>
    /// <param name="text">What was typed, without blanks at its ends and not empty.</param>
    public abstract Typed<PastApplication>? Take(Telling telling, PastApplication past, string text);

    /// <summary>The application with it told in a place of its own, where nothing else can be meant.</summary>
    public Typed<PastApplication> Read(Telling telling, PastApplication past, string text) =>
        Take(telling, past, text) ?? Typed<PastApplication>.Wrong($"\"{text}\" is not {Expected}");
}

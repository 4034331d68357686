using System.Collections.Immutable;
using WeedAdvisor.Interview.Words;
using WeedAdvisor.Knowledge.Records;
using WeedAdvisor.Knowledge.Visits;

namespace WeedAdvisor.Interview.Earlier;

/// <summary>A field that takes one of a few words.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Label">What it is, a few words.</param>
/// <param name="Help">Why it is asked and what counts when it is not known.</param>
/// <param name="All">The words.</param>
/// <param name="Get">The word that an application tells.</param>
/// <param name="Set">The application with a word, or with none.</param>
public sealed record PastChoice(
    string Id,
    string Label,
    string Help,
    ImmutableArray<AnswerChoice> All,
    Func<PastApplication, string?> Get,
    Func<PastApplication, string?, PastApplication> Set
) : PastField(Id, Label, string.Join(", ", All.Select(choice => choice.Text)), Help)
{
    /// <inheritdoc/>
    public override ImmutableArray<AnswerChoice> Choices => All;

    /// <inheritdoc/>
    public override bool IsTold(PastApplication past) => Get(past) is not null;

    /// <inheritdoc/>
    public override PastApplication Without(PastApplication past) => Set(past, null);

    /// <inheritdoc/>
    public override string Text(Telling telling, PastApplication past) =>
        All.FirstOrDefault(choice => choice.Id == Get(past))?.Text ?? "";

    /// <inheritdoc/>
    public override Typed<PastApplication>? Take(Telling telling, PastApplication past, string text) =>
        !char.IsAsciiDigit(text[0]) && TypedAnswer.Pick(All, text).Value is { } choice
            ? Typed<PastApplication>.As(Set(past, choice.Id))
            : null;
}

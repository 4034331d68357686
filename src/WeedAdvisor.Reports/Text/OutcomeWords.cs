using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Text;

/// <summary>
/// What the next question would settle, answer by answer: "if it dries off: ...; if it stays wet: ...".
/// </summary>
public static class OutcomeWords
{
    private const int MostNames = 2;

    /// <summary>
    /// A sentence for each outcome; answers that come to the same are told together. Empty where nothing was worked
    /// out.
    /// </summary>
    /// <param name="names">What things are called.</param>
    /// <param name="next">The question.</param>
    public static ImmutableArray<string> Of(Names names, NextQuestion next)
    {
        if (next.Outcomes.IsEmpty)
            return [];
        if (next.Outcomes.All(IsSame))
            return ["Whatever the answer, what is done first stays as it is."];
        return
        [
            .. next
                .Outcomes.GroupBy(Key)
                .OrderBy(group => IsSame(group.First()))
                .Select(group => $"If {If(names, next, [.. group])}: {Then(names, group.First())}."),
        ];
    }

    /// <summary>The same for the page of an area: only what changes anything, and of that what changes.</summary>
    /// <param name="names">What things are called.</param>
    /// <param name="next">The question.</param>
    internal static ImmutableArray<string> OfChanges(Names names, NextQuestion next) =>
        Of(names, next with { Outcomes = [.. next.Outcomes.Where(outcome => !IsSame(outcome))] });

    private static bool IsSame(AnswerOutcome outcome) =>
        outcome is { Brings.IsEmpty: true, Drops.IsEmpty: true, Reorders: false };

    private static string Key(AnswerOutcome outcome) =>
        string.Join(
            '|',
            string.Join(',', outcome.Brings),
            string.Join(',', outcome.Drops),
            string.Join(',', outcome.Gone),
            outcome.Reorders
        );

    private static string If(Names names, NextQuestion next, AnswerOutcome[] alike) =>
        Listing.Or([.. alike.Select(outcome => names.Answer(next.Id, outcome.Answer))]);

    private static string Then(Names names, AnswerOutcome outcome)
    {
        if (IsSame(outcome))
            return "what is done first stays as it is";
        // What only makes room is still to be done.
        return (outcome.Brings, outcome.Drops) switch
        {
            ({ IsEmpty: true }, { IsEmpty: true }) => "the same work, in another order",
            ({ IsEmpty: true }, var drops) => $"without {Some(names, drops)}",
            (var brings, _) when !outcome.Gone.IsEmpty =>
                $"{Some(names, brings)} instead of {Some(names, outcome.Gone)}",
            (var brings, _) => $"also {Some(names, brings)}",
        };
    }

    private static string Some(Names names, ImmutableArray<string> actions) =>
        actions.Length > MostNames
            ? $"{string.Join(", ", actions.Take(MostNames).Select(names.Action))} and {actions.Length - MostNames} more"
            : string.Join(" and ", actions.Select(names.Action));
}

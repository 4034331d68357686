using System.Collections.Immutable;
using WeedAdvisor.Inference.Advice;
using WeedAdvisor.Knowledge.Judgements;

namespace WeedAdvisor.Reports.Why;

/// <summary>A kind of reason with its heading.</summary>
/// <param name="Id">Names it in JSON.</param>
/// <param name="Title">Its heading.</param>
/// <param name="Holds">Whether a reason is of the kind.</param>
internal sealed record ReasonKind(string Id, string Title, Func<Reason, bool> Holds)
{
    /// <summary>The kinds in the order of reading.</summary>
    public static ImmutableArray<ReasonKind> All { get; } =
    [
        new("bars", "What bars it", reason => reason.Then is Consequence.Bar && reason.IsCertain),
        new("mayBar", "What may bar it", reason => reason.Then is Consequence.Bar && !reason.IsCertain),
        new("for", "What speaks for it", reason => IsSupport(reason) && reason.IsCertain),
        new("mayBeFor", "What may speak for it", reason => IsSupport(reason) && !reason.IsCertain),
        new("against", "What speaks against it", reason => IsDoubt(reason) && reason.IsCertain),
        new("mayBeAgainst", "What may speak against it", reason => IsDoubt(reason) && !reason.IsCertain),
        new("mind", "What to mind with it", reason => reason.Then is Consequence.Caution),
    ];

    private static bool IsSupport(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: false };

    private static bool IsDoubt(Reason reason) => reason.Then is Consequence.Argument { IsDoubt: true };
}

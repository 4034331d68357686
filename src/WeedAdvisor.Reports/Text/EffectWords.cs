using WeedAdvisor.Inference.Advice;

namespace WeedAdvisor.Reports.Text;

/// <summary>How good an action is, in a grower's words.</summary>
public static class EffectWords
{
    // The least share, 0 to 1, of which a word is true.
    private static readonly (double From, string Words)[] s_shares =
    [
        (0.95, "nearly all"),
        (0.85, "about nine tenths"),
        (0.71, "about three quarters"),
        (0.6, "about two thirds"),
        (0.45, "about half"),
        (0.29, "about a third"),
        (0.15, "about a fifth"),
        (0.05, "about a tenth"),
        (0, "hardly any"),
    ];

    /// <summary>The case and the effect, such as <c>strong case; takes about two thirds of what stands</c>.</summary>
    public static string Of(ClearAction action) => $"{Figures.CaseWord(action.Certainty)} case; {Effect(action)}";

    /// <summary>The effect alone.</summary>
    public static string Effect(ClearAction action) =>
        action.Effect.Reduction is not { } reduction
            ? "no figure is published"
            : action.WorksOn switch
            {
                WorksOn.Standing => $"takes {Share(reduction)} of what stands",
                WorksOn.Coming => $"keeps back {Share(reduction)} of what would come, nothing that stands",
                _ => $"takes {Share(reduction)} of what stands or would come",
            };

    /// <summary>A share in words.</summary>
    /// <param name="share">The share, 0 to 1.</param>
    public static string Share(double share) => s_shares.First(word => share >= word.From).Words;
}

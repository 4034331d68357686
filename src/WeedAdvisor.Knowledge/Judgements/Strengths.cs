using System.Collections.Immutable;

namespace WeedAdvisor.Knowledge.Judgements;

/// <summary>
/// How strong an argument is, in words: the one table of their numbers. Rules may name a number between them where a
/// source or another rule asks for it; what is true by definition is certain, 1.
/// </summary>
public static class Strengths
{
    /// <summary>An argument that another of its kind outweighs.</summary>
    public const double Weak = 0.3;

    /// <summary>An argument that counts.</summary>
    public const double Fair = 0.5;

    /// <summary>An argument that mostly settles it.</summary>
    public const double Strong = 0.7;

    /// <summary>An argument that settles it unless something as strong stands against it.</summary>
    public const double Decisive = 0.9;

    /// <summary>The words, the weakest first.</summary>
    public static ImmutableArray<string> Words { get; } = ["weak", "fair", "strong", "decisive"];

    /// <summary>The number of a word; null when it is no such word.</summary>
    public static double? Of(string word) =>
        word switch
        {
            "weak" => Weak,
            "fair" => Fair,
            "strong" => Strong,
            "decisive" => Decisive,
            _ => null,
        };
}

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Records;

namespace WeedAdvisor.Interview.Earlier;

/// <summary>How an earlier application turned out, in words.</summary>
public static class PastResults
{
    /// <summary>The results that can be told.</summary>
    public static ImmutableArray<AnswerChoice> All { get; } =
    [new("clean", "it stayed clean"), new("escapes", "some weeds came through"), new("injury", "the crop was hurt")];

    /// <summary>A result in words.</summary>
    public static string TextOf(string? result) =>
        All.FirstOrDefault(choice => choice.Id == result)?.Text ?? "result not known";
}

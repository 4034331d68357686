using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Records;

/// <summary>A worked visit taken rule by rule, in the order in which an adviser reasons.</summary>
/// <param name="Id">Its id.</param>
/// <param name="Title">Its title.</param>
/// <param name="Visit">The worked visit.</param>
/// <param name="Area">The area of it.</param>
/// <param name="About">What the class finds there.</param>
/// <param name="Points">What is learnt.</param>
/// <param name="Steps">The steps, in order; never empty.</param>
/// <param name="Where">Where it stands.</param>
public sealed record Lesson(
    string Id,
    string Title,
    string Visit,
    string Area,
    string About,
    ImmutableArray<string> Points,
    ImmutableArray<LessonStep> Steps,
    Place Where
);

/// <summary>One step of a lesson.</summary>
/// <param name="Rule">The rule that is revealed; it holds in the lesson's area.</param>
/// <param name="Ask">What the class is asked before.</param>
/// <param name="Say">What the trainer adds; null for nothing.</param>
public sealed record LessonStep(string Rule, string Ask, string? Say);

using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Knowledge.Yaml;

/// <summary>A file as far as it could be parsed.</summary>
/// <param name="File">The file's name, as problems show it.</param>
/// <param name="Root">Its root node; null when it could not be read as our subset of YAML.</param>
/// <param name="Problems">What is wrong with it; may be non-empty although there is a root.</param>
internal sealed record ParsedFile(string File, Node? Root, ImmutableArray<Problem> Problems)
{
    /// <summary>A file that could not be read.</summary>
    public static ParsedFile Bad(Problem problem) => new(problem.Where.File, null, [problem]);
}

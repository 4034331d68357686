using System.Collections.Immutable;
using WeedAdvisor.Knowledge.Problems;

namespace WeedAdvisor.Reports.Worked;

/// <summary>How the expectations of worked visits came out.</summary>
/// <param name="Passed">How many were met.</param>
/// <param name="Failures">Those that were not, in the order of the files.</param>
public sealed record ExpectationResult(int Passed, ImmutableArray<ExpectationFailure> Failures);

/// <summary>An expectation that was not met.</summary>
/// <param name="Where">Where it stands.</param>
/// <param name="Area">The area's id.</param>
/// <param name="Expected">What was expected.</param>
/// <param name="Came">What came.</param>
public sealed record ExpectationFailure(Place Where, string Area, string Expected, string Came)
{
    /// <summary>The failure in one line.</summary>
    public override string ToString() => $"{Where.File}:{Where.Line}: {Area}: expected {Expected}; {Came}";
}

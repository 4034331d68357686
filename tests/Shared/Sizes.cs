namespace WeedAdvisor.Golden;

/// <summary>
/// How many samples a law is tried on: a small number in <c>dotnet test</c>, a large one in the long run
/// (<c>bash .ci/run --long</c>, which sets WEEDADVISOR_LONG=1).
/// </summary>
internal static class Sizes
{
    private const string Variable = "WEEDADVISOR_LONG";

    /// <summary>Whether this is the long run.</summary>
    public static bool IsLong { get; } = Environment.GetEnvironmentVariable(Variable) is "1";

    /// <summary>The number of samples of this run.</summary>
    public static int Of(int few, int many) => IsLong ? many : few;
}

using System.Globalization;
using System.Runtime.CompilerServices;

namespace WeedAdvisor.Golden;

/// <summary>
/// How many samples a law is tried on: a small number in <c>dotnet test</c>, a large one in the long run
/// (<c>bash .ci/run --long</c>, which sets WEEDADVISOR_LONG=1 and prints what WEEDADVISOR_COUNTS gathered).
/// </summary>
internal static class Sizes
{
    private const string Variable = "WEEDADVISOR_LONG",
        CountsVariable = "WEEDADVISOR_COUNTS";
    private static readonly Lock s_gate = new();

    /// <summary>Whether this is the long run.</summary>
    public static bool IsLong { get; } = Environment.GetEnvironmentVariable(Variable) is "1";

    /// <summary>The number of samples of this run.</summary>
    /// <param name="few">In <c>dotnet test</c>.</param>
    /// <param name="many">In the long run.</param>
    /// <param name="file">The file of the law.</param>
    /// <param name="law">The law.</param>
    public static int Of(int few, int many, [CallerFilePath] string file = "", [CallerMemberName] string law = "")
    {
        int size = IsLong ? many : few;
        if (Environment.GetEnvironmentVariable(CountsVariable) is { Length: > 0 } counts)
        {
            // The test projects run side by side: each has a file of its own.
            lock (s_gate)
                File.AppendAllText(
                    $"{counts}.{Environment.ProcessId}",
                    $"{size.ToString(CultureInfo.InvariantCulture).PadLeft(7)} "
                        + $"{Path.GetFileNameWithoutExtension(file)}.{law}\n"
                );
        }

        return size;
    }
}

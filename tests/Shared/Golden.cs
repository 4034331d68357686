using System.Reflection;
using System.Runtime.CompilerServices;
using System.Text;
using WeedAdvisor.World;

namespace WeedAdvisor.Golden;

/// <summary>
/// Compares a whole text with the file <c>Expected/NAME.txt</c> of the test project. Run the tests with BLESS=1 to
/// write what came as what is expected, then read the difference as a change of behaviour. In CI nothing is ever
/// blessed.
/// </summary>
internal static class ExpectedText
{
    public static void Matches(string actual, [CallerMemberName] string name = "") =>
        MatchesFile(actual, Path.Combine(ProjectFolder(), "Expected", name + ".txt"));

    /// <summary>The same with a file anywhere in the repository.</summary>
    public static void MatchesFile(string actual, string file)
    {
        if (MayBless())
            Write(file, actual);
        Assert.True(File.Exists(file), $"{file} is missing; run with BLESS=1 and read what it wrote");
        Assert.Equal(File.ReadAllText(file), actual, ignoreLineEndingDifferences: false);
    }

    private static string ProjectFolder() =>
        Path.Combine(Repository.Folder, "tests", Assembly.GetExecutingAssembly().GetName().Name!);

    private static bool MayBless() =>
        Environment.GetEnvironmentVariable("BLESS") == "1" && Environment.GetEnvironmentVariable("CI") is null or "";

    private static void Write(string file, string text)
    {
        Directory.CreateDirectory(Path.GetDirectoryName(file)!);
        using var stream = new FileStream(file, FileMode.Create);
        stream.Write(Encoding.UTF8.GetBytes(text));
    }
}
